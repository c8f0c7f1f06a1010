using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres;
using Xunit;

namespace BuildLog.Gearing.Tests.Tyres;

/// <remarks>From memory: bias tyres grow by 2 to 4 % at 110 to 130 km/h, steel-belted radials by up to 1 % at 160 km/h.</remarks>
public sealed class SpeedGrowthTests
{
    [Theory]
    [InlineData(Construction.Bias, 110, 1.02, 1.04)]
    [InlineData(Construction.Bias, 130, 1.02, 1.04)]
    [InlineData(Construction.Radial, 160, 1.00, 1.01)]
    public void It_lies_within_what_is_told(Construction construction, double kmh, double low, double high)
        => Assert.InRange(SpeedGrowth.At(construction, kmh / 3.6).Value, low, high);

    // ± 1 % and ± 0.5 % are rectangular half-widths.
    [Fact]
    public void Its_uncertainty_is_as_wide_as_what_is_told()
    {
        Assert.Equal(0.01 / Math.Sqrt(3), SpeedGrowth.At(Construction.Bias, 120 / 3.6).StandardUncertainty, 1e-12);
        Assert.Equal(0.005 / Math.Sqrt(3), SpeedGrowth.At(Construction.Radial, 160 / 3.6).StandardUncertainty, 1e-12);
    }

    [Fact]
    public void Twice_the_speed_is_four_times_the_growth_and_standing_is_none()
    {
        Assert.Equal(4, (SpeedGrowth.At(Construction.Bias, 40).Value - 1) / (SpeedGrowth.At(Construction.Bias, 20).Value - 1), 1e-9);
        Assert.Equal(1, SpeedGrowth.At(Construction.Bias, 0).Value);
    }

    [Fact]
    public void Two_tyres_of_a_construction_grow_alike()
        => Assert.True((SpeedGrowth.At(Construction.Bias, 30) / SpeedGrowth.At(Construction.Bias, 30)).IsExact);

    [Theory]
    [InlineData(-1)]
    [InlineData(251)]
    [InlineData(double.NaN)]
    public void A_speed_beyond_road_tyres_is_refused(double kmh) => Assert.Throws<RefusedException>(() => SpeedGrowth.At(Construction.Bias, kmh / 3.6));

    // 250 km/h in bias is 0.03 · (250/120)² = 13.02 %; beside a radial's 0.005 · (250/160)² = 1.22 %.
    [Theory]
    [InlineData(Construction.Bias, 250, 0.130208)]
    [InlineData(Construction.Radial, 250, 0.012207)]
    [InlineData(Construction.Bias, 60, 0.0075)]
    public void It_goes_with_the_square_up_to_the_last_speed(Construction construction, double kmh, double growth)
        => Assert.Equal(1 + growth, SpeedGrowth.At(construction, kmh / 3.6).Value, 1e-6);

    [Fact]
    public void It_says_what_would_be_better()
        => Assert.Contains("satellite", Assert.Single(SpeedGrowth.At(Construction.Bias, 30).Budget()).Input.Evidence.Settle!(2), StringComparison.Ordinal);
}
