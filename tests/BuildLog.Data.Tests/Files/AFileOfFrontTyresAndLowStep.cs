using BuildLog.Data.Files;
using BuildLog.Data.Sessions;
using Xunit;

namespace BuildLog.Data.Tests.Files;

/// <summary>FrontTyresAndLowStep.sql is the demo shop as the sixth schema held it: three methods of measuring, each of a part.</summary>
public sealed class AFileOfFrontTyresAndLowStep : IDisposable
{
    private static readonly DateOnly Day = new(2026, 5, 3);

    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-test-").FullName;
    private readonly string path;
    private readonly Lazy<Shop> shop;

    public AFileOfFrontTyresAndLowStep()
    {
        path = Path.Combine(folder, "shop.db");
        EarlierRecord.Make("FrontTyresAndLowStep.sql", path);
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

    // Its masses are noted in the dump: 830 and 860 kg on the axles.
    [Fact]
    public void Weighs_what_was_only_noted()
    {
        var tansy = shop.Value.FindVehicle("Tansy");
        Assert.Equal(830, shop.Value.DrivelineOn(tansy, Day).Driveline.AxleMasses!.Front!.Value.Value);

        shop.Value.Add(new WeighbridgeSession(tansy) { Date = Day, Readings = ["front 840 kg", "rear 850 kg"] });

        var front = shop.Value.DrivelineOn(tansy, Day).Numbers.Single(number => number.Number == "front axle mass");
        Assert.Equal((840, "weighbridge of 3 May 2026"), (front.Used.Value.Value, front.Used.Says));
        Assert.Equal("830 kg ± 5 kg", Assert.Single(front.PassedOver).Says);
        AssertSound();
    }

    [Fact]
    public void Keeps_every_count_with_its_part()
    {
        var sessions = shop.Value.Vehicles().SelectMany(shop.Value.Sessions).DistinctBy(session => session.Id).ToList();
        Assert.All(sessions, session => Assert.NotNull(session.Component));
        Assert.Equal(["gear count", "roll-out", "turn count"], sessions.Select(session => session.Method).Distinct().Order());
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
        Assert.Equal(test.Ask(IndexLayout), connection.Ask(IndexLayout));
    }

    private const string IndexLayout = "SELECT sql FROM sqlite_master WHERE name = 'FindableText'";

    // The dump is of the record alone: its pictures are not beside it.
    private void AssertSound() => Assert.StartsWith("Attachments are missing: ", Assert.Single(RecordCheck.Of(path).Troubles()), StringComparison.Ordinal);
}
