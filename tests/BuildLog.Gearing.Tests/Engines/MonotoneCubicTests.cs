using BuildLog.Gearing.Engines;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Engines;

public sealed class MonotoneCubicTests
{
    // Fritsch and Carlson's own data set RPN 15A (from memory): a step that makes an ordinary spline swing.
    private static readonly (double X, double Y)[] Rpn15A =
    [
        (7.99, 0), (8.09, 2.76429e-5), (8.19, 4.37498e-2), (8.7, 0.169183), (9.2, 0.469428), (10, 0.943740), (12, 0.998636), (15, 0.999919), (20, 0.999994),
    ];

    private static readonly Gen<(double X, double Y)[]> AnyPoints =
        Gen.Select(Gen.Double[0.01, 10], Gen.Double[-50, 50]).Array[2, 12].Select(steps =>
        {
            var x = 0.0;
            return Array.ConvertAll(steps, step => (x += step.Item1, step.Item2));
        });

    // By hand: secants 1 and 3, slopes 1, 2, 3; none is shortened.
    [Theory]
    [InlineData(0.5, 0.375)]
    [InlineData(1.5, 2.375)]
    [InlineData(1, 1)]
    public void Gentle_points_give_the_hermite_cubic(double x, double y)
        => Assert.Equal(y, new MonotoneCubic([(0, 0), (1, 1), (2, 4)]).At(x), 1e-12);

    // By hand: secants 1 and 10, first slopes 1, 5.5, 10; √(1 + 5.5²) = 5.590, so the first two become 0.53666 and 2.95161.
    [Fact]
    public void Steep_neighbours_are_shortened_to_the_circle_of_three()
    {
        var curve = new MonotoneCubic([(0, 0), (1, 1), (2, 11)]);

        Assert.Equal(0.125 * (0.536656 - 2.951610) + 0.5, curve.At(0.5), 1e-5);
        Assert.Equal(2.951610, curve.SlopeAt(1), 1e-5);
    }

    [Fact]
    public void It_goes_through_its_points()
        => AnyPoints.Sample(points =>
        {
            var curve = new MonotoneCubic(points);
            Assert.All(points, point => Assert.Equal(point.Y, curve.At(point.X), 1e-9));
        });

    [Fact]
    public void Between_two_points_it_never_leaves_them_or_turns()
        => AnyPoints.Sample(points =>
        {
            var curve = new MonotoneCubic(points);
            foreach (var (left, right) in points.Zip(points.Skip(1)))
            {
                var rising = Math.Sign(right.Y - left.Y);
                var before = left.Y;
                for (var k = 1; k <= 20; k++)
                {
                    var y = curve.At(Math.Min(right.X, left.X + ((right.X - left.X) * k / 20)));
                    Assert.True((y - before) * rising >= -1e-9);
                    before = y;
                }
            }
        });

    [Fact]
    public void The_authors_step_stays_between_nothing_and_one()
    {
        var curve = new MonotoneCubic(Rpn15A);
        var values = Enumerable.Range(0, 2001).Select(k => curve.At(Math.Min(20, 7.99 + (12.01 * k / 2000)))).ToList();

        Assert.All(values, value => Assert.InRange(value, 0, 0.999994));
        Assert.All(values.Zip(values.Skip(1)), pair => Assert.True(pair.Second >= pair.First - 1e-15));
    }

    // Second route: differences.
    [Fact]
    public void The_slope_is_that_of_the_curve()
        => Gen.Select(AnyPoints, Gen.Double[0.01, 0.99]).Sample((points, share) =>
        {
            var curve = new MonotoneCubic(points);
            var x = curve.Low + ((curve.High - curve.Low) * share);
            const double h = 1e-6;
            if (points.Any(point => Math.Abs(point.X - x) < 2 * h)) return;
            Assert.Equal((curve.At(x + h) - curve.At(x - h)) / (2 * h), curve.SlopeAt(x), 1e-3 * Math.Max(1, Math.Abs(curve.SlopeAt(x))));
        });

    [Fact]
    public void It_ends_where_its_points_end()
    {
        var curve = new MonotoneCubic([(1, 1), (2, 2)]);

        Assert.False(curve.Reaches(0.99));
        Assert.True(curve.Reaches(2));
        Assert.Throws<ArgumentOutOfRangeException>(() => curve.At(2.01));
        Assert.Throws<ArgumentException>(() => new MonotoneCubic([(1, 1)]));
        Assert.Throws<ArgumentException>(() => new MonotoneCubic([(1, 1), (1, 2)]));
    }
}
