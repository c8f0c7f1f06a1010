using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Measurements;

namespace BuildLog.Tui.Tests.Measurements;

public sealed class TallyModelTests
{
    private readonly AxleTally tally = new("Harrow banjo", Wheels.Together);

    [Fact]
    public void Every_tenth_turn_of_an_end_is_worth_a_bell()
    {
        var bells = Enumerable.Range(1, 20).Where(_ => tally.Count(TallyEnd.Driving)).Count();
        Assert.Equal(2, bells);
    }

    [Fact]
    public void A_slip_is_taken_back_last_turn_first()
    {
        tally.Count(TallyEnd.Driving);
        tally.Count(TallyEnd.Driven);
        Assert.True(tally.Undo());
        Assert.Equal((0, 1), (tally.DrivenTurns, tally.DrivingTurns));
        Assert.True(tally.Undo());
        Assert.False(tally.Undo());
    }

    [Fact]
    public void Enough_is_what_it_says_itself()
    {
        Assert.False(tally.IsEnough);
        for (var k = 0; k < 100 && !tally.IsEnough; k++)
        {
            Assert.DoesNotContain(tally.Live, line => line.StartsWith("Enough to tell", StringComparison.Ordinal));
            CountTo(wheel: 1, propshaft: 4);
        }

        Assert.Contains(tally.Live, line => line.StartsWith("Enough to tell", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("45 deg", "0.25", "0.03")]
    [InlineData("120°", "0.1", "0.03")]
    [InlineData("1/4", "0.25", "0.25")]
    [InlineData("0.3", "0.1", "0.1")]
    public void What_is_typed_in_degrees_was_read_in_degrees(string typed, string chosen, string step)
    {
        LastPart? read = null;
        var form = TallyForms.Fraction(tally, part => read = part);
        var values = new Tui.Forms.FormValues(new Dictionary<string, string> { ["fraction"] = typed, ["readTo"] = chosen });
        form.Save(values);
        Assert.Equal(step, read!.ReadTo);
        Assert.Equal(step != chosen, form.Echo!(values)[0].EndsWith("as typed.", StringComparison.Ordinal));
    }

    // 10 wheel turns, 41 whole propshaft turns and something below one more: 4.1 to 4.2, midway 4.15.
    [Fact]
    public void The_ratio_leaves_room_for_the_part_of_a_turn_nobody_has_read()
    {
        CountTo(wheel: 10, propshaft: 41);
        Assert.StartsWith("Ratio 4.15 ±", tally.Live[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Propshaft_turns_after_the_last_wheel_turn_wait_for_the_next()
    {
        CountTo(wheel: 10, propshaft: 41);
        var before = tally.Live;
        tally.Count(TallyEnd.Driving);
        Assert.Equal(before, tally.Live);
        Assert.StartsWith("Stop on a whole turn of the wheel", tally.NotYet, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "10:41")]
    [InlineData("1/4", "10:41.25")]
    [InlineData("0.3", "10:41.3")]
    [InlineData("90°", "10:41.25")]
    [InlineData("180 deg", "10:41.5")]
    public void The_part_of_a_turn_is_read_as_people_say_it(string typed, string written)
    {
        CountTo(wheel: 10, propshaft: 41);
        Assert.True(TallyFraction.Read(typed).Understood(out var fraction));
        Assert.Equal(written, tally.Reading(fraction));
    }

    [Theory]
    [InlineData("1")]
    [InlineData("120")]
    [InlineData("360°")]
    [InlineData("-0.2")]
    [InlineData("some")]
    public void A_part_that_is_no_part_of_a_turn_is_refused(string typed) => Assert.Equal("1/4, 0.3 or 120°", TallyFraction.Read(typed).Refusal?.Example);

    [Fact]
    public void Digits_are_five_rows_of_equal_width()
    {
        var rows = BigDigits.Rows(1234567890, 1, '#').ToList();
        Assert.Equal(5, rows.Count);
        Assert.Single(rows.Select(row => row.Length).Distinct());
        Assert.Equal(["########", "      ##", "    ##  ", "    ##  ", "    ##  "], BigDigits.Rows(7, 1, '#'));
    }

    private void CountTo(int wheel, int propshaft)
    {
        for (var k = 0; k < propshaft; k++) tally.Count(TallyEnd.Driving);
        for (var k = 0; k < wheel; k++) tally.Count(TallyEnd.Driven);
    }
}
