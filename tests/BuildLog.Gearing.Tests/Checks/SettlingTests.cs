using System.Globalization;
using System.Text.RegularExpressions;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tyres;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

public sealed partial class SettlingTests
{
    // By hand: 19 ± 1.96 · 1, limit 20: u must come down to 1/1.96; that is by a factor of 1.96, and 5 % more.
    [Fact]
    public void The_dominant_evidence_has_to_shrink_until_the_interval_ends_at_the_limit()
    {
        var factor = 0.0;
        Settling.Of(InventedCar.Of(19, 1, settle: f => { factor = f; return "count further"; }), new Window(10, 20));

        Assert.Equal(1.959964 * 1.05, factor, 1e-6);
    }

    // Others keep 0.3 of u: room is 1/1.96² − 0.09.
    [Fact]
    public void What_the_other_evidence_keeps_is_left_to_it()
    {
        var factor = 0.0;
        var value = InventedCar.Of(19, 1, "count", f => { factor = f; return "count further"; }) + InventedCar.Of(0, 0.3, "tape", _ => "tape");
        Settling.Of(value, new Window(10, 20));

        Assert.Equal(1 / Math.Sqrt((1 / (1.959964 * 1.959964)) - 0.09) * 1.05, factor, 1e-5);
    }

    [Fact]
    public void Where_the_others_alone_are_too_coarse_it_says_so()
    {
        var value = InventedCar.Of(19, 1, "count", _ => "count further") + InventedCar.Of(0, 0.9, "tape", _ => "tape");

        Assert.Equal("count further; that alone would narrow it, not settle it", Settling.Of(value, new Window(10, 20)));
    }

    [Fact]
    public void Evidence_that_nothing_simple_helps_promises_nothing()
    {
        Assert.Null(Settling.Of(InventedCar.Of(19, 1), new Window(10, 20)));
        Assert.Null(Settling.Of(19, new Window(10, 20)));
        Assert.Null(Settling.BestStep(InventedCar.Of(19, 1)));
    }

    [Fact]
    public void Inputs_of_one_evidence_are_weighed_together()
    {
        // Two inputs of 0.8 belong to one count: together 1.13, more than the tape's 1.
        var count = new Evidence("count", _ => "count further");
        var value = Measured.From(19, new Input("reading", 0.8, count)) + Measured.From(0, new Input("stop", 0.8, count)) + InventedCar.Of(0, 1, "tape", _ => "tape");

        Assert.Equal("count further", Settling.BestStep(value));
    }

    // The number of turns in the advice, counted in one go, with the same ratio read again: the verdict is no watch any more.
    [Theory]
    [InlineData("10:20.5")]
    [InlineData("10:20.5", "10:20.5", "10:20.5")]
    [InlineData("10:20.5", "20:41", "30:61.5")]
    [InlineData("5:10.25", "10:20.5")]
    [InlineData("10:20.5", "10:20.75", "10:20.25")]
    public void The_turns_it_asks_for_do_settle_it(params string[] turns)
    {
        var how = new CountPrecision(0.25, 0.02);
        var counted = TurnCount.Of([.. turns.Select(text => TurnReading.Read(text, Wheels.OneHeld).OrRefuse())], how).Ratio;
        var limit = counted.Value + (counted.Expanded95 / 4);
        var wanted = new Window(limit - 1, limit);
        Assert.Equal(Verdict.Watch, Verdicts.Judge(counted, wanted).Verdict);

        var advised = int.Parse(Turns().Match(Settling.Of(counted, wanted)!).Value, CultureInfo.InvariantCulture);
        var again = TurnCount.Of([TurnReading.Read(FormattableString.Invariant($"{advised}:{counted.Value * advised / 2:F9}"), Wheels.OneHeld).OrRefuse()], how).Ratio;
        Assert.Equal(Verdict.Fits, Verdicts.Judge(again, wanted).Verdict);

        // And it asks for no more than needed: a tenth less would leave it open.
        var less = TurnCount.UncertaintyOver(0.9 * advised, counted.Value, Wheels.OneHeld, how);
        Assert.True(counted.Value + (1.96 * less) > limit || advised <= 10 || !double.IsInfinity(counted.DegreesOfFreedom));
    }

    [Theory]
    [InlineData("3:6126mm")]
    [InlineData("1:2042mm", "2:4084mm", "3:6126mm")]
    [InlineData("3:6126mm", "3:6126mm", "3:6126mm")]
    public void The_turns_it_asks_to_roll_do_settle_it(params string[] rolls)
    {
        var how = new RollOutPrecision(Loaded: true);
        var rolled = RollOut.Of([.. rolls.Select(text => RollReading.Read(text).OrRefuse())], how).RollingCircumference;
        var limit = rolled.Value + (rolled.Expanded95 / 4);
        var wanted = new Window(limit - 1, limit);

        var advised = int.Parse(Turns().Match(Settling.Of(rolled, wanted)!).Value, CultureInfo.InvariantCulture);
        var again = RollOut.Of([RollReading.Read(FormattableString.Invariant($"{advised}:{rolled.Value * advised:F9}m")).OrRefuse()], how).RollingCircumference;

        Assert.Equal(Verdict.Fits, Verdicts.Judge(again, wanted).Verdict);
    }

    [GeneratedRegex(@"\d+(?= (wheel )?turns)")]
    private static partial Regex Turns();
}
