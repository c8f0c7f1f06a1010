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

    // Shares of the section by aspect ratio (driveline note): 0.70 from 75 up, 0.75 to 60, 0.80 to 50, 0.85 at 45, 0.90 below; 254 mm are 10 in.
    [Theory]
    [InlineData(0.80, 7)]
    [InlineData(0.75, 7)]
    [InlineData(0.74, 7.5)]
    [InlineData(0.60, 7.5)]
    [InlineData(0.59, 8)]
    [InlineData(0.50, 8)]
    [InlineData(0.49, 8.5)]
    [InlineData(0.45, 8.5)]
    [InlineData(0.44, 9)]
    public void The_lower_a_tyre_the_wider_its_measuring_rim(double aspect, double measuring) => Assert.Equal(measuring, RimWidth.OfMetric(0.254, aspect).Measuring);

    // Rims of 6 and 6½ in below 70 per cent take one and a half inches more, others one; from memory.
    [Theory]
    [InlineData(0.205, 0.65, 6, 7.5)]
    [InlineData(0.215, 0.65, 6.5, 8)]
    [InlineData(0.205, 0.70, 6, 7)]
    [InlineData(0.235, 0.65, 7, 8)]
    [InlineData(0.185, 0.65, 5.5, 6.5)]
    public void How_much_wider_a_rim_may_be(double section, double aspect, double measuring, double high)
    {
        var rims = RimWidth.OfMetric(section, aspect);

        Assert.Equal((measuring - 0.5, measuring, high), (rims.Low, rims.Measuring, rims.High));
    }

    // 2 and 23 in are 50 and 600 mm or so.
    [Theory]
    [InlineData(0.05, true)]
    [InlineData(0.6, true)]
    [InlineData(0.0499, false)]
    [InlineData(0.6001, false)]
    public void The_narrowest_and_the_widest_rim_are_wheels(double rim, bool can)
        => Assert.Equal(can, Record.Exception(() => SectionOnRim.Of(Read("205/60R15"), rim)) is null);

    // Up to 4 % over the marking is permitted: u is 2 % of 205 mm, and nothing comes on top on the measuring rim.
    [Fact]
    public void A_section_from_the_label_is_off_by_two_per_cent()
        => Assert.Equal(0.0041, SectionOnRim.Of(Read("205/60R15"), 6 * 0.0254).StandardUncertainty, 1e-9);

    [Theory]
    [InlineData(1.5)]
    [InlineData(24)]
    public void A_rim_that_no_road_wheel_has_is_refused(double rim) => Assert.Throws<RefusedException>(() => SectionOnRim.Of(Read("205/60R15"), rim * 0.0254));

    private static TyreSize Read(string text) => TyreSizeText.Read(text).OrRefuse();
}
