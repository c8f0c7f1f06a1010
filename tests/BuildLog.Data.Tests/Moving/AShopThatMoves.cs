using System.IO.Compression;
using System.Text;
using BuildLog.Data.Attachments;
using BuildLog.Data.Costs;
using BuildLog.Data.Decisions;
using BuildLog.Data.Files;
using BuildLog.Data.Hunting;
using BuildLog.Data.Jobs;
using BuildLog.Data.Notes;
using BuildLog.Data.Suppliers;
using BuildLog.DemoData;
using Xunit;

namespace BuildLog.Data.Tests.Moving;

public sealed class AShopThatMoves : IDisposable
{
    private readonly TestShop here = new();
    private readonly TestShop there = new();

    public AShopThatMoves()
    {
        DemoShop.Fill(here.Shop);
        var brindle = here.Shop.FindVehicle("Brindle");
        var supplier = here.Shop.Add(new Supplier { Name = "Ambery axles" });
        var wanted = here.Shop.Add(new WantedPart(brindle, WantedKind.Axle) { Title = "shorter axle", Windows = [new(WindowOf.AxleRatio, "3.23", "3.49")] });
        here.Shop.Add(new Offer(wanted) { What = "axle from a Wexcombe van", Seen = new(2026, 5, 3), SupplierId = supplier.Id, Price = Money.Of(18000, Currency.Find("EUR")!) });
        var job = here.Shop.Add(new Job(brindle) { Title = "fit the shorter axle", WaitsForId = wanted.Id });
        here.Shop.Add(new WorkEntry(job) { Date = new(2026, 5, 4), Hours = "2:30", Who = "Agnes" });
        here.Shop.Add(new Cost(brindle, job) { Date = new(2026, 5, 4), What = "gaskets", Amount = Money.Of(1250, Currency.Find("EUR")!), SupplierId = supplier.Id });
        var decision = here.Shop.Add(new Decision(brindle) { Date = new(2026, 5, 3), What = "3.36, not 3.08", Why = "quiet at 110", AgreedBy = "Agnes Thorley" });
        here.Shop.Add(new Note(decision) { Date = new(2026, 5, 4), Title = "asked twice", Body = "Ümlaut, Ελληνικά and a\nsecond line" });
        var stored = AttachmentStore.Beside(here.Path).Put(new MemoryStream("a receipt"u8.ToArray()));
        here.Shop.Add(new Attachment(job) { FileName = "receipt.txt", MediaType = "text/plain", Length = stored.Length, Sha256 = stored.Sha256 });
    }

    private string Zip => Path.Combine(here.Folder, "shop.zip");

    public void Dispose()
    {
        here.Dispose();
        there.Dispose();
    }

    [Fact]
    public void Is_the_same_in_an_empty_record()
    {
        var sent = here.Shop.Export(Zip);
        var came = there.Shop.Import(Zip);
        Assert.Equal(sent.Entries.OrderBy(kind => kind.Key), came.Added.OrderBy(kind => kind.Key));
        Assert.Equal((0, 0), (came.Alike, came.Differing.Count));

        var again = Path.Combine(there.Folder, "again.zip");
        there.Shop.Export(again);
        Assert.Equal(Content(Zip), Content(again));
    }

    [Fact]
    public void Brings_the_same_driveline_and_its_papers()
    {
        here.Shop.Export(Zip);
        there.Shop.Import(Zip);
        var (before, after) = (here.Shop.FindVehicle("Brindle"), there.Shop.FindVehicle("Brindle"));
        Assert.Equal(
            here.Shop.DrivelineOn(before, new(2026, 5, 3)).Driveline.RearAxle!.Ratio!.Value.Value,
            there.Shop.DrivelineOn(after, new(2026, 5, 3)).Driveline.RearAxle!.Ratio!.Value.Value);
        Assert.Equal(here.Shop.Costs(before).Select(cost => cost.Amount), there.Shop.Costs(after).Select(cost => cost.Amount));
        Assert.Equal("quiet at 110", there.Shop.Decisions(after).Single(decision => decision.What == "3.36, not 3.08").Why);
        using var receipt = AttachmentStore.Beside(there.Path).Open(Assert.Single(there.Shop.AttachmentsOf(there.Shop.Jobs(after).Single(job => job.Title == "fit the shorter axle"))).Sha256);
        using var text = new StreamReader(receipt.Content!);
        Assert.Equal("a receipt", text.ReadToEnd());
    }

    [Fact]
    public void Merges_only_what_is_new_and_names_what_differs()
    {
        here.Shop.Export(Zip);
        there.Shop.Import(Zip);
        var brindle = there.Shop.FindVehicle("Brindle");
        there.Shop.Change(brindle, vehicle => vehicle.Owner = "somebody else");
        here.Shop.Add(new Supplier { Name = "Wexcombe bearings" });
        here.Shop.Export(Zip, overwrite: true);

        var came = there.Shop.Import(Zip);
        Assert.Equal([new(Matter.Supplier, 1)], came.Added);
        Assert.Equal(["vehicle Brindle"], came.Differing);
        Assert.Equal("somebody else", there.Shop.FindVehicle("Brindle").Owner);
    }

    [Fact]
    public void Comes_in_one_change_that_can_be_taken_back()
    {
        var entries = here.Shop.Export(Zip).Entries.Values.Sum();
        there.Shop.Import(Zip);
        Assert.Equal(FormattableString.Invariant($"imported {entries} entries from shop.zip"), there.Shop.Undo());
        Assert.Empty(there.Shop.Vehicles());
        Assert.Empty(there.Shop.Parts());
    }

    [Fact]
    public void Is_logged_and_found_as_if_it_had_been_entered_there()
    {
        here.Shop.Export(Zip);
        there.Shop.Import(Zip);
        Assert.Empty(RecordCheck.Of(there.Path).Troubles());
        var (brindle, change) = (there.Shop.FindVehicle("Brindle"), Assert.Single(there.Shop.Changes()));
        Assert.Equal([change.Id], there.ChangesOf(brindle).Select(of => of.Id));
        Assert.Equal(here.Shop.Find("shorter axle").Select(found => found.Title).Order(StringComparer.Ordinal), there.Shop.Find("shorter axle").Select(found => found.Title).Order(StringComparer.Ordinal));

        there.Shop.Change(brindle, vehicle => vehicle.Owner = "somebody else");
        Assert.Equal(change.Id + 1, there.Shop.Changes()[0].Id);
    }

    [Fact]
    public void Stays_as_it_is_where_it_comes_again()
    {
        here.Shop.Export(Zip);
        there.Shop.Import(Zip);
        var again = there.Shop.Import(Zip);
        Assert.Equal((0, 0), (again.Added.Count, again.Differing.Count));
        Assert.Equal(here.Shop.Export(Zip, overwrite: true).Entries.Values.Sum(), again.Alike);
        Assert.Single(there.Shop.Changes());
    }

    [Fact]
    public void Can_be_tried_without_storing_anything()
    {
        here.Shop.Export(Zip);
        var tried = there.Shop.Import(Zip, dryRun: true);
        Assert.True(tried.IsDry);
        Assert.NotEmpty(tried.Added);
        Assert.Empty(there.Shop.Vehicles());
    }

    [Fact]
    public void Sends_one_vehicle_without_the_others()
    {
        here.Shop.Export(Zip, here.Shop.FindVehicle("Brindle"));
        there.Shop.Import(Zip);
        var vehicle = Assert.Single(there.Shop.Vehicles());
        Assert.Equal("Brindle", vehicle.Name);
        Assert.Equal(here.Shop.History(here.Shop.FindVehicle("Brindle")).Count, there.Shop.History(vehicle).Count);
        Assert.Single(there.Shop.Jobs(vehicle), job => job is { Title: "fit the shorter axle", WaitsForId: not null });
        Assert.Single(there.Shop.Suppliers(), supplier => supplier.Name == "Ambery axles");
    }

    [Fact]
    public void Is_written_alike_each_time()
    {
        here.Shop.Export(Zip);
        var first = File.ReadAllBytes(Zip);
        here.Shop.Export(Zip, overwrite: true);
        Assert.Equal(first, File.ReadAllBytes(Zip));
    }

    [Fact]
    public void Names_an_attachment_whose_file_is_gone_and_takes_the_rest()
    {
        Directory.Delete(AttachmentStore.Beside(here.Path).Folder, recursive: true);
        string[] all = ["receipt-five-speed.jpg", "receipt.txt", "tansy-on-stands.jpg", "tansy.jpg"];
        Assert.Equal(all, here.Shop.Export(Zip).Lacking.Order(StringComparer.Ordinal));
        Assert.Equal(all, there.Shop.Import(Zip).Lacking.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Replaces_no_file_unasked()
    {
        File.WriteAllText(Zip, "mine");
        Assert.EndsWith("is there already. Name another file, or replace it with --overwrite.", Assert.Throws<RecordException>(() => here.Shop.Export(Zip)).Message, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(Zip));
    }

    private static IEnumerable<(string Name, string Content)> Content(string zip)
    {
        using var archive = ZipFile.OpenRead(zip);
        return [.. archive.Entries.Select(entry =>
        {
            using var reader = new StreamReader(entry.Open(), Encoding.UTF8);
            return (entry.FullName, reader.ReadToEnd());
        })];
    }
}
