using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Measurements;

public sealed class RepeatedReadingsTests
{
    // JCGM 100:2008, 4.2.3: of 10, 11 and 12 s = 1 and u = 1/√3, with two degrees of freedom.
    [Fact]
    public void The_mean_is_known_to_the_scatter_over_root_n()
    {
        var mean = RepeatedReadings.Mean([10, 11, 12], 0, "radius");

        Assert.Equal(11, mean.Value, 1e-12);
        Assert.Equal(1 / Math.Sqrt(3), mean.StandardUncertainty, 1e-12);
        Assert.Equal(2, mean.DegreesOfFreedom, 1e-9);
    }

    // Four readings of one scatter: s² = (9 + 1 + 1 + 9)/3, u² = s²/4 + 3²/3, the tool's own error being alike in all.
    [Fact]
    public void The_tool_does_not_get_better_by_reading_again()
        => Assert.Equal(Math.Sqrt((20 / 3.0 / 4) + 3), RepeatedReadings.Mean([7, 9, 11, 13], 3, "radius").StandardUncertainty, 1e-12);

    [Fact]
    public void Readings_that_do_not_scatter_leave_the_tool_alone()
    {
        var mean = RepeatedReadings.Mean([10, 10, 10], 0.6, "radius");

        Assert.Equal(0.6 / Math.Sqrt(3), mean.StandardUncertainty, 1e-12);
        Assert.Equal(double.PositiveInfinity, mean.DegreesOfFreedom);
        Assert.Single(mean.Budget());
    }

    [Fact]
    public void One_reading_has_its_tool_only() => Assert.Equal(0.6 / Math.Sqrt(3), RepeatedReadings.Mean([10], 0.6, "radius").StandardUncertainty, 1e-12);

    [Fact]
    public void Without_a_reading_there_is_no_mean()
        => Assert.Equal("No radius was read.", Assert.Throws<RefusedException>(() => RepeatedReadings.Mean([], 1, "radius")).Message);

    // In another unit and from another zero it is the same mean, as sure as before, whatever the order.
    [Fact]
    public void The_mean_follows_unit_and_zero_and_lies_between_the_readings()
        => Gen.Select(Gen.Double[0.1, 10].Array[1, 8], Gen.Double[0, 0.5], Gen.Double[0.01, 100], Gen.Double[-50, 50]).Sample((readings, tool, unit, zero) =>
        {
            var mean = RepeatedReadings.Mean(readings, tool, "radius");
            var other = RepeatedReadings.Mean([.. readings.Reverse().Select(reading => (reading * unit) + zero)], tool * unit, "radius");

            Assert.InRange(mean.Value, readings.Min() - 1e-12, readings.Max() + 1e-12);
            Assert.Equal((mean.Value * unit) + zero, other.Value, 1e-9 * (unit + 50));
            Assert.Equal(mean.StandardUncertainty * unit, other.StandardUncertainty, 1e-9 * (unit + 50));
            Assert.True(mean.StandardUncertainty >= tool / Math.Sqrt(3) * (1 - 1e-12));
        });
}
