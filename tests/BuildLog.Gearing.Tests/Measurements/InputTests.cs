using BuildLog.Gearing.Measurements;
using Xunit;

namespace BuildLog.Gearing.Tests.Measurements;

public sealed class InputTests
{
    private static readonly Evidence Bench = new("bench");

    [Theory]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_standard_uncertainty_is_zero_or_more_and_finite(double u)
        => Assert.Throws<ArgumentOutOfRangeException>(() => new Input("tape", u, Bench));

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void Degrees_of_freedom_are_above_zero(double freedom)
        => Assert.Throws<ArgumentOutOfRangeException>(() => new Input("tape", 1, Bench, freedom));

    // JCGM 100:2008, 4.3.7: half-width 0.125 / √3 = 0.0721688.
    [Fact]
    public void A_rectangular_error_has_a_standard_uncertainty_of_its_half_width_over_root_three()
        => Assert.Equal(0.0721688, Input.Rectangular("reading", 0.125, Bench).StandardUncertainty, 1e-7);

    [Fact]
    public void Every_source_has_a_word_of_its_own()
    {
        var words = Enum.GetValues<Source>().Select(source => source.InWords()).ToList();

        Assert.Equal(words.Count, words.Distinct().Count());
        Assert.Throws<ArgumentOutOfRangeException>(() => ((Source)99).InWords());
    }
}
