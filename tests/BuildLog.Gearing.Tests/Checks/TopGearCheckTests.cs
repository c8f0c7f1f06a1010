using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>Source of the limit: 1.10 and 0.85, common practice, no source.</remarks>
public sealed class TopGearCheckTests
{
    // 200 N·m at 5000 rev/min would reach some 56 m/s; in top that is 56 · 2.05/83.3 = 1.39 of the power peak's speed.
    [Fact]
    public void A_top_gear_that_screams_is_a_watch_with_the_axle_that_would_do()
    {
        var finding = Find(InventedLoad.Car);
        var reached = InventedLoad.Pull(InventedLoad.Car).EngineSpeed(InventedLoad.Step(InventedLoad.Car), TopSpeed.ByPeakPower(InventedLoad.Pull(InventedLoad.Car)));

        Assert.Equal((Verdict.Watch, Because.UnverifiedLimit), (finding.Verdict, finding.Because));
        Assert.EndsWith("; more than 110 % in top is under-geared.", finding.Says, StringComparison.Ordinal);
        Assert.Equal(reached.Value * 60 / 5000, finding.Value!.Value, 1e-9);
        Assert.Equal(4.10 * 1.10 / finding.Value.Value, finding.Windows[0].Window.High, 1e-9);
    }

    // 60 N·m, 31.4 kW, would reach some 35.8 m/s: 0.88 in top. One economy gear of 0.75 above it is fine, two of them are not.
    [Theory]
    [InlineData(new[] { 3.5, 2.1, 1.4, 1.0 }, Verdict.Fits)]
    [InlineData(new[] { 3.5, 2.1, 1.0, 0.75 }, Verdict.Fits)]
    [InlineData(new[] { 3.5, 2.1, 0.8, 0.6 }, Verdict.Watch)]
    [InlineData(new[] { 3.5, 2.1, 1.4, 1.1, 0.8 }, Verdict.Fits)]
    public void One_economy_gear_is_fine_and_two_are_not(double[] ratios, Verdict verdict)
        => Assert.Equal(verdict, Find(InventedLoad.WithTorque(60) with
        {
            Transmission = new("box", [.. ratios.Select((ratio, k) => InventedCar.Gear($"{k + 1}", ratio))]),
        }).Verdict);

    // As above: 0.88 · 0.6 = 0.53 in top, 0.88 · 1.4 = 1.23 below it, where the torque curve ends at its power peak.
    [Fact]
    public void A_hole_above_the_gear_below_top_is_a_watch()
    {
        var finding = Find(InventedLoad.WithTorque(60) with { Transmission = new("box", [InventedCar.Gear("1", 3.5), InventedCar.Gear("2", 1.4), InventedCar.Gear("3", 0.6)]) });

        Assert.Equal(Verdict.Watch, finding.Verdict);
        Assert.EndsWith("; that is beyond its redline, 100 %, and top is too long for it: no gear makes use of the power there.", finding.Says, StringComparison.Ordinal);
    }

    // What it cannot turn is no gearing's fault, and 4000 is below the 5000 of the power peak.
    [Fact]
    public void With_the_power_peak_beyond_the_redline_it_says_nothing()
        => Assert.Empty(new TopGearCheck().Look(InventedLoad.Car with { Engine = InventedLoad.Car.Engine! with { Redline = InventedCar.Exactly(4000 / 60.0) } }, CheckCase.NoGoals));

    // By its own limit 4.10 · 1.10 / 1.39 = 3.24 or less would do; 0.95 · 3300 rev/min at 100 km/h on 2.00 m want 3.762 or more.
    [Fact]
    public void Its_cure_keeps_to_what_is_wished()
    {
        var alone = Find(InventedLoad.Car).Cures[0];
        var wished = AllChecks.Look(InventedLoad.Car, new([InventedCar.Goal("100 km/h", "3300")])).Single(finding => finding.Check == "top-gear").Cures[0];

        Assert.StartsWith("axle ratio 3.", alone, StringComparison.Ordinal);
        Assert.EndsWith(" or less", alone, StringComparison.Ordinal);
        Assert.StartsWith("no axle ratio does for this too: axle ratio 3.77 to ", wished, StringComparison.Ordinal);
    }

    [Fact]
    public void The_gear_it_speaks_of_is_named()
    {
        var finding = Find(InventedLoad.WithTorque(60) with { Transmission = new("box", [InventedCar.Gear("1", 3.5), InventedCar.Gear("2", 2.1), InventedCar.Gear("3", 0.8), InventedCar.Gear("4", 0.6)]) });

        Assert.Contains("there top gear (4) turns the engine", Find(InventedLoad.Car).Says, StringComparison.Ordinal);
        Assert.Contains("there gear 3, the one below top (4), turns the engine", finding.Says, StringComparison.Ordinal);
        Assert.EndsWith("; less than 85 % in the gear below top is over-geared, as one economy gear is fine and two are not.", finding.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Until_all_is_known_it_says_nothing() => Assert.Empty(new TopGearCheck().Look(InventedCar.Plain, CheckCase.NoGoals));

    private static Finding Find(Driveline car) => Assert.Single(new TopGearCheck().Look(car, CheckCase.NoGoals));
}
