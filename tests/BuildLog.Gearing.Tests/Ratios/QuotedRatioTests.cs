using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;
using Xunit;

namespace BuildLog.Gearing.Tests.Ratios;

public sealed class QuotedRatioTests
{
    [Theory]
    [InlineData("3.90", 3.90, 0.005)]
    [InlineData("3,90", 3.90, 0.005)]
    [InlineData("3.9", 3.9, 0.05)]
    [InlineData("3.909", 3.909, 0.0005)]
    [InlineData("4", 4, 0.5)]
    [InlineData(" 4.10 : 1 ", 4.10, 0.005)]
    [InlineData("4.10:1", 4.10, 0.005)]
    [InlineData("43/9", 43 / 9.0, 0)]
    [InlineData("4 1/2", 4.5, 0)]
    [InlineData("4½", 4.5, 0)]
    public void It_is_known_to_half_its_last_digit(string text, double ratio, double half)
    {
        var quoted = QuotedRatio.Read(text, RatioRange.Axle).OrRefuse();

        Assert.Equal(ratio, quoted.Ratio, 1e-12);
        Assert.Equal(half, quoted.HalfLastDigit, 1e-12);
        Assert.Equal(half / Math.Sqrt(3), quoted.StandardUncertainty, 1e-12);
    }

    [Theory]
    [InlineData("1")]
    [InlineData("1.0")]
    [InlineData("1,00")]
    [InlineData("1.00 : 1")]
    public void A_direct_gear_is_exact(string text) => Assert.True(QuotedRatio.ReadMeasured(text, RatioRange.Gear, "top gear").OrRefuse().IsExact);

    [Theory]
    [InlineData("4.10 u=0.02")]
    [InlineData("4.10 ± 0.0392")]
    public void A_typed_uncertainty_takes_the_place_of_the_last_digit(string text)
    {
        Assert.Equal(0.02, QuotedRatio.ReadMeasured(text, RatioRange.Axle, "axle").OrRefuse().StandardUncertainty, 1e-6);
        Assert.Equal(0.02, QuotedRatio.Read(text, RatioRange.Axle).OrRefuse().StandardUncertainty, 1e-6);
    }

    // Counted 4.08 with u = 0.02 (95 %: t = 1.96), tag to two digits: u_tag = 0.005/√3 = 0.00289; t √(u² + u_tag²) = 0.03961.
    [Theory]
    [InlineData("4.10", true)]
    [InlineData("4.11", true)]
    [InlineData("4.12", false)]
    [InlineData("4.05", true)]
    [InlineData("4.04", false)]
    [InlineData("3.90", false)]
    public void It_agrees_with_a_count_within_both_uncertainties(string tag, bool agrees)
        => Assert.Equal(agrees, QuotedRatio.Read(tag, RatioRange.Axle).OrRefuse().Agrees(Counted(4.08, 0.02)));

    [Fact]
    public void Exact_teeth_agree_with_the_tag_that_names_them_to_the_last_digit()
    {
        Assert.True(QuotedRatio.Read("4.10", RatioRange.Axle).OrRefuse().Agrees(new Teeth(41, 10).ToMeasured()));
        Assert.True(QuotedRatio.Read("3.73", RatioRange.Axle).OrRefuse().Agrees(new Teeth(41, 11).ToMeasured()));
        Assert.False(QuotedRatio.Read("4.11", RatioRange.Axle).OrRefuse().Agrees(new Teeth(41, 10).ToMeasured()));
    }

    [Fact]
    public void The_budget_says_which_digit_it_is()
        => Assert.Equal("axle, last digit of 3.90", Assert.Single(QuotedRatio.ReadMeasured("3.90", RatioRange.Axle, "axle").OrRefuse().Budget()).Input.Name);

    [Theory]
    [InlineData("47.7")]
    [InlineData("0")]
    [InlineData("tall")]
    public void What_no_such_part_has_is_refused(string text) => Assert.NotNull(QuotedRatio.Read(text, RatioRange.Axle).Refusal);

    private static Measured Counted(double value, double u) => Measured.From(value, new Input("count", u, new Evidence("count")));
}
