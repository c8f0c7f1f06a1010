using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Options;

/// <summary>Shares of the normal distribution from any table of it: within 1 u 68.27 %, below 1.645 u 95.0 %.</summary>
public sealed class RobustnessTests
{
    [Fact]
    public void It_is_the_share_of_the_normal_distribution_inside_the_window()
    {
        Assert.Equal(0.6827, Robustness.Of([Number(InventedCar.Of(3, 0.1), new Window(2.9, 3.1))])!.Value, 5e-5);
        Assert.Equal(0.950, Robustness.Of([Number(InventedCar.Of(3, 0.1), Window.AtMost(3.1645))])!.Value, 5e-4);
    }

    [Fact]
    public void Findings_that_share_nothing_multiply_and_one_against_an_unverified_limit_does_not_count()
    {
        Finding One() => Number(InventedCar.Of(3, 0.1), new Window(2.9, 3.1));

        Assert.Equal(0.6827 * 0.6827, Robustness.Of([One(), One()])!.Value, 1e-4);
        Assert.Equal(0.6827, Robustness.Of([One(), Number(InventedCar.Of(3, 0.1), new Window(8, 9)) with { LimitIsVerified = false }])!.Value, 5e-5);
    }

    // What hangs on the same number falls in both or in neither; and where the one wish begins above where the other ends, nothing is left.
    [Fact]
    public void Findings_that_share_everything_fit_together_or_exclude_each_other()
    {
        var ratio = InventedCar.Of(3, 0.1);

        Assert.Equal(0.6827, Robustness.Of([Number(ratio, new Window(2.9, 3.1)), Number(ratio * 2, new Window(5.8, 6.2))])!.Value, 2e-3);
        Assert.Equal(0.0, Robustness.Of([Number(ratio, Window.AtMost(3)), Number(ratio * 2, Window.AtLeast(6.02))])!.Value, 1e-9);
        Assert.Equal(0.5, Robustness.Of([Number(ratio, Window.AtMost(3)), Number(6 - ratio, Window.AtLeast(2.8))])!.Value, 2e-3);
    }

    // Sheppard 1899, as any handbook of statistics has it: both below their means in 1/4 + asin(r)/2π of all cases, three of them in 1/8 + (asin r12 + asin r13 + asin r23)/4π.
    [Theory]
    [InlineData(0.5, 1.0 / 3)]
    [InlineData(-0.5, 1.0 / 6)]
    [InlineData(0.8, 0.397584)]
    [InlineData(0, 0.25)]
    public void What_they_share_in_part_counts_in_part(double correlation, double share)
    {
        var (shared, own) = (InventedCar.Of(0, 1, "shared"), InventedCar.Of(0, 1, "own"));
        var other = (shared * correlation) + (own * Math.Sqrt(1 - (correlation * correlation)));

        Assert.Equal(share, Robustness.Of([Number(shared, Window.AtMost(0)), Number(other, Window.AtMost(0))])!.Value, 3e-3);
    }

    [Fact]
    public void Three_that_share_one_half_each_fit_in_a_quarter()
    {
        var shared = InventedCar.Of(0, 1, "shared");
        Finding One(string name) => Number(shared + InventedCar.Of(0, 1, name), Window.AtMost(0));

        Assert.Equal(0.25, Robustness.Of([One("one"), One("two"), One("three")])!.Value, 3e-3);
    }

    // By the symmetry of the normal distribution both are above their means as often as both are below.
    [Theory]
    [InlineData(0.5, 1.0 / 3)]
    [InlineData(-0.5, 1.0 / 6)]
    public void What_lies_above_in_part_together_counts_as_what_lies_below(double correlation, double share)
    {
        var (shared, own) = (InventedCar.Of(0, 1, "shared"), InventedCar.Of(0, 1, "own"));
        var other = (shared * correlation) + (own * Math.Sqrt(1 - (correlation * correlation)));

        Assert.Equal(share, Robustness.Of([Number(shared, Window.AtLeast(0)), Number(other, Window.AtLeast(0))])!.Value, 3e-3);
    }

    // Twice the same adds nothing, wherever it stands: 1/4 + asin(1/2)/2π is a third.
    [Fact]
    public void What_the_ones_before_decide_adds_nothing_and_does_not_hide_what_follows()
    {
        var shared = InventedCar.Of(0, 1, "shared");
        var other = (shared * 0.5) + (InventedCar.Of(0, 1, "own") * Math.Sqrt(0.75));

        Assert.Equal(1.0 / 3, Robustness.Of([Number(shared, Window.AtMost(0)), Number(shared * 2, Window.AtMost(0)), Number(other, Window.AtMost(0))])!.Value, 3e-3);
    }

    // What two decide together adds nothing to them, however the last bits of its correlations fall.
    [Fact]
    public void What_two_decide_together_is_decided_whatever_is_left_by_rounding()
    {
        for (var weight = 0.1; weight < 1; weight += 0.1)
        {
            var (one, two) = (InventedCar.Of(0, 1, "one"), InventedCar.Of(0, 1, "two"));

            Assert.Equal(0.25, Robustness.Of([Number(one, Window.AtMost(0)), Number(two, Window.AtMost(0)), Number((one * weight) + two, Window.AtMost(0))])!.Value, 3e-3);
        }
    }

    // Fourteen that share nothing, two of them beyond the twelve that are gone through together: 0.9545 each, within 2 u.
    [Fact]
    public void More_than_twelve_multiply()
        => Assert.Equal(Math.Pow(0.9545, 14), Robustness.Of([.. Enumerable.Range(0, 14).Select(_ => Number(InventedCar.Of(3, 0.1), new Window(2.8, 3.2)))])!.Value, 1e-3);

    [Fact]
    public void An_exact_number_outside_leaves_no_share_whatever_lies_inside() => Assert.Equal(0, Robustness.Of([Number(3, new Window(2, 4)), Number(5, new Window(2, 4))]));

    // A shaft at 68 % of its critical speed, good to 65 %, allowed to 75 %: surely a watch, and no way to a clash. By 1 % of it, 0.74 reaches over 75 % with Φ(1) = 84.1 % below.
    [Fact]
    public void What_lies_surely_between_good_and_allowed_leaves_no_share_out()
    {
        var one = Number(InventedCar.Of(3, 0.1), new Window(2.9, 3.1));
        var warned = Number(InventedCar.Of(0.68, 0.005), Window.AtMost(0.65)) with { Because = Because.UnverifiedLimit, Reaches = Window.AtMost(0.75) };
        var near = Number(InventedCar.Of(0.74, 0.01), Window.AtMost(0.65)) with { Because = Because.Uncertainty, Reaches = Window.AtMost(0.75) };

        Assert.Equal(0.6827, Robustness.Of([one, warned])!.Value, 5e-5);
        Assert.Equal(0.8413, Robustness.Of([near])!.Value, 5e-5);
    }

    [Fact]
    public void A_clash_without_a_number_leaves_no_share()
        => Assert.Equal(0, Robustness.Of([Number(3, new Window(2, 4)), Plain(Verdict.Clash)]));

    [Fact]
    public void Where_nothing_has_a_number_there_is_no_share_to_speak_of()
        => Assert.Null(Robustness.Of([Plain(Verdict.Fits), Plain(Verdict.Open)]));

    private static Finding Number(Measured value, Window wanted) => Plain(Verdict.Watch) with { Value = value, Wanted = wanted, Unit = Units.One };

    private static Finding Plain(Verdict verdict) => new()
    {
        Check = "check",
        Title = "Check",
        Verdict = verdict,
        Because = Because.Outside,
        Between = [Position.RearAxle],
        Sentence = "So it is.",
        Source = "a test",
    };
}
