using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
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
}
