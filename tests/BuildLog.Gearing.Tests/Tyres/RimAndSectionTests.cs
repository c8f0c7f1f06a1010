using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres;
using Xunit;

namespace BuildLog.Gearing.Tests.Tyres;

public sealed class RimAndSectionTests
{
    // Remembered ranges; a maker's data sheet decides.
    [Theory]
    [InlineData("30x9.50R15LT", 6.5, 7.5, 8.5)]
    [InlineData("31x10.50R15LT", 7, 8.5, 9)]
    [InlineData("33x12.50R15LT", 8.5, 10, 11)]
    [InlineData("35x12.50R15LT", 8.5, 10, 11)]
    [InlineData("32x11.50R15LT", 8, 9, 9.5)]
    [InlineData("7.50R16LT", 5.5, 6, 6.5)]
    public void Flotation_and_numeric_sizes_have_rims_of_their_own(string text, double low, double measuring, double high)
        => Assert.Equal(new RimWidth(low, measuring, high), Read(text).RimWidth);

    // A retailer's page: 0.2 in of section for each half inch of rim, measured on 6 in.
    [Theory]
    [InlineData(6.0, 205)]
    [InlineData(6.5, 205 + 5.08)]
    [InlineData(7.5, 205 + 15.24)]
    [InlineData(5.5, 205 - 5.08)]
    public void Each_half_inch_of_rim_is_a_fifth_of_an_inch_of_section(double rim, double section)
        => Assert.Equal(section / 1000, SectionOnRim.Of(Read("205/60R15"), rim * 0.0254).Value, 1e-9);

    [Theory]
    [InlineData(1.5)]
    [InlineData(24)]
    public void A_rim_that_no_road_wheel_has_is_refused(double rim) => Assert.Throws<RefusedException>(() => SectionOnRim.Of(Read("205/60R15"), rim * 0.0254));

    private static TyreSize Read(string text) => TyreSizeText.Read(text).OrRefuse();
}
