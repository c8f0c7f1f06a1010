using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

public sealed class SaidTests
{
    // 2.04123 m are 2041.2 mm and 80.363 in; 100 km/h are 62.137 mph; 180 N·m are 132.76 lb·ft, 15.2 mm 0.598 in. A tenth of a
    // millimetre is said as a thousandth of an inch, a whole one as a hundredth.
    [Theory]
    [InlineData(2.04123, "m", 2, "m", "2.04 m")]
    [InlineData(2.04123, "m", 2, "mm", "2040 mm")]
    [InlineData(2.04123, "m", 3, "in", "80.36 in")]
    [InlineData(0.0152, "mm", 1, "in", "0.598 in")]
    [InlineData(100 / 3.6, "km/h", 0, "mph", "62 mph")]
    [InlineData(180, "N·m", 0, "lb·ft", "133 lb·ft")]
    public void A_number_keeps_its_step_in_another_unit(double value, string worded, int places, string shown, string expected)
        => Assert.Equal(expected, Said.Number(value, Units.Spelt(worded)!, places).In(_ => Units.Spelt(shown)!));

    // ± 12 mm at 95 %: to the millimetre in metres of three places; no finer than asked for with two.
    [Fact]
    public void An_interval_is_said_where_the_places_have_room_for_it()
    {
        var measured = InventedCar.Of(2.04, 0.012 / 1.959964);

        Assert.Equal("2.040 ± 0.012 m", Said.Number(measured, Units.Metre, 3).ToString());
        Assert.Equal("2.04 m", Said.Number(measured, Units.Metre, 2).ToString());
        Assert.Equal("2.040 ± 0.012 m", Said.Number(measured, Units.Metre).ToString());
        Assert.Equal("2.040 m", Said.Alone(measured, Units.Metre).ToString());
    }

    // 110 km/h are 68.35 mph: typed whole, it has four figures in a unit nobody typed.
    [Fact]
    public void An_exact_number_alone_is_as_it_was_typed_or_has_four_figures()
    {
        Measured speed = 110 / 3.6;

        Assert.Equal("110 km/h", Said.Alone(speed, Units.KilometrePerHour).ToString());
        Assert.Equal("68.35 mph", Said.Alone(speed, Units.KilometrePerHour).In(_ => Units.MilePerHour));
    }

    [Fact]
    public void What_is_enough_is_rounded_so_that_it_is()
    {
        Assert.Equal("456 N·m or more", Said.OrMore(455.2, Units.NewtonMetre, 0).ToString());
        Assert.Equal("455 N·m or less", Said.OrLess(455.8, Units.NewtonMetre, 0).ToString());
        Assert.Equal("456 N·m", Said.AtLeast(455.2, Units.NewtonMetre).ToString());
        Assert.Equal("0.6 to 3.0°", Said.Between(0.51 * InventedShaft.Degree, 3.04 * InventedShaft.Degree, Units.Degree, 1).ToString());
        Assert.Equal("Front axle", Said.Capital("front axle"));
    }
}
