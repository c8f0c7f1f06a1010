using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Options;

/// <remarks>108 km/h on 2.00 m are 15 wheel turns a second: an axle of 1.00 turns the engine at 900 rev/min.</remarks>
public sealed class WindowOfPartTests
{
    private static readonly Demand Low = new("low", "Low", "so", 3), High = new("high", "High", "so", 4);

    private static WindowOfPart Axle => new(Position.RearAxle, "axle ratio", Units.One, new(3, 4), new(3.1, 3.9), null) { Lowest = Low, Highest = High };

    // In as many places as the window itself: a ratio in two at least, metres to the millimetre, whole millimetres without any.
    [Fact]
    public void Edges_that_exclude_each_other_are_written_in_figures_of_their_unit()
    {
        Assert.Equal("low (so) wants axle ratio 14.00 or more, high (so) wants 4.00 or less: they exclude each other by 10.00.", Empty(Units.One, 14, 4));
        Assert.Equal("low (so) wants axle ratio 3.000 m or more, high (so) wants 2.000 m or less: they exclude each other by 1.000 m.", Empty(Units.Metre, 3, 2));
        Assert.Equal("low (so) wants axle ratio 700 mm or more, high (so) wants 650 mm or less: they exclude each other by 50 mm.", Empty(Units.Millimetre, 0.70, 0.65));

        static string? Empty(Unit unit, double low, double high) => (Axle with { Unit = unit, Window = new(low, high) }).Contradiction;
    }

    [Fact]
    public void A_finding_demands_it_where_it_sets_one_of_its_edges()
    {
        var finding = AllChecks.Look(InventedCar.Plain, OwnersGoals.None)[0];

        Assert.True(Axle.IsDemandedBy(finding with { Check = "low" }) && Axle.IsDemandedBy(finding with { Check = "high" }));
        Assert.False(Axle.IsDemandedBy(finding with { Check = "other" }) || (Axle with { Lowest = null }).IsDemandedBy(finding with { Check = "low" }));
    }

    // Who sets the edge that counts is named; an edge that is met already stays with whom it was.
    [Theory]
    [InlineData(3.2, 5, "the yard", "high")]
    [InlineData(2, 3.5, "low", "the yard")]
    [InlineData(3, 4, "low", "high")]
    [InlineData(2, 5, "low", "high")]
    public void Further_limits_narrow_it_and_say_who_they_are_of(double low, double high, string lowest, string highest)
    {
        var within = Axle.Within(new(low, high), "the yard");

        Assert.Equal(new(Math.Max(3, low), Math.Min(4, high)), within.Window);
        Assert.Equal(new Window(Math.Max(3.1, low), Math.Min(3.9, high)), within.SureWindow);
        Assert.Equal((lowest, highest), (Who(within.Lowest!), Who(within.Highest!)));
        Assert.Null(Axle.Within(new(3.95, 5), "the yard").SureWindow);

        static string Who(Demand demand) => demand.Check.Length > 0 ? demand.Check : demand.Title;
    }

    [Fact]
    public void Windows_stand_in_the_order_of_the_driveline_and_an_open_side_has_nobody_who_demands_it()
    {
        var windows = DrivelineWindows.Of(InventedCar.Plain, Cruise("3000 rpm") with { OverallLow = OverallLowGoal.Read("9").OrRefuse() });
        var low = DrivelineWindows.OfAxle(InventedCar.Plain, OwnersGoals.None with { OverallLow = OverallLowGoal.Read("9").OrRefuse() })!;

        Assert.Equal(windows.Select(window => window.Position).Order(), windows.Select(window => window.Position));
        Assert.True(windows.Count > 3);
        Assert.Equal(("overall-low", null), (low.Lowest!.Check, low.Highest));
        Assert.Equal("cruise", windows.Single(window => window.Position == Position.Overdrive).Lowest!.Check);
        Assert.Null(DrivelineWindows.OfAxle(InventedCar.Plain, OwnersGoals.None));
    }

    // 900 rev/min is an axle of 1.00, and none is made below 2.2; where two wishes exclude each other nobody asks what is made.
    [Fact]
    public void A_window_beyond_what_is_made_says_so()
    {
        Assert.True(DrivelineWindows.OfAxle(InventedCar.Plain, Cruise("3000 rpm"))!.IsMade);
        Assert.False(DrivelineWindows.OfAxle(InventedCar.Plain, Cruise("900 rpm"))!.IsMade);
        Assert.True(DrivelineWindows.OfAxle(InventedCar.Plain, Cruise("900 rpm") with { OverallLow = OverallLowGoal.Read("14").OrRefuse() })!.IsMade);
        Assert.True(Axle.IsMade);
    }

    // What the front axle leaves of the rear one is no window: it is geared alike.
    [Fact]
    public void The_other_axle_leaves_no_window_of_the_driving_one()
    {
        var truck = InventedCar.Plain with
        {
            TransferCase = new TransferCase("case", InventedCar.Exactly(1), InventedCar.Exactly(2.5)) { FrontDrive = FrontDrive.Declutch },
            FrontAxle = InventedCar.Axle(4.10),
        };

        Assert.Single(DrivelineWindows.Of(truck, Cruise("3000 rpm")), window => window.Position == Position.RearAxle);
    }

    // Tyres to 10 % and an axle to 12 %: no axle is sure of 10 %, and for another axle only the tyres are left to be measured, though the axle there is known least.
    [Fact]
    public void What_leaves_one_wish_nothing_sure_is_measured_first()
    {
        var car = InventedCar.Plain with { Tyres = Rough(0.2), RearAxle = InventedCar.Axle(InventedCar.Of(4.10, 0.5, "axle", _ => "count the axle")) };

        var axle = DrivelineWindows.OfAxle(car, Cruise("3000 rpm") with { OverallLow = OverallLowGoal.Read("9").OrRefuse() })!;

        Assert.Equal((null, "roll the tyres out"), (axle.SureWindow, axle.OpenedBy));
    }

    // Tyres to 1 %: 3000 and 3200 ± 5 % leave 3.23 to 3.43 and 3.44 to 3.66 for sure, each; together only 3.38 to 3.50 unsurely. First gear is known better, so the tyres come first.
    [Fact]
    public void Where_only_all_wishes_together_leave_nothing_sure_the_least_known_number_is_measured_first()
    {
        var car = InventedCar.Plain with
        {
            Tyres = Rough(0.02),
            Transmission = InventedCar.Plain.Transmission! with { Gears = [InventedCar.Gear("1", InventedCar.Of(3.5, 0.01, "first", _ => "count first gear")), .. InventedCar.Plain.Transmission.Gears.Skip(1)] },
        };
        var goals = new OwnersGoals([InventedCar.Goal("108 km/h", "3000 rpm", "5 %"), InventedCar.Goal("108 km/h", "3200 rpm", "5 %")]) { OverallLow = OverallLowGoal.Read("9").OrRefuse() };

        var axle = DrivelineWindows.OfAxle(car, goals)!;

        Assert.Equal((false, null, "roll the tyres out"), (axle.Window.IsEmpty, axle.SureWindow, axle.OpenedBy));
    }

    [Fact]
    public void Where_something_is_sure_or_two_wishes_exclude_each_other_nothing_need_be_measured()
    {
        var car = InventedCar.Plain with { Tyres = Rough(0.02) };

        Assert.NotNull(DrivelineWindows.OfAxle(car, Cruise("3000 rpm"))!.SureWindow);
        Assert.Null(DrivelineWindows.OfAxle(car, Cruise("3000 rpm"))!.OpenedBy);
        Assert.Null(DrivelineWindows.OfAxle(car, Cruise("3000 rpm") with { OverallLow = OverallLowGoal.Read("14").OrRefuse() })!.OpenedBy);
    }

    private static OwnersGoals Cruise(string wanted) => new([InventedCar.Goal("108 km/h", wanted, "10 %")]);

    private static TyreSet Rough(double u) => InventedCar.Rolling(InventedCar.Of(2, u, "tyres", _ => "roll the tyres out"));
}
