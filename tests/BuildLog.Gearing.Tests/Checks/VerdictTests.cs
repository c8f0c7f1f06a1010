using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

public sealed class VerdictTests
{
    private static readonly Window Wanted = new(10, 20);

    // The 95 % interval is value ± half.
    [Theory]
    [InlineData(15, 4, Verdict.Fits, Because.Inside)]
    [InlineData(15, 6, Verdict.Watch, Because.Uncertainty)]
    [InlineData(19, 2, Verdict.Watch, Because.Uncertainty)]
    [InlineData(22, 3, Verdict.Watch, Because.Uncertainty)]
    [InlineData(25, 4, Verdict.Clash, Because.Outside)]
    [InlineData(5, 4, Verdict.Clash, Because.Outside)]
    public void A_value_is_judged_by_its_whole_interval(double value, double half, Verdict verdict, Because because)
        => Assert.Equal((verdict, because), Verdicts.Judge(Of(value, half), Wanted));

    [Theory]
    [InlineData(10, Verdict.Fits)]
    [InlineData(20, Verdict.Fits)]
    [InlineData(9.999999, Verdict.Clash)]
    [InlineData(20.000001, Verdict.Clash)]
    public void The_limits_are_inside(double exact, Verdict verdict) => Assert.Equal(verdict, Verdicts.Judge(exact, Wanted).Verdict);

    [Theory]
    [InlineData(-1e6, Verdict.Fits)]
    [InlineData(20, Verdict.Fits)]
    [InlineData(21, Verdict.Clash)]
    public void An_open_side_is_never_left(double exact, Verdict verdict) => Assert.Equal(verdict, Verdicts.Judge(exact, Window.AtMost(20)).Verdict);

    [Fact]
    public void A_limit_from_memory_warns_and_never_clashes()
    {
        Assert.Equal((Verdict.Watch, Because.UnverifiedLimit), Verdicts.Judge(25, Wanted, limitIsVerified: false));
        Assert.Equal((Verdict.Watch, Because.Uncertainty), Verdicts.Judge(Of(20, 2), Wanted, limitIsVerified: false));
        Assert.Equal((Verdict.Fits, Because.Inside), Verdicts.Judge(15, Wanted, limitIsVerified: false));
    }

    [Fact]
    public void Less_uncertainty_never_turns_a_fits_or_a_clash_into_the_other()
        => Gen.Select(Gen.Double[0, 30], Gen.Double[0.01, 10], Gen.Double[0.01, 1]).Sample((value, half, share) =>
        {
            var (coarse, fine) = (Verdicts.Judge(Of(value, half), Wanted).Verdict, Verdicts.Judge(Of(value, half * share), Wanted).Verdict);

            if (coarse != Verdict.Watch) Assert.Equal(coarse, fine);
        });

    // For ranking and --fail-on: clash, open, watch, fits.
    [Fact]
    public void The_worst_comes_first()
        => Assert.Equal(["clash", "open", "watch", "fits"], Enum.GetValues<Verdict>().Order().Select(verdict => verdict.InWords()));

    [Fact]
    public void The_reasons_have_the_words_of_the_command_line()
        => Assert.Equal(
            ["inside", "outside", "uncertainty", "unverified limit", "missing input"],
            Enum.GetValues<Because>().Select(because => because.InWords()));

    private static Measured Of(double value, double half) => Measured.From(value, new Input("reading", half / 1.959963984540054, new Evidence("reading")));
}
