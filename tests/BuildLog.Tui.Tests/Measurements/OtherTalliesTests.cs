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

    // Ten turns left, six right, between 33 and 34 of the propshaft: i = 2 p / (w left + w right) = 2 · 33.5 / 16 = 4.19.
    [Fact]
    public void Each_wheel_is_counted_where_neither_is_held()
    {
        var tally = new AxleTally("Harrow banjo", Wheels.Each) { Written = new string('i', 33) + new string('r', 6) + new string('o', 10) };

        Assert.Equal((10, 6, 33), (tally.DrivenTurns, tally.OtherDrivenTurns, tally.DrivingTurns));
        Assert.StartsWith("Ratio 4.19 ±", tally.Live[0], StringComparison.Ordinal);
        Assert.Equal("10,6.5:33.25", tally.Reading(0.25, 0.5));
        Assert.Equal(tally.Written, new AxleTally("Harrow banjo", Wheels.Each) { Written = tally.Written }.Written);
    }

    // What the right wheel turned after the left one's last mark belongs to the next turn.
    [Fact]
    public void The_other_wheels_turns_after_the_last_mark_wait_as_the_propshafts_do()
    {
        var tally = new AxleTally("Harrow banjo", Wheels.Each) { Written = new string('i', 33) + new string('r', 6) + new string('o', 10) };
        var before = tally.Live;
        tally.Count(TallyEnd.OtherDriven);
        Assert.Equal(before[0], tally.Live[0]);
        Assert.StartsWith("Stop on a whole turn of the left wheel", tally.NotYet, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wheel_that_is_only_read_is_off_by_half_a_step()
    {
        Assert.Equal("0.125", new FinishedTally(Wheels.Each, "10,6.5:33.25", "0.25").Align);
        Assert.Null(new FinishedTally(Wheels.Together, "10:41", "0.25").Align);
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
