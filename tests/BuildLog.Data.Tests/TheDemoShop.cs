using BuildLog.Data.Components;
using BuildLog.Data.Files;
using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.DemoData;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;
using Xunit;

namespace BuildLog.Data.Tests;

/// <summary>What demo-data/README.md says of each vehicle.</summary>
public sealed class TheDemoShop : IDisposable
{
    private static readonly DateOnly Today = new(2026, 1, 1);
    private readonly string path = DemoShop.CreateFreshCopy();
    private readonly Shop shop;

    public TheDemoShop() => shop = ShopFile.Open(path);

    public void Dispose()
    {
        shop.Dispose();
        Directory.Delete(Path.GetDirectoryName(path)!, recursive: true);
    }

    [Theory]
    [InlineData("Brindle", Verdict.Clash)]
    [InlineData("Haldor", Verdict.Fits)]
    [InlineData("Ottery", Verdict.Fits)]
    [InlineData("Pellow", Verdict.Open)]
    [InlineData("Quillon", Verdict.Watch)]
    [InlineData("Tansy", Verdict.Fits)]
    public void Shows_each_verdict(string name, Verdict verdict)
    {
        var vehicle = shop.FindVehicle(name);
        var findings = AllChecks.Look(shop.DrivelineOn(vehicle, Today).Driveline, shop.GoalsOf(vehicle));
        Assert.Equal(verdict, findings.First(finding => finding.Check == "cruise").Verdict);
    }

    [Fact]
    public void Has_a_tag_that_lies_over_a_count_near_4_74_most_likely_43_to_9()
    {
        var ratio = shop.DrivelineOn(shop.FindVehicle("Brindle"), Today).Numbers.Single(known => known.Position == Position.RearAxle);
        Assert.InRange(ratio.Used.Value.Value, 4.73, 4.76);
        Assert.Equal("43/9", RatioCandidates.For(ratio.Used.Value).Ranked[0].Name);
        var tag = Assert.Single(ratio.PassedOver);
        Assert.Equal((Source.Tag, "3.90"), (tag.Source, tag.Says));
        Assert.False(QuotedRatio.Read(tag.Says, RatioRange.Axle).OrRefuse().Agrees(ratio.Used.Value));
    }

    [Fact]
    public void Has_a_watch_that_more_turns_would_settle()
    {
        var vehicle = shop.FindVehicle("Quillon");
        var finding = Assert.Single(AllChecks.Look(shop.DrivelineOn(vehicle, Today).Driveline, shop.GoalsOf(vehicle)), finding => finding.Check == "cruise");
        Assert.Matches("count [0-9]+ wheel turns in one go", finding.SettledBy);
    }

    [Fact]
    public void Has_a_vehicle_with_everything_in_its_driveline()
    {
        var driveline = shop.DrivelineOn(shop.FindVehicle("Haldor"), Today).Driveline;
        Assert.NotNull(driveline.TransferCase);
        Assert.NotNull(driveline.FrontAxle);
        Assert.NotNull(driveline.RearAxle);
        Assert.NotNull(shop.DrivelineOn(shop.FindVehicle("Ottery"), Today).Driveline.Overdrive);
    }

    [Fact]
    public void Has_vehicles_in_several_states_and_swaps_with_reasons()
    {
        Assert.Equal(4, shop.Vehicles().Select(vehicle => vehicle.State).Distinct().Count());
        var swaps = shop.Vehicles().SelectMany(shop.History).ToList();
        Assert.True(swaps.Count > 25);
        Assert.All(swaps, swap => Assert.NotEmpty(swap.Reason));
        Assert.Contains(swaps, swap => swap is { Removed: AxleComponent, Fitted: AxleComponent });
    }

    [Fact]
    public void Has_a_part_that_served_two_vehicles()
    {
        var tyres = shop.Vehicles().SelectMany(shop.Fitments).Where(fitment => fitment.Component.Name == "Stavely 205/75R15 on steel");
        Assert.Equal(["Brindle", "Pellow"], tyres.Select(fitment => fitment.Vehicle.Name));
    }

    [Fact]
    public void Is_private_and_fresh_each_time()
    {
        shop.Add(new Vehicle { Name = "Scratch" });
        var second = DemoShop.CreateFreshCopy();
        using (var other = ShopFile.Open(second)) Assert.Equal(6, other.Vehicles().Count);
        Assert.NotEqual(path, second);
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(second));
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, File.GetUnixFileMode(Path.GetDirectoryName(second)!));
        }

        Directory.Delete(Path.GetDirectoryName(second)!, recursive: true);
    }

    [Fact]
    public void Lists_all_sessions_that_speak_of_a_vehicle()
    {
        Assert.Equal(["roll-out", "turn count", "roll-out"], shop.Sessions(shop.FindVehicle("Ottery")).Select(session => session.Method));
        Assert.IsType<RollOutSession>(shop.Sessions(shop.FindVehicle("Brindle"))[^1]);
    }
}
