using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using BuildLog.Data.Attachments;
using BuildLog.Data.Components;
using BuildLog.Data.Days;
using BuildLog.Data.Files;
using BuildLog.Data.Moving;
using BuildLog.Gearing.Drivelines;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Papers;
using BuildLog.Tui.Sheets;
using SkiaSharp;

namespace BuildLog.Tui.Tests.Papers;

/// <summary>A vehicle leaves one shop and comes to the next.</summary>
public sealed class HandoverTests : IDisposable
{
    private readonly ShopWithPhotos here = new();

    private string Zip => Path.Combine(here.Folder, "brindle.zip");

    public void Dispose() => here.Dispose();

    [Fact]
    public void Holds_sheet_receipts_photos_and_papers_with_their_checksums()
    {
        here.AttachPhoto(here.Brindle, "front: left.jpg", SKColors.Red);
        here.Attach(here.Brindle, "balance.txt", "balanced to G16"u8.ToArray(), "text/plain");

        HandOver();

        var files = Content();
        Assert.StartsWith("%PDF-", Encoding.ASCII.GetString(files["handover/build-sheet.pdf"][..5]), StringComparison.Ordinal);
        Assert.Contains("yard axle", Encoding.UTF8.GetString(files["handover/receipts.csv"]), StringComparison.Ordinal);
        Assert.Contains(files.Keys, name => name.StartsWith("handover/photos/", StringComparison.Ordinal) && name.EndsWith("-front--left.jpg", StringComparison.Ordinal));
        Assert.Contains(files.Keys, name => name.StartsWith("handover/papers/", StringComparison.Ordinal) && name.EndsWith("-balance.txt", StringComparison.Ordinal));
        var sums = Encoding.UTF8.GetString(files["SHA256SUMS"]).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(
            files.Where(file => file.Key != "SHA256SUMS").Select(file => $"{Convert.ToHexStringLower(SHA256.HashData(file.Value))}  {file.Key}").Order(StringComparer.Ordinal),
            sums.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Says_in_a_text_what_is_what_and_stores_no_file_twice()
    {
        here.AttachPhoto(here.Brindle, "front.jpg", SKColors.Red);
        here.Attach(here.Brindle, "balance.txt", "balanced to G16"u8.ToArray(), "text/plain");

        HandOver();

        var files = Content();
        var readMe = Encoding.UTF8.GetString(files["handover/README.txt"]);
        Assert.StartsWith("Brindle: handover of 1 January 1970", readMe, StringComparison.Ordinal);
        Assert.All(["build-sheet.pdf", "receipts.csv", "photos", "papers", "SHA256SUMS"], name => Assert.Contains(name, readMe, StringComparison.Ordinal));
        Assert.Equal(files.Count, files.Values.Select(SHA256.HashData).Select(Convert.ToHexString).Distinct().Count());
    }

    [Fact]
    public void No_photo_tells_where_it_was_taken()
    {
        here.AttachPhoto(here.Brindle, "front.jpg", SKColors.Red);
        here.AttachPhoto(here.Brindle, "receipt.bin", SKColors.Green);

        HandOver();

        Assert.All(Content().Values, file => Assert.Equal(-1, file.AsSpan().IndexOf(Encoding.ASCII.GetBytes(ShopWithPhotos.Place))));
    }

    [Fact]
    public void A_photo_that_cannot_be_made_fit_to_leave_stays_and_is_named()
    {
        here.Attach(here.Brindle, "engine.heic", [1, 2, 3], "image/heic");

        Assert.Equal("engine.heic", Assert.Single(HandOver().Lacking));
        Assert.DoesNotContain(Content().Keys, name => name.StartsWith("attachments/", StringComparison.Ordinal));
    }

    [Fact]
    public void Comes_into_the_next_shop_with_its_photos_and_once_only()
    {
        here.AttachPhoto(here.Brindle, "front.png", SKColors.Red, "from the left");
        HandOver();
        var next = Path.Combine(here.Folder, "next.db");

        using var shop = ShopFile.Open(next);
        var came = shop.Import(Zip);

        Assert.Empty(came.Lacking);
        var brindle = shop.FindVehicle("Brindle");
        var photo = Assert.Single(shop.AttachmentsOf(brindle));
        Assert.Equal(("front.jpg", "image/jpeg", "from the left"), (photo.FileName, photo.MediaType, photo.Caption));
        using (var file = AttachmentStore.Beside(next).Open(photo.Sha256)) Assert.Equal(photo.Length, file.Content!.Length);
        Assert.Equal(Sheet(here.Shop.DrivelineOn(here.Brindle, Today).Driveline), Sheet(shop.DrivelineOn(brindle, Today).Driveline));
        Assert.Empty(shop.Import(Zip).Added);
    }

    // What came off it stayed where it was: the next shop reads its story, and is not told to bolt it on.
    [Fact]
    public void Parts_that_are_on_it_no_more_go_along_for_their_history_alone()
    {
        var before = here.Shop.Parts().Single(place => place.Fitment?.VehicleId == here.Brindle.Id && place.Component is AxleComponent).Component;
        here.Shop.Change(before, part => part.Shelf = "rack B");
        here.Shop.FitSometime(new AxleComponent { Name = "taller axle" }, here.Brindle, Position.RearAxle, LooseDay.On(Today), reason: "longer legs");
        HandOver();

        using var shop = ShopFile.Open(Path.Combine(here.Folder, "next.db"));
        shop.Import(Zip);

        var parts = shop.Parts().ToDictionary(place => place.Component.Name, place => place.Component);
        Assert.Equal((Ownership.Gone, ""), (parts[before.Name].Ownership, parts[before.Name].Shelf));
        Assert.Null(parts["taller axle"].Ownership);
        Assert.Null(here.Shop.Parts().Single(place => place.Component.Id == before.Id).Component.Ownership);
    }

    [Fact]
    public void The_same_record_gives_the_same_bytes()
    {
        here.AttachPhoto(here.Brindle, "front.jpg", SKColors.Red);
        HandOver();
        var once = File.ReadAllBytes(Zip);

        HandOver();

        Assert.Equal(once, File.ReadAllBytes(Zip));
    }

    private static DateOnly Today => new(2026, 11, 26);

    private static double? Sheet(BuildLog.Gearing.Drivelines.Driveline driveline) => driveline.DrivingAxle?.Ratio?.Value.Value;

    private ExportReport HandOver()
    {
        var bench = VehicleOnBench.Read(here.Shop, here.Brindle, Today);
        var (handover, _) = HandoverOfVehicle.Of(bench, VehicleFolder.Read(here.Shop, here.Brindle), new(BuildLog.Sheet.Content.SheetReader.Buyer), UnitSystem.Metric, DateTimeOffset.UnixEpoch);
        return here.Shop.HandOver(Zip, here.Brindle, handover, overwrite: true);
    }

    private Dictionary<string, byte[]> Content()
    {
        using var zip = ZipFile.OpenRead(Zip);
        return zip.Entries.ToDictionary(entry => entry.FullName, entry =>
        {
            using var stream = entry.Open();
            using var bytes = new MemoryStream();
            stream.CopyTo(bytes);
            return bytes.ToArray();
        });
    }
}
