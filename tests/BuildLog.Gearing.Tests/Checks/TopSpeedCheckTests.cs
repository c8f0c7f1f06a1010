using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

public sealed class TopSpeedCheckTests
{
    // 40.650 m/s, 146.34 km/h, ended by 5000 rev/min. For 180 km/h: axle 4.10 · 146.34/180 = 3.333, tyre 2.00 · 180/146.34 = 2.460.
    [Fact]
    public void Where_the_gear_ends_it_axle_and_tyre_are_the_cure()
    {
        var finding = Find(InventedLoad.Car, "180 km/h");

        Assert.Equal(Verdict.Clash, finding.Verdict);
        Assert.Equal("It reaches 146.3415 km/h in gear 4: the engine then turns 5000 rev/min and may not turn faster; wanted 180 km/h or more.", finding.Says);
        Assert.Equal(["axle ratio 3.32 or less", "tyre rolling circumference 2.461 m or more"], finding.Cures);
    }

    [Fact]
    public void What_it_reaches_fits() => Assert.Equal(Verdict.Fits, Find(InventedLoad.Car, "140 km/h").Verdict);

    // 60 N·m reach 32.843 m/s, 118.2 km/h. 130 km/h take (205.94 + 0.49 · 1304.0) · 36.111/0.9504 = 32.10 kW; there are 31.4.
    [Fact]
    public void Where_power_ends_it_more_power_is_the_cure()
    {
        var finding = Find(InventedLoad.WithTorque(60), "130 km/h");

        Assert.Equal(Verdict.Clash, finding.Verdict);
        Assert.Contains("more takes more power", finding.Says, StringComparison.Ordinal);
        Assert.Equal("an engine of 32.1 kW", Assert.Single(finding.Cures));
    }

    // The gear ends it at 146 km/h; 300 km/h take more than the engine has, too.
    [Fact]
    public void Where_both_are_wanting_neither_is_called_enough()
    {
        var cures = Find(InventedLoad.Car, "300 km/h").Cures;

        Assert.StartsWith("an engine of ", cures[0], StringComparison.Ordinal);
        Assert.EndsWith(", and one of the ratios or tyres here as well", cures[0], StringComparison.Ordinal);
    }

    // 31.4 kW are enough for 125 km/h (28.9 kW), but top is too tall to reach them.
    [Fact]
    public void Where_the_power_is_there_but_out_of_reach_a_gear_is_the_cure()
        => Assert.Equal("a gear that lets the engine reach its 31.4159 kW at 125 km/h", Assert.Single(Find(InventedLoad.WithTorque(60), "125 km/h").Cures));

    [Fact]
    public void Without_the_goal_nothing_and_without_the_numbers_open()
    {
        Assert.Empty(new TopSpeedCheck().Look(InventedLoad.Car, CheckCase.NoGoals));
        Assert.Equal(Verdict.Open, Find(InventedCar.Plain, "140 km/h").Verdict);
        Assert.Equal(Verdict.Open, Find(InventedLoad.WithTorque(1), "140 km/h").Verdict);
        Assert.Contains("weigh the vehicle", string.Join(' ', Find(InventedLoad.Car with { Load = null }, "140 km/h").Cures), StringComparison.Ordinal);
    }

    private static Finding Find(Driveline car, string speed) => Assert.Single(new TopSpeedCheck().Look(car, CheckCase.NoGoals with { TopSpeed = TopSpeedGoal.Read(speed).OrRefuse() }));
}
