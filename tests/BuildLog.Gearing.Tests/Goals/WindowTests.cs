using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using Xunit;

namespace BuildLog.Gearing.Tests.Goals;

public sealed class WindowTests
{
    private static readonly Window Wanted = new(2, 3);

    [Theory]
    [InlineData(2, 3, true, false)]
    [InlineData(2.1, 2.9, true, false)]
    [InlineData(1.9, 2.5, false, false)]
    [InlineData(1, 2, false, false)]
    [InlineData(3, 4, false, false)]
    [InlineData(1, 1.99, false, true)]
    [InlineData(3.01, 4, false, true)]
    public void Its_limits_belong_to_it(double low, double high, bool contained, bool missed)
    {
        Assert.Equal(contained, Wanted.Contains(new Interval(low, high)));
        Assert.Equal(missed, Wanted.Misses(new Interval(low, high)));
    }

    [Theory]
    [InlineData(2.4, 2)]
    [InlineData(2.6, 3)]
    [InlineData(9, 3)]
    public void The_nearest_limit_is_the_one_to_settle(double value, double limit) => Assert.Equal(limit, Wanted.NearestLimit(value));

    [Fact]
    public void An_open_side_has_no_limit()
    {
        Assert.True(Window.AtMost(3).Contains(-1e9));
        Assert.True(Window.AtLeast(2).Contains(1e9));
        Assert.Equal(3, Window.AtMost(3).NearestLimit(-5));
        Assert.Equal(2, Window.AtLeast(2).NearestLimit(50));
    }

    [Fact]
    public void It_is_empty_where_its_ends_have_passed_each_other()
    {
        Assert.True(new Window(3, 2).IsEmpty);
        Assert.False(new Window(2, 2).IsEmpty);
    }

    [Theory]
    [InlineData(2, true)]
    [InlineData(3, true)]
    [InlineData(1.999, false)]
    [InlineData(3.001, false)]
    public void Both_ends_belong_to_it(double value, bool inside) => Assert.Equal(inside, new Window(2, 3).Contains(value));

    [Theory]
    [InlineData(1, 2, true)]
    [InlineData(3, 4, true)]
    [InlineData(2.2, 2.8, true)]
    [InlineData(1, 1.999, false)]
    [InlineData(3.001, 4, false)]
    public void Windows_overlap_where_they_have_a_point_in_common(double low, double high, bool overlap)
    {
        Assert.Equal(overlap, new Window(2, 3).Overlaps(new(low, high)));
        Assert.Equal(overlap, new Window(low, high).Overlaps(new(2, 3)));
    }
}
