using BuildLog.Data.Attachments;
using BuildLog.Data.Files;
using Xunit;

namespace BuildLog.Data.Tests.Files;

/// <summary>LooseDays.sql is the demo shop as the fifth schema held it: with days as far as they are known and the kinds of attachment.</summary>
public sealed class AFileOfLooseDays : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-test-").FullName;
    private readonly string path;
    private readonly Lazy<Shop> shop;

    public AFileOfLooseDays()
    {
        path = Path.Combine(folder, "shop.db");
        EarlierRecord.Make("LooseDays.sql", path);
        shop = new(() => ShopFile.Open(path));
    }

    public void Dispose()
    {
        if (shop.IsValueCreated) shop.Value.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    // The last change in the dump.
    [Fact]
    public void Takes_back_what_was_done_before_it_was_brought_up_to_date()
    {
        Assert.Equal("fitted Stavely 205/75R15 on steel to Pellow", shop.Value.Undo());
        Assert.Equal("fitted Stavely 205/75R15 on steel to Pellow", shop.Value.Redo());
        AssertSound();
    }

    [Fact]
    public void Keeps_what_each_attachment_is()
    {
        var attachments = shop.Value.AttachmentsOf(shop.Value.FindVehicle("Tansy"));
        Assert.Equal([AttachmentKind.Photo, AttachmentKind.Receipt], attachments.Select(attachment => attachment.What).Order());
    }

    [Fact]
    public void Fits_another_set_to_the_front_wheels()
    {
        var vehicle = shop.Value.FindVehicle("Tansy");
        var set = new Data.Components.WheelSetComponent { Name = "front wheels", SizeText = "185/65R15" };
        shop.Value.Add(set);
        shop.Value.Fit(set, vehicle, Gearing.Drivelines.Position.FrontTyres, new DateOnly(2026, 1, 1));

        Assert.Equal("front wheels", shop.Value.DrivelineOn(vehicle, new DateOnly(2026, 1, 2)).Driveline.Tyres!.FrontPair!.Name);
    }

    // Counted in the dump.
    [Fact]
    public void Loses_no_row_and_keeps_its_rules()
    {
        _ = shop.Value.Vehicles();
        using var connection = ShopConnection.OpenAlone(path);
        Assert.Equal(
            [6L, 35L, 36L, 11L, 26L, 20L, 3L, 123L, 277L, 123L],
            new[] { "Vehicles", "Components", "Fitments", "Sessions", "Readings", "Specs", "Attachments", "ChangeSets", "Changes", "Findables" }.Select(table => (long)connection.Ask($"SELECT count(*) FROM {table}")!));
        AssertSound();

        using var test = new TestShop();
        Assert.Equal(test.Ask(EarlierRecord.Schema), connection.Ask(EarlierRecord.Schema));
    }

    // The dump is of the record alone: its pictures are not beside it.
    private void AssertSound() => Assert.StartsWith("Attachments are missing: ", Assert.Single(RecordCheck.Of(path).Troubles()), StringComparison.Ordinal);
}
