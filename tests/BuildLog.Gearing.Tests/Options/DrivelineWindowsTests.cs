using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using BuildLog.Gearing.Tyres;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Options;

public sealed class DrivelineWindowsTests
{
    private static readonly CruiseGoal Cruise = InventedCar.Goal("108 km/h", "3000 rpm", "10 %");

    // By hand: 108 km/h on 2.00 m are 15 wheel turns a second; 45 to 55 rev/s are ratios 3.00 to 3.667. Gear: /4.10; overdrive the same, top being 1.
    [Fact]
    public void One_goal_alone_gives_its_own_windows()
    {
        var windows = DrivelineWindows.Of(InventedCar.Plain, new([Cruise]));

        Same(3, 55 / 15.0, Of(windows, Position.RearAxle));
        Same(3 / 4.1, 55 / 15.0 / 4.1, Of(windows, Position.Transmission));
        Same(3 / 4.1, 55 / 15.0 / 4.1, Of(windows, Position.Overdrive));
        Same(30 * 4.1 / 55, 30 * 4.1 / 45, Of(windows, Position.Tyres));
    }

    // Whatever language the quantity is named in.
    [Theory]
    [InlineData("", true)]
    [InlineData("3", false)]
    public void A_window_knows_whether_it_is_of_the_top_gear(string gear, bool isTop)
        => Assert.Equal(isTop, DrivelineWindows.Of(InventedCar.Plain, new([InventedCar.Goal("108 km/h", "3000 rpm", "10 %", gear)])).Single(window => window.Position == Position.Transmission).IsOfTopGear);

    // By hand: first gear 3.5, so an overall low of 11.2 asks for an axle of 3.20 or more.
    [Fact]
    public void Each_edge_names_who_demands_it()
    {
        var axle = DrivelineWindows.OfAxle(InventedCar.Plain, new([Cruise]) { OverallLow = OverallLowGoal.Read("11.2").OrRefuse() })!;

        Same(3.2, 55 / 15.0, axle);
        Assert.Equal("overall-low", axle.Lowest!.Check);
        Assert.Equal("cruise", axle.Highest!.Check);
        Assert.Null(axle.Contradiction);
        Assert.Equal("axle ratio 3.20 to 3.66", axle.InWords());
    }

    // By hand: 14 overall in a first gear of 3.5 is 4.00 at least; the cruise allows 3.667 at most; 0.333 between them.
    [Fact]
    public void Two_wishes_that_exclude_each_other_are_named_with_the_distance()
    {
        var axle = DrivelineWindows.OfAxle(InventedCar.Plain, new([Cruise]) { OverallLow = OverallLowGoal.Read("14").OrRefuse() })!;

        Assert.True(axle.Window.IsEmpty);
        Assert.Null(axle.SureWindow);
        Assert.Equal(
            "overall low ratio (14.00 or more) wants axle ratio 4.00 or more, cruise engine speed at 108 km/h (2700 to 3300 rev/min) wants 3.67 or less: they exclude each other by 0.33.",
            axle.Contradiction);
        Assert.Equal(axle.Contradiction, axle.InWords());
        Assert.Null(axle.OpenedBy);
    }

    // At 108 km/h the plain car turns 900 for each 1.00 of its axle, at 130 km/h 1083: 2600 at most and 2400 at least are 2.40 at most and 2.667 at least.
    [Fact]
    public void Two_cruises_that_exclude_each_other_are_told_apart_by_their_speeds_and_said_once()
    {
        OwnersGoals both = new([InventedCar.Goal("108 km/h", "2500", "100 rpm"), InventedCar.Goal("130 km/h", "2500", "100 rpm")]);

        Assert.Equal(
            "cruise engine speed at 108 km/h (2400 to 2600 rev/min) wants axle ratio 2.67 or more, cruise engine speed at 130 km/h (2400 to 2600 rev/min) wants 2.40 or less: they exclude each other by 0.27.",
            DrivelineWindows.OfAxle(InventedCar.Plain, both)!.Contradiction);
        Assert.Single(AllChecks.Look(InventedCar.Plain, both).First(finding => finding.Check == "cruise").Cures, cure => cure.StartsWith("one of two wishes has to give way: ", StringComparison.Ordinal));
    }

    // 4.10 takes it to 2700 at 79 km/h: edges a thousandth apart are written with a thousandth.
    [Fact]
    public void Edges_that_lie_close_are_written_as_far_apart_as_they_are()
    {
        WindowOfPart axle = new(Position.RearAxle, "axle ratio", Units.One, new(4.1049, 4.0968), null, null) { Lowest = new("a", "This", "so", 4.1049), Highest = new("b", "That", "so", 4.0968) };

        Assert.Equal("this (so) wants axle ratio 4.1049 or more, that (so) wants 4.0968 or less: they exclude each other by 0.0081.", axle.Contradiction);
    }

    // An axle that would cure the cruise is too long for the crawl; the gearbox and the tyres are free of that.
    [Fact]
    public void A_finding_whose_cure_another_wish_excludes_says_so_in_its_place()
    {
        var cures = AllChecks.Look(InventedCar.Plain, new([Cruise]) { OverallLow = OverallLowGoal.Read("14").OrRefuse() }).First(finding => finding.Check == "cruise").Cures;

        Assert.Contains(
            "no axle ratio does for all: overall low ratio (14.00 or more) wants axle ratio 4.00 or more, cruise engine speed at 108 km/h (2700 to 3300 rev/min) wants 3.67 or less: they exclude each other by 0.33",
            cures);
        Assert.DoesNotContain(cures, cure => cure.StartsWith("axle ratio", StringComparison.Ordinal));
        Assert.Contains(cures, cure => cure.StartsWith("tyre rolling circumference", StringComparison.Ordinal));
    }

    // A lowest clean pull of 60 rev/s would ask for an axle of 4.00 or more; from memory it warns, and warnings narrow nothing.
    [Theory]
    [InlineData(Source.Assumed, false)]
    [InlineData(Source.Measured, true)]
    public void Only_a_verified_limit_narrows_a_window(Source source, bool narrows)
    {
        var car = InventedCar.Plain with { Engine = new("engine") { LowestPull = new(60, source) } };

        Assert.Equal(narrows ? 4.0 : 3.0, DrivelineWindows.OfAxle(car, new([Cruise]))!.Window.Low, 1e-9);
    }

    // What the windows promise, asked of the checks themselves: inside the sure window all fit, outside the window one does not.
    [Fact]
    public void The_edges_are_where_the_verdict_flips()
        => Gen.Select(Gen.Double[0.001, 0.02], Gen.Double[9, 12.5], Gen.Double[-0.5, 1.5]).Sample((relative, low, place) =>
        {
            var car = InventedCar.Plain with { Tyres = InventedCar.Rolling(InventedCar.Of(2, 2 * relative)) };
            var goals = new OwnersGoals([Cruise]) { OverallLow = OverallLowGoal.Read(FormattableString.Invariant($"{low:0.00}")).OrRefuse() };
            var axle = DrivelineWindows.OfAxle(car, goals)!;
            if (axle.SureWindow is not { } sure || Math.Abs(place) < 1e-6 || Math.Abs(place - 1) < 1e-6) return;

            var ratio = sure.Low + (place * (sure.High - sure.Low));
            var verdicts = AllChecks.Look(car with { RearAxle = InventedCar.Axle(ratio) }, goals)
                .Where(finding => finding.Check is "cruise" or "overall-low").Select(finding => finding.Verdict).ToList();

            Assert.Equal(place is > 0 and < 1, verdicts.All(verdict => verdict == Verdict.Fits));
        });

    // 700 mm at most on 205/65R15: π · 0.7 · 0.971 = 2.1353 m; the sure window leaves room for tyres of one marking.
    [Fact]
    public void A_limit_of_diameter_leaves_a_window_of_the_circumference()
    {
        var car = InventedCar.Plain with { Tyres = new("tyres", InventedCar.Exactly(1.975), TyreSizeText.Read("205/65R15").OrRefuse()) };
        var tyres = Of(DrivelineWindows.Of(car, OwnersGoals.None with { TyreDiameter = LengthLimit.ReadTyreDiameter("700 mm").OrRefuse() }), Position.Tyres);

        Assert.Equal(0.7 * Math.PI * 0.971, tyres.Window.High, 1e-9);
        Assert.Equal(double.NegativeInfinity, tyres.Window.Low);
        Assert.InRange(tyres.SureWindow!.Value.High, 0.96 * tyres.Window.High, 0.98 * tyres.Window.High);
        Assert.Equal(("tyre-diameter", null), (tyres.Highest!.Check, tyres.Lowest));
    }

    // An overdrive is engaged in top: a cruise in third asks for none, and the unit that is fitted takes no part in what it has to be.
    [Fact]
    public void The_overdrive_that_is_sought_does_not_depend_on_the_one_that_is_fitted()
    {
        var fitted = InventedCar.Plain with { Overdrive = new("unit", InventedCar.Exactly(0.8)) };

        Same(3 / 4.1, 55 / 15.0 / 4.1, Of(DrivelineWindows.Of(fitted, new([Cruise])), Position.Overdrive));
        Assert.DoesNotContain(DrivelineWindows.Of(InventedCar.Plain, new([InventedCar.Goal("60 km/h", "3000 rpm", "10 %", "3")])), window => window.Position == Position.Overdrive);
    }

    [Fact]
    public void An_uncertain_tyre_that_leaves_nothing_sure_is_what_to_measure()
    {
        var car = InventedCar.Plain with { Tyres = InventedCar.Rolling(InventedCar.Of(2, 0.2, settle: _ => "roll the tyres out")) };
        var axle = DrivelineWindows.OfAxle(car, new([Cruise]))!;

        Assert.False(axle.Window.IsEmpty);
        Assert.Null(axle.SureWindow);
        Assert.Equal("roll the tyres out", axle.OpenedBy);
        Assert.Null(DrivelineWindows.OfAxle(car with { Tyres = InventedCar.Rolling(InventedCar.Of(2, 0.2)) }, new([Cruise]))!.OpenedBy);
    }

    // By the other way: a first gear at the window's edge starts on just the hill that is wanted. 3.5 starts on more than 20 % and on less than 60 %.
    [Theory]
    [InlineData("20 %")]
    [InlineData("40 %")]
    public void The_hill_to_start_on_asks_for_a_first_gear(string hill)
    {
        var car = InventedLoad.WithTorque(120) with { Load = InventedLoad.Exact with { Grip = InventedCar.Exactly(2) }, };
        var goals = OwnersGoals.None with { HillStart = HillStartGoal.Read(hill).OrRefuse() };

        var window = Assert.Single(DrivelineWindows.Of(car, goals), window => window is { Position: Position.Transmission, Quantity: "first gear" }).Window;

        Assert.True(double.IsPositiveInfinity(window.High));
        var at = car with { Transmission = car.Transmission! with { Gears = [InventedCar.Gear("1", window.Low), .. car.Transmission.Gears.Skip(1)] } };
        Assert.Equal(goals.HillStart.Gradient.Value, HillStart.Of(at)!.Gradient.Value, 1e-6);
    }

    [Fact]
    public void Where_the_wheels_spin_first_no_gear_climbs_the_hill()
        => Assert.DoesNotContain(
            DrivelineWindows.Of(InventedLoad.WithTorque(900), OwnersGoals.None with { HillStart = HillStartGoal.Read("90 %").OrRefuse() }), window => window.Position == Position.Transmission);

    private static WindowOfPart Of(IReadOnlyList<WindowOfPart> windows, Position position) => Assert.Single(windows, window => window.Position == position);

    private static void Same(double low, double high, WindowOfPart window)
    {
        Assert.Equal(low, window.Window.Low, 1e-9);
        Assert.Equal(high, window.Window.High, 1e-9);
    }
}
