using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using Xunit;

namespace BuildLog.Gearing.Tests.Ratios;

/// <remarks>Worked: 2500 rev/min, 2.05 m, 82.5 km/h, direct: 0.06 · 2500 · 2.05 / 82.5 = 3.727; ± 1 km/h, ± 50 rev/min, ± 0.5 % are ± 2.391 % together.</remarks>
public sealed class RoadTestTests
{
    private static readonly Measured Tyre = Measured.From(2.05, Input.Rectangular("tape", 0.005 * 2.05, new Evidence("roll-out", _ => "roll further")));

    [Fact]
    public void Road_speed_and_engine_speed_make_an_axle_ratio()
    {
        var ratio = RoadTest.AxleRatio(82.5 / 3.6, 2500 / 60.0, 1, Tyre);

        Assert.Equal(3.72727, ratio.Value, 1e-5);
        Assert.Equal(0.0239149, ratio.RelativeUncertainty * Math.Sqrt(3), 1e-7);
    }

    [Fact]
    public void It_tells_3_42_from_3_73_but_not_3_70_from_3_73()
    {
        var interval = RoadTest.AxleRatio(82.5 / 3.6, 2500 / 60.0, 1, Tyre).Interval95;

        Assert.False(interval.Contains(3.42));
        Assert.True(interval.Contains(3.70) && interval.Contains(3.73));
    }

    // Third gear 1.4 through a transfer case of 1.08: 3.72727 / 1.512; a converter slipping 4 % turns the shaft 4 % less.
    [Fact]
    public void Gear_transfer_case_and_slip_are_taken_out()
    {
        Assert.Equal(3.727273 / (1.4 * 1.08), RoadTest.AxleRatio(82.5 / 3.6, 2500 / 60.0, 1.4, 2.05, transfer: 1.08).Value, 1e-6);
        Assert.Equal(3.727273 * 0.96, RoadTest.AxleRatio(82.5 / 3.6, 2500 / 60.0, 1, 2.05, slip: 0.04).Value, 1e-6);
    }

    [Fact]
    public void Each_instrument_says_how_to_do_better()
    {
        var settles = RoadTest.AxleRatio(82.5 / 3.6, 2500 / 60.0, 1, Tyre).Budget().Select(line => line.Input.Evidence.Settle!(2)).ToList();

        Assert.Equal(["compare the rev counter with an optical one, or count the axle's turns", "time a measured kilometre at steady speed, or count the axle's turns", "roll further"], settles);
    }

    [Theory]
    [InlineData(0, 2500, 1, 50)]
    [InlineData(82.5, 0, 1, 50)]
    [InlineData(82.5, 2500, -1, 50)]
    [InlineData(82.5, 2500, 90, 50)]
    [InlineData(82.5, 2500, 1, double.NaN)]
    [InlineData(10, 2500, 1, 50)]
    public void What_no_road_test_shows_is_refused(double kmh, double rpm, double speedHalf, double rpmHalf)
        => Assert.Throws<RefusedException>(() => RoadTest.AxleRatio(kmh / 3.6, rpm / 60, 1, 2.05, new(speedHalf / 3.6, rpmHalf / 60)));

    [Theory]
    [InlineData(0, 2500, "0 km/h and 2500 rev/min")]
    [InlineData(90, 0, "90 km/h and 0 rev/min")]
    [InlineData(double.PositiveInfinity, 2500, "2500 rev/min")]
    [InlineData(90, double.PositiveInfinity, "90 km/h")]
    public void Standing_or_endless_it_is_no_road_test_and_the_speeds_are_named(double kmh, double rpm, string says)
    {
        var refused = Assert.Throws<RefusedException>(() => RoadTest.AxleRatio(kmh / 3.6, rpm / 60, 1, 2.05));

        Assert.Contains("rolling vehicle and a running engine", refused.Message, StringComparison.Ordinal);
        Assert.Contains(says, refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_instrument_as_coarse_as_what_it_shows_is_refused_and_one_without_error_is_not()
    {
        Assert.Contains("not to 36 km/h and 60 rev/min", Assert.Throws<RefusedException>(() => RoadTest.AxleRatio(10, 25, 1, 2, new(10, 1))).Message, StringComparison.Ordinal);
        Assert.Contains("not to 3.6 km/h and 1500 rev/min", Assert.Throws<RefusedException>(() => RoadTest.AxleRatio(10, 25, 1, 2, new(1, 25))).Message, StringComparison.Ordinal);
        Assert.True(RoadTest.AxleRatio(10, 25, 1, 2, new(0, 0)).IsExact);
    }
}
