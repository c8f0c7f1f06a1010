using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Tests.Bench;

public sealed class GoalWordsTests
{
    [Fact]
    public void Every_goal_is_told_and_what_follows_says_from_what()
    {
        var goals = new OwnersGoals([CruiseGoal.ReadLine("100 km/h at 2500 rpm").OrRefuse()])
        {
            Hill = HillGoal.Read("6 %", "80 km/h").OrRefuse(),
            HillStart = HillStartGoal.Read("25 %").OrRefuse(),
            TopSpeed = TopSpeedGoal.Read("150 km/h").OrRefuse(),
            OverallLow = OverallLowGoal.Read("40").OrRefuse(),
            TyreDiameter = LengthLimit.ReadTyreDiameter("790 mm").OrRefuse(),
            TyreWidth = LengthLimit.ReadTyreWidth("225 mm").OrRefuse(),
            Track = LengthLimit.ReadTrack("1450 mm").OrRefuse(),
        };
        var told = GoalWords.Of(goals, DrivelineWindows.Of(new() { Tyres = new("set", new(2.0, Source.Measured), null), Transmission = new("box", [new("1", new(3.5, Source.MakersData)), new("2", new(1, Source.MakersData))]) }, goals), UnitSystem.Metric);

        Assert.Equal(8, told.Wants.Count);
        Assert.All(["6 % at 80 km/h", "25 %", "150 km/h", "40", "790 mm", "225 mm", "1450 mm"], typed => Assert.Contains(told.Wants, want => want.Contains(typed, StringComparison.Ordinal)));
        Assert.Equal("cruise engine speed at 100 km/h (2375 to 2625 rev/min):", told.Follows[0]);
        Assert.Contains(told.Follows, line => line.StartsWith("  axle ratio ", StringComparison.Ordinal));
    }

    [Fact]
    public void Where_two_wishes_set_the_ends_of_a_window_both_are_named()
    {
        var window = new WindowOfPart(Position.RearAxle, "axle ratio", Units.One, new(3.5, 3.9), new(3.6, 3.8), null)
        {
            Lowest = new("cruise", "Cruise engine speed at 100 km/h", "2400 rev/min or more", 3.5),
            Highest = new("top-speed", "Top speed", "150 km/h or more", 3.9),
        };
        Assert.Equal(
            ["no less for cruise engine speed at 100 km/h (2400 rev/min or more), no more for top speed (150 km/h or more):", "  axle ratio 3.50 to 3.90, for certain 3.61 to 3.79"],
            GoalWords.Of(OwnersGoals.None, [window], UnitSystem.Metric).Follows);
    }
}
