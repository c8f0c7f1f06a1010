using BuildLog.Data.Components;
using BuildLog.Data.Files;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using Xunit;

namespace BuildLog.Data.Tests.Files;

/// <summary>FirstRecord.sql is the demo shop as the first schema held it, dumped by that version of the program.</summary>
public sealed class AFileOfTheFirstSchema : IDisposable
{
    private static readonly DateOnly Today = new(2026, 1, 1);

    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-test-").FullName;
    private readonly string path;
    private readonly Lazy<Shop> shop;

    public AFileOfTheFirstSchema()
    {
        path = Path.Combine(folder, "shop.db");
        EarlierRecord.Make("FirstRecord.sql", path);
        shop = new(() => ShopFile.Open(path));
    }

    public void Dispose()
    {
        if (shop.IsValueCreated) shop.Value.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    // The verdicts that the first version gave, as its README told them.
    [Theory]
    [InlineData("Brindle", Verdict.Clash)]
    [InlineData("Haldor", Verdict.Fits)]
    [InlineData("Ottery", Verdict.Fits)]
    [InlineData("Pellow", Verdict.Open)]
    [InlineData("Quillon", Verdict.Watch)]
    [InlineData("Tansy", Verdict.Fits)]
    public void Says_the_same_of_each_cruise_when_brought_up_to_date(string name, Verdict verdict)
    {
        var vehicle = shop.Value.FindVehicle(name);
        var findings = AllChecks.Look(shop.Value.DrivelineOn(vehicle, Today).Driveline, shop.Value.GoalsOf(vehicle));
        Assert.Equal(verdict, findings.First(finding => finding.Check == "cruise").Verdict);
    }

    // Counted in the dump.
    [Fact]
    public void Loses_no_row_and_keeps_its_rules()
    {
        _ = shop.Value.Vehicles();
        using var connection = ShopConnection.OpenAlone(path);
        Assert.Equal(
            [6L, 32L, 33L, 10L, 24L, 29L, 6L],
            new[] { "Vehicles", "Components", "Fitments", "Sessions", "Readings", "Gears", "Goals" }.Select(table => (long)connection.Ask($"SELECT count(*) FROM {table}")!));
        Assert.Equal("ok", connection.Ask("PRAGMA integrity_check"));
        Assert.Null(connection.Ask("PRAGMA foreign_key_check"));
        Assert.Equal(0L, connection.Ask("SELECT count(*) FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND name NOT LIKE 'sqlite%' AND name NOT LIKE '\\_\\_EF%' ESCAPE '\\' AND NOT strict"));
        Assert.Equal(9L, connection.Ask("SELECT count(*) FROM sqlite_master WHERE type = 'trigger'"));

        // The same text of the schema as in a file that is new today, whatever steps it came by.
        using var test = new TestShop();
        Assert.Equal(test.Ask(EarlierRecord.Schema), connection.Ask(EarlierRecord.Schema));
    }

    [Fact]
    public void Can_be_searched_for_what_was_typed_before_there_was_a_search()
    {
        var found = shop.Value.Find("pinion chipped");
        Assert.Contains(found, f => f is { Kind: "axle", Title: "Harrow axle, the frame's own" });
        Assert.Contains(found, f => f is { Kind: "fitment", Vehicle: "Brindle", Part: "Harrow yard axle" });
    }

    [Fact]
    public void Takes_what_the_new_one_keeps()
    {
        var vehicle = shop.Value.Change(shop.Value.FindVehicle("Haldor"), v => v.Mass = Noted.Of(Spec.Mass, "2450 kg", Source.Measured));
        var box = (TransferCaseComponent)shop.Value.DrivelineOn(vehicle, Today).At(Position.TransferCase)!;
        shop.Value.Change(box, b => b.FrontDrive = Gearing.RunningGear.FrontDrive.Declutch);
        shop.Value.Fit(new PropshaftComponent { Name = "rear shaft", Pieces = [new()] }, vehicle, Position.Propshaft, Today);
        var driveline = shop.Value.DrivelineOn(vehicle, Today).Driveline;
        Assert.Equal(2450, driveline.Load!.Mass!.Value.Value);
        Assert.Equal(Gearing.RunningGear.FrontDrive.Declutch, driveline.TransferCase!.FrontDrive);
        Assert.Equal("rear shaft", driveline.Propshaft!.Name);
    }
}
