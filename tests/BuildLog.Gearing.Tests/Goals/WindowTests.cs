using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
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

    // Ratios to two places, shares and angles to one, metres to three, millimetres and inches to one, counted units whole; rounded inwards.
    [Theory]
    [InlineData(2.851, 3.209, "", "2.86 to 3.20")]
    [InlineData(0.0601, 0.0709, "%", "6.1 to 7.0 %")]
    [InlineData(1.9231, 1.9819, "m", "1.924 to 1.981 m")]
    [InlineData(1.9231, 1.9819, "mm", "1923.1 to 1981.9 mm")]
    [InlineData(1.9231, 1.9819, "in", "75.8 to 78.0 in")]
    [InlineData(40.01, 43.32, "rev/min", "2401 to 2599 rev/min")]
    [InlineData(0.0174, 0.0349, "°", "1.0 to 1.9°")]
    public void It_is_told_in_the_places_of_its_unit(double low, double high, string unit, string words)
        => Assert.Equal(words, new Window(low, high).InWords(Units.Spelt(unit)!));

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
