using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

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

    // Axle for 2850 at 108 km/h: 4.10 · 2850/3690 = 3.17; for 1800: 2.00, and none is made below 2.2.
    [Fact]
    public void The_cures_are_ratios_and_tyres()
    {
        var finding = Find(Car, "108 km/h");

        Assert.Equal(Because.UnverifiedLimit, finding.Because);
        Assert.Equal("axle ratio 2.21 to 3.16", finding.Cures[0]);
        Assert.Equal("At 108 km/h the engine turns 3690 rev/min; its torque peaks at 3000 rev/min, and a cruise does best at 1800 to 2850 rev/min.", finding.Says);
        Assert.Null(finding.SettledBy);
    }

    // At 200 km/h it turns 6833: an axle of 1.08 to 1.71, tyres of 4.8 to 7.6 m or a top gear of 0.26 to 0.42 would do, and nobody makes them.
    [Fact]
    public void A_cure_that_nobody_makes_is_none()
        => Assert.Equal(["no one part is made that far off: it takes two, or another wish"], Find(Car, "200 km/h").Cures);

    // Converter slip turns it 1/0.945 faster, so that the axle may be so much less: 3.1667 · 0.945 = 2.99.
    [Fact]
    public void A_slipping_converter_is_counted_in()
    {
        var finding = Find(Car with { Transmission = Car.Transmission! with { Converter = new(LocksUp: false) } }, "108 km/h");

        Assert.Equal(3690 / 0.945, finding.Value!.Value * 60, 1e-6);
        Assert.Equal(2.9925, finding.Windows[0].Window.High, 1e-4);
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
