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
}
