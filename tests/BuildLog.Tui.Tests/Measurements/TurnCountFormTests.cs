using BuildLog.Tui.Forms;
using BuildLog.Tui.Measurements;

namespace BuildLog.Tui.Tests.Measurements;

public sealed class TurnCountFormTests
{
    // 10:23 is 4.60 with one wheel held and 2.30 with both turning: no number before somebody looked.
    [Theory]
    [InlineData("", "First the other wheel: whether it turns makes the factor of two.")]
    [InlineData("OneHeld", "Ratio 4.60 ± 0.04")]
    [InlineData("Together", "Ratio 2.300 ± 0.016")]
    public void A_count_comes_to_nothing_before_the_other_wheel_is_known(string wheels, string says)
    {
        var form = TurnCountForm.For("Harrow banjo", new(2026, 5, 3), _ => { });
        var typed = form.Entries.ToDictionary(entry => entry.Id, entry => entry.Initial);
        (typed["turns"], typed["wheels"]) = ("10:23", wheels);

        Assert.StartsWith(says, form.Echo!(new FormValues(typed))[0], StringComparison.Ordinal);
    }

    // 2 · 10 / 20.5 is 0.976 and 2 · 400 / 10 is 80; with both wheels turning 10:23 is 2.30, and 10:14 is 1.40.
    [Theory]
    [InlineData("OneHeld", "20.5:10", "A ratio of 0.97561 is no axle ratio")]
    [InlineData("OneHeld", "10:400", "A ratio of 80 is no axle ratio")]
    [InlineData("Together", "10:14", "A ratio of 1.4 is no axle ratio")]
    [InlineData("Together", "10:23", null)]
    [InlineData("", "10:400", null)] // which wheels turned decides first
    public void Counts_that_make_no_axle_say_so_as_soon_as_they_are_left(string wheels, string turns, string? says)
    {
        var form = TurnCountForm.For("Harrow banjo", new(2026, 5, 3), _ => { });
        var state = new FormState(form);
        state.Set("wheels", wheels);
        state.Set("turns", turns);

        state.CheckWhenLeft(form.Entries.Single(entry => entry.Id == "turns"));

        if (says is null) Assert.Null(state.MessageOf("turns"));
        else Assert.StartsWith("! " + says, state.MessageOf("turns"), StringComparison.Ordinal);
    }

    // 10:14 with one wheel held is 2.80.
    [Fact]
    public void What_was_wrong_with_the_counts_goes_with_the_answer_it_hung_on()
    {
        var form = TurnCountForm.For("Harrow banjo", new(2026, 5, 3), _ => { });
        var state = new FormState(form);
        state.Set("wheels", "Together");
        state.Set("turns", "10:14");
        state.CheckWhenLeft(form.Entries.Single(entry => entry.Id == "turns"));

        state.Set("wheels", "OneHeld");

        Assert.Null(state.MessageOf("turns"));
        Assert.StartsWith("Ratio 2.80", state.Echo[0], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("readTo", "3", "Turns are read to between 0 and 1 turn, not to 3")]
    [InlineData("align", "0.7", "The wheel's mark is off by 0 to 0.5 turn, not by 0.7")]
    public void How_finely_nobody_reads_is_said_where_it_was_typed(string entry, string typed, string says)
    {
        var form = TurnCountForm.For("Harrow banjo", new(2026, 5, 3), _ => { });
        var state = new FormState(form);
        state.Set("wheels", "OneHeld");
        state.Set("turns", "10:23");
        state.Set(entry, typed);

        Assert.Equal((false, entry), state.TrySave());
        Assert.StartsWith("! " + says, state.MessageOf(entry), StringComparison.Ordinal);
        Assert.Null(state.MessageOf("turns"));
    }

    // 10:3 is 0.3, a gear's longest; 10:400 is 40, twice its lowest.
    [Theory]
    [InlineData("10:3", null)]
    [InlineData("10:400", "A ratio of 40 is no gear ratio")]
    public void Counts_that_make_no_gear_say_so_too(string turns, string? says)
    {
        var entry = GearCountForm.For("Delmere D4", "3", new(2026, 5, 3), _ => { }).Entries.Single(each => each.Id == "turns");
        var message = entry.Check!(new FormValues(new Dictionary<string, string> { ["turns"] = turns, ["readTo"] = "0.25", ["align"] = "0.02" }));

        if (says is null) Assert.Null(message);
        else Assert.StartsWith(says, message, StringComparison.Ordinal);
    }
}
