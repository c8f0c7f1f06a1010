using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Measurements;

namespace BuildLog.Tui.Tests.Measurements;

public sealed class OtherTalliesTests
{
    // 10 output turns and between 30 and 31 of the input: 3.0 to 3.1, midway 3.05.
    [Fact]
    public void A_gears_count_says_its_ratio_and_guesses_no_gearbox()
    {
        var tally = new GearTally("Sorrel four-speed", "1") { Written = new string('i', 30) + new string('o', 10) };
        Assert.StartsWith("Ratio 3.05 ±", Assert.Single(tally.Live), StringComparison.Ordinal);
        Assert.Equal("10:30.25", tally.Reading(0.25));
        Assert.Null(tally.NotYet);
    }

    [Fact]
    public void A_roll_counts_the_wheel_alone_and_leaves_the_distance_open()
    {
        var tally = new RollTally("steel wheels");
        Assert.StartsWith("Roll at least one", tally.NotYet, StringComparison.Ordinal);
        for (var k = 0; k < 5; k++) tally.Count(TallyEnd.Driven);
        Assert.Equal("5:", tally.Reading);
        Assert.Null(tally.NotYet);
    }

    [Fact]
    public void A_count_goes_on_from_what_was_written_of_it()
    {
        var first = new AxleTally("Harrow banjo", Wheels.Together);
        foreach (var end in new[] { TallyEnd.Driving, TallyEnd.Driving, TallyEnd.Driven }) first.Count(end);
        var again = new AxleTally("Harrow banjo", Wheels.Together) { Written = first.Written };
        Assert.Equal((1, 2), (again.DrivenTurns, again.DrivingTurns));
        Assert.True(again.Undo());
        Assert.Equal((0, 2), (again.DrivenTurns, again.DrivingTurns));
    }
}
