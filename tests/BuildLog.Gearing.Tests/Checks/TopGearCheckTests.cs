using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

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
