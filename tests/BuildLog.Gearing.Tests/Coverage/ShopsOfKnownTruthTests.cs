using BuildLog.Benchmarks.Coverage;
using BuildLog.Gearing.Checks;
using Xunit;

namespace BuildLog.Gearing.Tests.Coverage;

/// <summary>Shops of which the truth is known, measured with the stated errors: what is said at 95 % has to be true about that often. The full run is one of the benchmarks.</summary>
public sealed class ShopsOfKnownTruthTests
{
    private const int Shops = 3000;

    private static readonly CoverageTally Tally = CoverageTally.Of(Shops, seed: 20_260_504);

    // Of 3,000 draws at 95 % the share itself has u = 0.4 %.
    [Theory]
    [InlineData("ratio, all")]
    [InlineData("circumference, all")]
    [InlineData("cruise engine speed, all")]
    [InlineData("road speed, all")]
    public void The_interval_holds_the_truth_at_least_as_often_as_it_says(string what)
    {
        var (held, all) = Tally.Intervals[what];
        Assert.Equal(Shops, all);
        Assert.InRange((double)held / all, 0.93, 1);
    }

    [Fact]
    public void A_first_named_ratio_is_true_as_often_as_is_said_of_it()
    {
        var (all, said, isTrue) = Tally.Best;
        Assert.Equal(said / all, (double)isTrue / all, 0.03);
    }

    [Fact]
    public void The_share_kept_for_none_of_these_is_the_share_that_was_none_of_these()
    {
        var (all, said, isTrue) = Tally.NotListed;
        Assert.Equal(said / all, (double)isTrue / all, 0.03);
    }

    // A verdict on the 95 % interval errs where the interval does, and then only near a limit.
    [Theory]
    [InlineData(Verdict.Fits, false)]
    [InlineData(Verdict.Clash, true)]
    public void A_verdict_is_seldom_wrong(Verdict verdict, bool isInside)
    {
        var (wrong, right) = (Tally.Verdicts.GetValueOrDefault((verdict, isInside)), Tally.Verdicts.GetValueOrDefault((verdict, !isInside)));
        Assert.True(right > 500);
        Assert.InRange((double)wrong / (wrong + right), 0, 0.01);
    }
}
