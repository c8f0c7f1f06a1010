using BuildLog.Data.Components;
using BuildLog.Data.Files;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using Xunit;

namespace BuildLog.Data.Tests.Files;

/// <summary>WholeMarriage.sql is the demo shop as the second schema held it: the first with everything the checks judge.</summary>
public sealed class AFileOfTheWholeMarriage : IDisposable
{
    private static readonly DateOnly Today = new(2026, 1, 1);

    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-test-").FullName;
    private readonly string path;
    private readonly Lazy<Shop> shop;

    public AFileOfTheWholeMarriage()
    {
        path = Path.Combine(folder, "shop.db");
        EarlierRecord.Make("WholeMarriage.sql", path);
        shop = new(() => ShopFile.Open(path));
    }

    public void Dispose()
    {
        if (shop.IsValueCreated) shop.Value.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    // The verdicts that this version gave, as its README told them.
    [Theory]
    [InlineData("Brindle", Verdict.Clash)]
    [InlineData("Haldor", Verdict.Fits)]
    [InlineData("Ottery", Verdict.Fits)]
    [InlineData("Pellow", Verdict.Open)]
    [InlineData("Quillon", Verdict.Watch)]
    [InlineData("Tansy", Verdict.Fits)]
    public void Says_the_same_of_each_cruise(string name, Verdict verdict)
    {
        var vehicle = shop.Value.FindVehicle(name);
        var findings = AllChecks.Look(shop.Value.DrivelineOn(vehicle, Today).Driveline, shop.Value.GoalsOf(vehicle));
        Assert.Equal(verdict, findings.First(finding => finding.Check == "cruise").Verdict);
    }

    // Read in the dump.
    [Fact]
    public void Keeps_the_numbers_that_it_was_the_first_to_hold()
    {
        Assert.Equal("1240 mm", Propshaft("Ottery").Pieces[0].Length?.Text);
        var speedometer = Assert.IsType<SpeedometerComponent>(shop.Value.DrivelineOn(shop.Value.FindVehicle("Tansy"), Today).At(Position.Speedometer));
        Assert.Equal("870", speedometer.TurnsWanted?.Text);
    }

    private PropshaftComponent Propshaft(string vehicle)
        => Assert.IsType<PropshaftComponent>(shop.Value.DrivelineOn(shop.Value.FindVehicle(vehicle), Today).At(Position.Propshaft));
}
