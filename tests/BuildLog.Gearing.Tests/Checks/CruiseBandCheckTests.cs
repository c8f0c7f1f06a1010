using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>Source of the limit: 0.60 and 0.95 of the power peak's speed, common practice, no source.</remarks>
public sealed class CruiseBandCheckTests
{
    // Torque peaks at 3000: the band is 1800 to 2850. At 108 km/h the plain car turns 3690.
    private static readonly Driveline Car = InventedCar.Plain with { Engine = new("four") { Torque = InventedLoad.Curve((1000, 150), (3000, 200), (5000, 150)) } };

    [Theory]
    [InlineData("80 km/h", Verdict.Fits)]
    [InlineData("108 km/h", Verdict.Watch)]
    [InlineData("40 km/h", Verdict.Watch)]
    public void Common_practice_warns_and_never_clashes(string speed, Verdict verdict)
        => Assert.Equal(verdict, Find(Car, speed).Verdict);

    // The goal, 2400 ± 5 %, lies within the band: axle for 2280 at 108 km/h 4.10 · 2280/3690 = 2.533, for 2520 2.80.
    [Fact]
    public void The_cures_are_ratios_and_tyres()
    {
        var finding = Find(Car, "108 km/h");

        Assert.Equal(Because.UnverifiedLimit, finding.Because);
        Assert.Equal("axle ratio 2.54 to 2.79", finding.Cures[0]);
        Assert.Equal("At 108 km/h the engine turns 3690 rev/min; its torque peaks at 3000 rev/min, and a cruise does best at 1800 to 2850 rev/min.", finding.Says);
        Assert.Null(finding.SettledBy);
    }

    // The goal of 2700 to 3300 and the band share 2700 to 2850: axles of 4.10 · 2700/3690 = 3.00 to 3.17.
    [Fact]
    public void The_cures_keep_to_the_goal()
        => Assert.Equal("axle ratio 3.01 to 3.16", Assert.Single(new CruiseBandCheck().Look(Car, new([InventedCar.Goal("108 km/h", "3000", "10 %")]))).Cures[0]);

    // The band of 1800 to 2850 takes an axle of 2.00 to 3.17, and none is made below 2.20. 3690 ± 5 % takes an axle of 3.90 to 4.30, and the band ends at 4.10 · 2850/3690 = 3.17; 1200 ± 5 % 1.27 to 1.40, and it begins at 2.00.
    [Theory]
    [InlineData("3690", "3.90 to 4.30, the torque band ends at 3.17", "3885 to 6150")]
    [InlineData("1200", "1.27 to 1.40, the torque band begins at 2.00", "1327 to 1900")]
    public void Where_goal_and_band_exclude_each_other_that_is_said_and_no_part_named(string goal, string says, string peak)
    {
        var finding = Assert.Single(new CruiseBandCheck().Look(Car, CheckCase.Cruise("108 km/h", goal)));

        Assert.EndsWith($" No axle ratio meets both: the goal needs {says}.", finding.Says, StringComparison.Ordinal);
        Assert.Empty(finding.Windows);
        Assert.Equal(["axle ratio 2.01 to 3.16, in practice 2.20 or more, with a cruise goal of 1800 to 2850 rev/min", $"an engine whose torque peaks at {peak} rev/min"], finding.Cures);
    }

    // At 200 km/h it turns 6833: an axle of 1.08 to 1.71, tyres of 4.8 to 7.6 m or a top gear of 0.26 to 0.42 would do, and nobody makes them.
    [Fact]
    public void A_cure_that_nobody_makes_is_none()
        => Assert.Equal(["no one part is made that far off: it takes two, or another wish"], Find(Car, "200 km/h").Cures);

    // Band and goal share 2160 to 2640: at 200 km/h in place of 6833 that is a top gear of 0.32 to 0.39, at 130 of 0.494 to 0.594, which is 0.50 to 0.58 as it is typed; none is made below 0.50.
    [Fact]
    public void A_top_gear_that_would_do_is_one_that_is_made()
    {
        var finding = AllChecks.Look(Car, new([InventedCar.Goal("130 km/h", "2400", "10 %")])).Single(finding => finding.Check == "cruise-band");

        Assert.Equal("ratio of top (4) 0.50 to 0.58", finding.Cures[^1]);
    }

    // Converter slip turns it 1/0.945 faster, so that the axle may be so much less: 2.80 · 0.945 = 2.646.
    [Fact]
    public void A_slipping_converter_is_counted_in()
    {
        var finding = Find(Car with { Transmission = Car.Transmission! with { Converter = new(LocksUp: false) } }, "108 km/h");

        Assert.Equal(3690 / 0.945, finding.Value!.Value * 60, 1e-6);
        Assert.Equal(2.646, finding.Windows[0].Window.High, 1e-4);
    }

    [Fact]
    public void Without_torque_or_goal_it_says_nothing()
    {
        Assert.Empty(new CruiseBandCheck().Look(InventedCar.Plain, CheckCase.Cruise("108 km/h", "3690")));
        Assert.Empty(new CruiseBandCheck().Look(Car, CheckCase.NoGoals));
        Assert.Empty(new CruiseBandCheck().Look(Car with { Tyres = null }, CheckCase.Cruise("108 km/h", "3690")));
    }

    private static Finding Find(Driveline car, string speed) => Assert.Single(new CruiseBandCheck().Look(car, CheckCase.Cruise(speed, "2400")));
}
