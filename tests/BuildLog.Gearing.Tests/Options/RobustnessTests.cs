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
    public void Two_findings_multiply_and_one_against_an_unverified_limit_does_not_count()
    {
        var one = Number(InventedCar.Of(3, 0.1), new Window(2.9, 3.1));

        Assert.Equal(0.6827 * 0.6827, Robustness.Of([one, one])!.Value, 1e-4);
        Assert.Equal(0.6827, Robustness.Of([one, Number(InventedCar.Of(3, 0.1), new Window(8, 9)) with { LimitIsVerified = false }])!.Value, 5e-5);
    }

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
