using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

public sealed class LuggingCheckTests
{
    // 108 km/h in top: 3690 rev/min; 36 km/h: 1230.
    [Theory]
    [InlineData("108 km/h", Source.Measured, Verdict.Fits)]
    [InlineData("36 km/h", Source.Measured, Verdict.Clash)]
    [InlineData("36 km/h", Source.OwnersWord, Verdict.Clash)]
    [InlineData("36 km/h", Source.Assumed, Verdict.Watch)]
    public void The_engines_own_lowest_pull_is_a_limit_unless_it_is_assumed(string speed, Source source, Verdict verdict)
    {
        var car = InventedCar.Plain with { Engine = new("four") { LowestPull = CheckCase.Known(1500 / 60.0, source) } };
        var finding = Find(car, speed);

        Assert.Equal(verdict, finding.Verdict);
        if (verdict != Verdict.Fits) Assert.Equal("axle ratio 5.01 or more", finding.Cures[0]);
    }

    // Torque peaks at 4000: half is 2000. At 54 km/h it turns 1845, where the level road takes 205.9 + 0.49 · 225 = 316.2 N; 30 N·m make 367 N, 86 %.
    [Fact]
    public void Nobody_knows_it_but_the_load_is_high()
    {
        var finding = Find(Weak(30), "54 km/h");

        Assert.Equal((Verdict.Watch, Because.UnverifiedLimit), (finding.Verdict, finding.Because));
        Assert.Contains("86 % of its torque", finding.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void A_light_load_below_half_the_torque_peak_is_no_matter()
        => Assert.Empty(new LuggingCheck().Look(Weak(200), CheckCase.Cruise("54 km/h", "1845")));

    [Fact]
    public void Without_pull_load_or_goal_it_says_nothing()
    {
        Assert.Empty(new LuggingCheck().Look(InventedCar.Plain, CheckCase.Cruise("36 km/h", "1230")));
        Assert.Empty(new LuggingCheck().Look(InventedLoad.Car, CheckCase.NoGoals));
    }

    private static Driveline Weak(double torque)
        => InventedLoad.Car with { Engine = new("four") { Torque = InventedLoad.Curve((1000, torque), (2000, torque), (4000, torque + 20), (5000, torque)) } };

    private static Finding Find(Driveline car, string speed) => Assert.Single(new LuggingCheck().Look(car, CheckCase.Cruise(speed, "2400")));
}
