using BuildLog.Gearing.Measurements;
using Xunit;

namespace BuildLog.Gearing.Tests.Measurements;

public sealed class IntervalTests
{
    [Theory]
    [InlineData(2, true)]
    [InlineData(3, true)]
    [InlineData(1.999, false)]
    [InlineData(3.001, false)]
    public void Both_ends_belong_to_it(double value, bool inside) => Assert.Equal(inside, new Interval(2, 3).Contains(value));

    [Fact]
    public void Turned_round_by_a_negative_factor_it_still_runs_upwards()
        => Assert.Equal(new Interval(-6, -4), new Interval(2, 3).Times(-2));

    [Fact]
    public void Half_its_width_is_half_its_width() => Assert.Equal(0.5, new Interval(2, 3).HalfWidth);

    [Theory]
    [InlineData(3, 6, 9)]
    [InlineData(0.5, 1, 1.5)]
    [InlineData(0, 0, 0)]
    public void A_factor_that_is_not_negative_leaves_its_ends_in_place(double factor, double low, double high)
        => Assert.Equal(new Interval(low, high), new Interval(2, 3).Times(factor));
}
