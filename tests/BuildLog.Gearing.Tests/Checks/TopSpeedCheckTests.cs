using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using BuildLog.Gearing.Tyres;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

public sealed class TopSpeedCheckTests
{
    // 40.650 m/s, 146.34 km/h, ended by 5000 rev/min. For 180 km/h: axle 4.10 · 146.34/180 = 3.333, tyre 2.00 · 180/146.34 = 2.460; longer still there is no power left.
    [Fact]
    public void Where_the_gear_ends_it_axle_and_tyre_are_the_cure()
    {
        var finding = Find(InventedLoad.Car, "180 km/h");

        Assert.Equal(Verdict.Clash, finding.Verdict);
        Assert.Equal("It reaches 146.3415 km/h in gear 4: the engine then turns 5000 rev/min and may not turn faster; wanted 180 km/h or more.", finding.Says);
        Assert.Equal(["axle ratio 2.54 to 3.32", "tyre rolling circumference 2.461 to 3.235 m"], finding.Cures);
    }

    // A tyre a quarter larger than the one fitted is the largest called made, 2.5 m. 835 mm at most: π · 0.835 · 0.971 = 2.547 m, surely 2.547/1.0281 = 2.477, as a label and the loaded factor are known. 700 mm leave 2.135 m, less than any that would do.
    [Fact]
    public void A_tyre_that_cures_it_keeps_to_the_limit_of_diameter()
    {
        var car = InventedLoad.Car with { Tyres = InventedLoad.Car.Tyres! with { Size = TyreSizeText.Read("205/65R15").OrRefuse() } };
        IReadOnlyList<string> Cures(string most) => AllChecks.Look(car, OwnersGoals.None with { TopSpeed = TopSpeedGoal.Read("180 km/h").OrRefuse(), TyreDiameter = LengthLimit.ReadTyreDiameter(most).OrRefuse() })
            .Single(finding => finding.Check == "top-speed").Cures;

        Assert.Equal(["axle ratio 2.54 to 3.32", "tyre rolling circumference 2.461 to 2.476 m"], Cures("835 mm"));
        Assert.StartsWith("no tyre rolling circumference does for all: ", Cures("700 mm")[1], StringComparison.Ordinal);
    }

    [Fact]
    public void What_it_reaches_fits() => Assert.Equal(Verdict.Fits, Find(InventedLoad.Car, "140 km/h").Verdict);

    // 60 N·m reach 32.843 m/s, 118.2 km/h. 130 km/h take (205.94 + 0.49 · 1304.0) · 36.111/0.9504 = 32.10 kW, up to 33.5 with what the losses leave open; there are 31.4. Top turns 5000 · 130/146.34 there.
    [Fact]
    public void Where_power_ends_it_more_power_is_the_cure()
    {
        var finding = Find(InventedLoad.WithTorque(60), "130 km/h");

        Assert.Equal(Verdict.Clash, finding.Verdict);
        Assert.Contains("more takes more power", finding.Says, StringComparison.Ordinal);
        Assert.Equal("an engine of 34 kW or more at 4442 rev/min, as it turns at 130 km/h in gear 4", Assert.Single(finding.Cures));
    }

    // 32.1 kW at 4442 rev/min are 69.0 N·m.
    [Fact]
    public void The_power_that_is_named_is_enough_at_the_engine_speed_that_is_named_and_less_is_not()
        => Assert.Equal((Verdict.Watch, Verdict.Clash), (Find(InventedLoad.WithTorque(69.1), "130 km/h").Verdict, Find(InventedLoad.WithTorque(60 * 32.1 / 31.416), "130 km/h").Verdict));

    // The gear ends it at 146 km/h; 300 km/h take more than the engine has, too.
    [Fact]
    public void Where_both_are_wanting_neither_is_called_enough()
    {
        var cures = Find(InventedLoad.Car, "300 km/h").Cures;

        Assert.StartsWith("an engine of ", cures[0], StringComparison.Ordinal);
        Assert.EndsWith(", and one of the ratios or tyres here as well", cures[0], StringComparison.Ordinal);
    }

    // 31.4 kW are enough for 125 km/h (29.1 kW), but top is too tall to reach them: 4.10 · 146.34/125 = 4.800 is as short as it may be.
    [Fact]
    public void Where_the_power_is_there_but_out_of_reach_the_gearing_is_the_cure()
        => Assert.Equal(["axle ratio 4.66 to 4.79", "tyre rolling circumference 1.709 to 1.764 m"], Find(InventedLoad.WithTorque(60), "125 km/h").Cures);

    // An engine that may turn far beyond its power peak: geared so that it turns out at 160 km/h it would have 30 kW less than at its peak.
    [Theory]
    [InlineData("160 km/h", "2.40", "3.00", "3.60", "4.10")]
    [InlineData("158 km/h", "2.40", "3.00", "3.70", "4.10")]
    public void An_axle_inside_the_window_fits_and_one_outside_does_not(string wanted, params string[] axles)
    {
        var car = InventedCar.Plain with { Load = InventedLoad.Exact, Engine = new("six", Redline: InventedCar.Exactly(6500 / 60.0)) { Torque = InventedLoad.Curve((1000, 130), (3500, 150), (4500, 120), (6500, 45)) } };
        var window = Find(car, wanted).Windows[0];

        Assert.NotNull(window.SureWindow);
        foreach (var axle in axles.Select(text => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture)).Concat([window.SureWindow.Value.Low, window.SureWindow.Value.High]))
        {
            var verdict = Find(car with { RearAxle = InventedCar.Axle(axle) }, wanted).Verdict;
            if (window.SureWindow.Value.Contains(axle)) Assert.Equal(Verdict.Fits, verdict);
            else Assert.NotEqual(Verdict.Fits, verdict);
        }
    }

    // Torque known to 3 %, drag to 4 %, tyres to 0.5 %: both ends of what is called sure are.
    [Theory]
    [InlineData("140 km/h")]
    [InlineData("148 km/h")]
    public void What_is_called_sure_is_sure_with_what_is_not_known_well(string wanted)
    {
        var car = InventedCar.Plain with
        {
            RearAxle = InventedCar.Axle(6.0),
            Tyres = InventedCar.Rolling(InventedCar.Of(2.00, 0.01)),
            Load = InventedLoad.Exact with { DragArea = InventedCar.Exactly(InventedCar.Of(0.8, 0.03)) },
            Engine = new("six", Redline: InventedCar.Exactly(6000 / 60.0)) { Torque = TorqueCurve.Of([new(1000 / 60.0, 130), new(3500 / 60.0, 160), new(4500 / 60.0, 140), new(6000 / 60.0, 80)]) },
        };
        var sure = Find(car, wanted).Windows[0].SureWindow!.Value;

        foreach (var axle in new[] { sure.Low * 1.002, (sure.Low + sure.High) / 2, sure.High * 0.998 }.Select(axle => Math.Max(axle, 2.2)))
            Assert.Equal(Verdict.Fits, Find(car with { RearAxle = InventedCar.Axle(axle) }, wanted).Verdict);
    }

    // Flat to 5000 rev/min, redline 6000: 146.3 km/h surely, 175.6 at most.
    [Theory]
    [InlineData("140 km/h", Verdict.Fits, "It reaches 146.3415 km/h in gear 4 at least: the engine's torque beyond 5000 rev/min is not known; wanted 140 km/h or more.")]
    [InlineData("160 km/h", Verdict.Open, "The top speed cannot be said: it is 146.3415 km/h at least in gear 4, and the engine's torque beyond 5000 rev/min is not known.")]
    [InlineData("180 km/h", Verdict.Clash, "It cannot reach more than 175.6098 km/h, though the engine's torque beyond 5000 rev/min is not known; wanted 180 km/h or more.")]
    public void Beyond_the_torque_curve_it_says_what_is_sure(string wanted, Verdict verdict, string says)
    {
        var finding = Find(InventedLoad.Car with { Engine = InventedLoad.Car.Engine! with { Redline = InventedCar.Exactly(100) } }, wanted);

        Assert.Equal((verdict, says), (finding.Verdict, finding.Says));
        if (verdict == Verdict.Open) Assert.Equal("enter the engine's torque up to its redline", Assert.Single(finding.Cures));
        if (verdict == Verdict.Clash) Assert.Equal("axle ratio 2.54 to 3.32", finding.Cures[0]);
    }

    // 60 N·m reach 118.2 km/h in any gear: a cruise at 130 is not to be had, whatever gear it is wished in.
    [Fact]
    public void A_cruise_that_no_gear_holds_clashes()
    {
        var finding = Assert.Single(new TopSpeedCheck().Look(InventedLoad.WithTorque(60), CheckCase.Cruise("130 km/h", "3690")));

        Assert.Equal(Verdict.Clash, finding.Verdict);
        Assert.EndsWith(": more takes more power; wanted 130 km/h or more, to cruise.", finding.Says, StringComparison.Ordinal);
        Assert.StartsWith("an engine of 34 kW or more at 4442 rev/min", Assert.Single(finding.Cures), StringComparison.Ordinal);
        Assert.Empty(new TopSpeedCheck().Look(InventedLoad.WithTorque(60), CheckCase.Cruise("110 km/h", "3690")));
        Assert.Equal(Verdict.Open, Assert.Single(new TopSpeedCheck().Look(InventedLoad.WithTorque(1), CheckCase.Cruise("110 km/h", "3690"))).Verdict);
    }

    // Cd·A 0.8 ± 0.15: 118 ± 11 km/h or so, and 120 is not surely out of reach.
    [Fact]
    public void With_a_load_that_is_only_assumed_it_clashes_when_that_is_sure_all_the_same()
    {
        Verdict At(string speed) => Assert.Single(new TopSpeedCheck().Look(
            InventedLoad.WithTorque(60) with { Load = InventedLoad.Exact with { DragArea = new(InventedCar.Of(0.8, 0.075), Source.Assumed) } }, CheckCase.Cruise(speed, "3690"))).Verdict;

        Assert.Equal((Verdict.Watch, Verdict.Clash), (At("120 km/h"), At("150 km/h")));
    }

    [Fact]
    public void A_redline_below_the_torque_curve_is_asked_about()
    {
        var finding = Find(InventedLoad.Car with { Engine = InventedLoad.Car.Engine! with { Redline = InventedCar.Exactly(500 / 60.0) } }, "140 km/h");

        Assert.Equal("The top speed cannot be said: the torque curve begins at 1000 rev/min, not below the redline of 500 rev/min.", finding.Says);
        Assert.Equal("correct the redline, or enter the engine's torque below it", Assert.Single(finding.Cures));
    }

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
