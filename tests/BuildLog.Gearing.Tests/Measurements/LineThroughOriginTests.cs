using BuildLog.Gearing.Measurements;
using CsCheck;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearRegression;
using Xunit;

namespace BuildLog.Gearing.Tests.Measurements;

public sealed class LineThroughOriginTests
{
    private static readonly Evidence Bench = new("bench");

    private static readonly Gen<(double X, double Y, double Error)[]> AnyPoints =
        Gen.Select(Gen.Double[1, 40], Gen.Double[-1, 1], Gen.Double[0.01, 1], (x, off, error) => (X: x, Y: (4.1 * x) + off, Error: error)).Array[3, 12];

    // 10 turns with errors of 0.1: 41.0 and 41.1 may be one, 41 and 43 exclude each other, 40, 41 and 42 scatter eight times as far as they should.
    [Fact]
    public void What_the_slopes_uncertainty_is_made_of_is_known()
    {
        static bool Apart(params double[] readings)
            => LineThroughOrigin.IsFromTheReadingsApart(LineThroughOrigin.Fit([.. readings.Select(y => ((Measured)10, Measured.From(y, new Input("reading", 0.1, Bench))))], Bench).Slope);

        Assert.False(Apart(41, 41.1));
        Assert.True(Apart(41, 43));
        Assert.False(Apart(41, 41.05, 41.1));
        Assert.True(Apart(40, 41, 42));
    }

    // Second route: MathNet's weighted regression with one column, and u = 1/√(Σ w x²), √(χ²/(n−1)) when that is larger.
    [Fact]
    public void Slope_and_uncertainty_are_those_of_weighted_least_squares()
        => AnyPoints.Sample(points =>
        {
            var x = Matrix<double>.Build.Dense(points.Length, 1, (row, _) => points[row].X);
            var y = Vector<double>.Build.Dense(points.Length, row => points[row].Y);
            var weights = Matrix<double>.Build.DenseOfDiagonalArray([.. points.Select(point => 1 / (point.Error * point.Error))]);
            var slope = WeightedRegression.Weighted(x, y, weights)[0];
            var residual = y - (x * Vector<double>.Build.Dense([slope]));
            var birge = Math.Sqrt((residual * (weights * residual)) / (points.Length - 1));
            var stated = Math.Sqrt((x.TransposeThisAndMultiply(weights) * x).Inverse()[0, 0]);

            var line = LineThroughOrigin.Fit([.. points.Select(point => Point(point.X, point.Y, point.Error))], Bench);

            Assert.Equal(slope, line.Slope.Value, 1e-9);
            Assert.Equal(birge, line.BirgeRatio, 1e-6 * Math.Max(1, birge));
            Assert.Equal(stated * Math.Max(1, birge), line.Slope.StandardUncertainty, 1e-6 * stated * Math.Max(1, birge));
        });

    // By hand: 20.5/10 stated 0.1: b = 2.05, u = 0.1/10.
    [Fact]
    public void One_point_is_its_own_quotient()
    {
        var slope = LineThroughOrigin.Fit([Point(10, 20.5, 0.1)], Bench).Slope;

        Assert.Equal(2.05, slope.Value, 1e-12);
        Assert.Equal(0.01, slope.StandardUncertainty, 1e-12);
        Assert.Equal(double.PositiveInfinity, slope.DegreesOfFreedom);
    }

    // By hand: an error of 0.03 in x moves y by 2 · 0.03 seen along y; u = √(0.1² + 0.06²) / 10.
    [Fact]
    public void An_error_in_x_counts_along_y_through_the_slope()
    {
        var point = (Measured.From(10, new Input("x", 0.03, Bench)), Measured.From(20, new Input("y", 0.1, Bench)));

        Assert.Equal(Math.Sqrt(0.01 + 0.0036) / 10, LineThroughOrigin.Fit([point], Bench).Slope.StandardUncertainty, 1e-12);
    }

    // By hand: two points at x = 10 with one error of 0.1 in common: averaging does not help, u = 0.1/10.
    [Fact]
    public void An_error_that_all_points_share_does_not_average_out()
    {
        var shared = new Input("scale", 0.1, Bench);
        var slope = LineThroughOrigin.Fit([(10, Measured.From(20, shared)), (10, Measured.From(20, shared))], Bench).Slope;

        Assert.Equal(0.01, slope.StandardUncertainty, 1e-12);
    }

    // By hand, x = 1: y = 1, 2, 3 with σ = 0.1: mean 2, χ² = 200, R = √(200/2) = 10, u = 0.1/√3 · 10 = 1/√3;
    // ν = 2 (R²/(R²−1))² = 2 (100/99)² = 2.0406.
    [Fact]
    public void Scatter_beyond_the_stated_errors_widens_and_brings_its_degrees_of_freedom()
    {
        var line = LineThroughOrigin.Fit([Point(1, 1, 0.1), Point(1, 2, 0.1), Point(1, 3, 0.1)], Bench);

        Assert.Equal(10, line.BirgeRatio, 1e-9);
        Assert.Equal(1 / Math.Sqrt(3), line.Slope.StandardUncertainty, 1e-9);
        Assert.Equal(2 * Math.Pow(100 / 99.0, 2), line.Slope.DegreesOfFreedom, 1e-6);
    }

    [Fact]
    public void Scatter_below_the_stated_errors_narrows_nothing()
    {
        var slope = LineThroughOrigin.Fit([Point(1, 2, 0.1), Point(1, 2, 0.1), Point(1, 2, 0.1)], Bench).Slope;

        Assert.Equal(0.1 / Math.Sqrt(3), slope.StandardUncertainty, 1e-12);
        Assert.Equal(double.PositiveInfinity, slope.DegreesOfFreedom);
    }

    [Fact]
    public void Two_points_are_too_few_to_speak_of_scatter()
    {
        var line = LineThroughOrigin.Fit([Point(1, 1, 0.1), Point(1, 1.5, 0.1)], Bench);

        Assert.Equal(0.1 / Math.Sqrt(2), line.Slope.StandardUncertainty, 1e-12);
        Assert.Equal(Math.Sqrt(12.5), line.BirgeRatio, 1e-9);
    }

    // By hand: 1 or 3, either as likely: mean 2, standard deviation 1, beside the stated 0.1/√2. Nothing says how many more would scatter so: ν = ∞.
    [Fact]
    public void Two_points_that_exclude_each_other_leave_room_for_both()
    {
        var slope = LineThroughOrigin.Fit([Point(1, 1, 0.1), Point(1, 3, 0.1)], Bench).Slope;

        Assert.Equal(Math.Sqrt(1 + 0.005), slope.StandardUncertainty, 1e-12);
        Assert.Equal(double.PositiveInfinity, slope.DegreesOfFreedom);
        Assert.True(slope.Interval95.Contains(1) && slope.Interval95.Contains(3));
    }

    [Fact]
    public void Whatever_two_points_say_the_interval_holds_both_or_they_may_both_be_right()
        => Gen.Select(Gen.Double[1, 40], Gen.Double[1, 40], Gen.Double[2, 9], Gen.Double[2, 9], Gen.Double[0.01, 1], Gen.Double[0.01, 1])
            .Sample((x1, x2, b1, b2, error1, error2) =>
            {
                var slope = LineThroughOrigin.Fit([Point(x1, x1 * b1, error1), Point(x2, x2 * b2, error2)], Bench).Slope;

                var bothRight = Math.Abs(b1 - b2) <= 4 * double.Hypot(error1 / x1, error2 / x2) + 1e-9;
                Assert.True(bothRight || (slope.Interval95.Contains(b1) && slope.Interval95.Contains(b2)));
            });

    [Fact]
    public void Without_a_point_away_from_the_origin_there_is_no_line()
    {
        Assert.Throws<ArgumentException>(() => LineThroughOrigin.Fit([], Bench));
        Assert.Throws<ArgumentException>(() => LineThroughOrigin.Fit([(0, 1), (0, 2)], Bench));
    }

    private static (Measured X, Measured Y) Point(double x, double y, double error) => (x, Measured.From(y, new Input("y", error, Bench)));

    // MathNet's own line through the origin is the second route where all points weigh alike.
    [Fact]
    public void Points_without_errors_are_fitted_as_another_library_does()
    {
        (double X, double Y)[] points = [(1, 2.1), (2, 3.9), (3, 6.2), (5, 10.1), (8, 15.8)];

        var slope = LineThroughOrigin.Fit([.. points.Select(point => (Measured.Exact(point.X), Measured.Exact(point.Y)))], new Evidence("line")).Slope;

        Assert.Equal(MathNet.Numerics.Fit.LineThroughOrigin([.. points.Select(point => point.X)], [.. points.Select(point => point.Y)]), slope.Value, 1e-12);
    }

    // b = y/x, so ∂b/∂x = −y/x² = −8.2/4 and ∂b/∂y = 1/x: a wheel that went further than it was read makes the ratio smaller.
    [Fact]
    public void The_slope_falls_where_x_was_read_too_short()
    {
        var (x, y) = (new Input("wheel", 0.01, new Evidence("bench")), new Input("shaft", 0.01, new Evidence("bench")));

        var slope = LineThroughOrigin.Fit([(Measured.From(2, x), Measured.From(8.2, y))], new Evidence("bench")).Slope;

        Assert.Equal(-2.05, slope.SensitivityTo(x), 1e-9);
        Assert.Equal(0.5, slope.SensitivityTo(y), 1e-9);
    }

    [Fact]
    public void A_point_at_the_origin_says_nothing_of_the_slope()
        => Assert.Equal(4.1, LineThroughOrigin.Fit([(0, 0), (2, 8.2)], new Evidence("bench")).Slope.Value, 1e-12);

    // By hand, both of weight one: (1 · 2 + 1 · 3) / 2.
    [Fact]
    public void Where_one_point_states_no_error_all_weigh_alike()
        => Assert.Equal(2.5, LineThroughOrigin.Fit([(1, 2), (1, Measured.From(3, new Input("tape", 0.1, new Evidence("bench"))))], new Evidence("bench")).Slope.Value, 1e-12);

    [Fact]
    public void Without_a_stated_error_nothing_is_said_of_scatter_over_it()
        => Assert.Equal(double.NaN, LineThroughOrigin.Fit([(1, 2), (1, 3)], new Evidence("bench")).BirgeRatio);
}
