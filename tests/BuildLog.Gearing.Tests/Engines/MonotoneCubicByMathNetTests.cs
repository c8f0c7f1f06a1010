using BuildLog.Gearing.Engines;
using CsCheck;
using MathNet.Numerics.Interpolation;
using Xunit;

namespace BuildLog.Gearing.Tests.Engines;

/// <summary>The torque curve's cubic by another route: MathNet's PCHIP, where both rules say the same.</summary>
/// <remarks>
/// Between two secants of one sign PCHIP takes their weighted harmonic mean, ours (Fritsch and Carlson) the arithmetic one, shortened where it is steep. Both
/// means of two equal secants are that secant, and both rules lay the curve flat where the secants change sign or one is zero: on points that go straight on or
/// turn, the inner slopes are the same. At the ends PCHIP bends by three points and ours takes the one secant, so it is compared from the second point to the
/// last but one.
/// </remarks>
public sealed class MonotoneCubicByMathNetTests
{
    // Steps of x, and of each a slope: again the one before, its opposite times a factor, or level.
    private static readonly Gen<(double[] X, double[] Y)> StraightOnOrTurning
        = Gen.Select(Gen.Double[-30, 30], Gen.Select(Gen.Double[0.1, 10], Gen.Int[0, 2], Gen.Double[0.1, 5]).Array[5, 12]).Select((first, steps) =>
        {
            var (x, y) = (new List<double> { 10 }, new List<double> { 200 });
            var (slope, turned) = (first, first);
            foreach (var (length, kind, factor) in steps)
            {
                if (kind == 1) slope = turned = -turned * factor;
                if (kind == 2) slope = 0;
                x.Add(x[^1] + length);
                y.Add(y[^1] + (slope * length));
            }

            return (x.ToArray(), y.ToArray());
        });

    [Fact]
    public void Inside_it_is_the_other_curve_wherever_both_rules_say_the_same()
        => StraightOnOrTurning.Sample((x, y) =>
        {
            var ours = new MonotoneCubic([.. x.Zip(y)]);
            var theirs = CubicSpline.InterpolatePchip(x, y);
            var size = y.Max(Math.Abs);
            for (var k = 0; k <= 200; k++)
            {
                var at = x[1] + ((x[^2] - x[1]) * k / 200);
                Assert.Equal(theirs.Interpolate(at), ours.At(at), 1e-9 * size);
                Assert.Equal(theirs.Differentiate(at), ours.SlopeAt(at), 1e-7 * (1 + size));
            }
        });

    // By hand: secants 1 and 3 over equal steps have the means 2 and 2 · 1 · 3/(1 + 3) = 1.5.
    [Fact]
    public void Where_the_rules_differ_it_is_by_the_kind_of_mean()
    {
        double[] x = [0, 1, 2, 3], y = [0, 1, 4, 7];

        Assert.Equal(2, new MonotoneCubic([.. x.Zip(y)]).SlopeAt(1), 1e-12);
        Assert.Equal(1.5, CubicSpline.InterpolatePchip(x, y).Differentiate(1), 1e-12);
    }
}
