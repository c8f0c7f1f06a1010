using BuildLog.Gearing.Measurements;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Measurements;

public sealed class MeasuredTests
{
    private static readonly Evidence Bench = new("bench");

    // Values away from zero, uncertainties of up to 20 %, degrees of freedom from 1 to 30.
    private static readonly Gen<Measured> AnyMeasured = Gen.Select(Gen.Double[0.5, 20], Gen.Double[0.001, 0.2], Gen.Int[1, 30])
        .Select((value, relative, freedom) => Measured.From(value, new Input("input", value * relative, Bench, freedom)));

    [Fact]
    public void An_exact_number_has_no_uncertainty_and_an_interval_of_no_width()
    {
        Measured exact = 4.1;

        Assert.True(exact.IsExact);
        Assert.Equal(new Interval(4.1, 4.1), exact.Interval95);
        Assert.Empty(exact.Budget());
        Assert.Equal(double.PositiveInfinity, exact.DegreesOfFreedom);
        Assert.Equal(0, exact.RelativeUncertainty);
    }

    [Fact]
    public void What_is_taken_from_itself_is_exactly_nothing()
    {
        var tyre = Of(2.04, 0.02);

        Assert.Equal(0, (tyre - tyre).StandardUncertainty);
        Assert.Equal(0, (tyre / tyre).StandardUncertainty);
    }

    [Fact]
    public void Two_inputs_alike_do_not_cancel()
    {
        // Two tapes of the same make are two tapes: √(3² + 3²).
        var difference = Of(10, 3) - Of(10, 3);

        Assert.Equal(Math.Sqrt(18), difference.StandardUncertainty, 1e-12);
    }

    [Fact]
    public void An_input_in_common_cancels_out_of_a_quotient()
        => Gen.Select(AnyMeasured, AnyMeasured, AnyMeasured).Sample((shared, a, b) =>
        {
            var withIt = a * shared / (b * shared);
            var without = a / b;

            Assert.Equal(without.Value, withIt.Value, without.Value * 1e-12);
            Assert.Equal(without.StandardUncertainty, withIt.StandardUncertainty, without.StandardUncertainty * 1e-9);
        });

    // By hand: y = 3 a − 2 b; u² = 9 · 0.04 + 4 · 0.09 = 0.72.
    [Fact]
    public void Sensitivities_add_up_over_a_formula()
    {
        var (inputA, inputB) = (new Input("a", 0.2, Bench), new Input("b", 0.3, Bench));
        var (a, b) = (Measured.From(5, inputA), Measured.From(7, inputB));

        var y = a + (a * 2) - (b * 2);

        Assert.Equal(1, y.Value, 1e-12);
        Assert.Equal(3, y.SensitivityTo(inputA), 1e-12);
        Assert.Equal(-2, y.SensitivityTo(inputB), 1e-12);
        Assert.Equal(Math.Sqrt(0.72), y.StandardUncertainty, 1e-12);
        Assert.Equal(0, y.SensitivityTo(new Input("c", 1, Bench)));
    }

    // Second route: central differences of the same formula in plain doubles.
    [Fact]
    public void Sensitivities_are_the_derivatives()
        => Gen.Select(Gen.Double[0.5, 5], Gen.Double[0.5, 5], Gen.Double[0.5, 5]).Sample((x, y, z) =>
        {
            static Measured Formula(Measured a, Measured b, Measured c) => ((a * b) - (c / a)) / (b + c);
            var inputs = new[] { new Input("x", 0.1, Bench), new Input("y", 0.1, Bench), new Input("z", 0.1, Bench) };
            var result = Formula(Measured.From(x, inputs[0]), Measured.From(y, inputs[1]), Measured.From(z, inputs[2]));

            double[] at = [x, y, z];
            for (var k = 0; k < 3; k++)
            {
                const double Step = 1e-5;
                double[] up = [.. at], down = [.. at];
                up[k] += Step;
                down[k] -= Step;
                var slope = (Formula(up[0], up[1], up[2]).Value - Formula(down[0], down[1], down[2]).Value) / (2 * Step);
                Assert.Equal(slope, result.SensitivityTo(inputs[k]), 1e-6 * Math.Max(1, Math.Abs(slope)));
            }
        });

    [Fact]
    public void The_shares_of_a_budget_sum_to_one_and_the_largest_comes_first()
        => Gen.Select(AnyMeasured, AnyMeasured, AnyMeasured).Sample((a, b, c) =>
        {
            var budget = (a * b / c).Budget();

            Assert.Equal(1, budget.Sum(line => line.Share), 1e-12);
            Assert.Equal(budget.OrderByDescending(line => line.Share), budget);
        });

    // Welch–Satterthwaite by hand: u² = 9 + 16 = 25; ν = 25² / (3⁴/4 + 4⁴/10) = 625 / 45.85 = 13.631.
    [Fact]
    public void Degrees_of_freedom_follow_welch_and_satterthwaite()
    {
        var sum = Of(0, 3, 4) + Of(0, 4, 10);

        Assert.Equal(625 / 45.85, sum.DegreesOfFreedom, 1e-9);
    }

    [Fact]
    public void Effective_degrees_of_freedom_lie_between_the_fewest_and_the_sum()
        => Gen.Select(AnyMeasured, AnyMeasured, AnyMeasured).Sample((a, b, c) =>
        {
            double[] each = [a.DegreesOfFreedom, b.DegreesOfFreedom, c.DegreesOfFreedom];

            Assert.InRange((a + b - c).DegreesOfFreedom, each.Min() - 1e-9, each.Sum() + 1e-9);
        });

    // Table G.2 has t = 2.57 for ν = 5; unrounded 2.570582.
    [Fact]
    public void The_interval_is_t_times_u_to_both_sides()
    {
        var interval = Of(10, 0.1, 5).Interval95;

        Assert.Equal(10 - 0.2570582, interval.Low, 1e-6);
        Assert.Equal(10 + 0.2570582, interval.High, 1e-6);
    }

    // JCGM 100:2008, F.1.2.3: y = a + s, z = 2 b − s share s alone; cov = 1 · (−1) · u(s)².
    [Fact]
    public void Covariance_comes_through_what_is_shared()
    {
        var shared = Of(1, 0.5);

        Assert.Equal(-0.25, Measured.Covariance(Of(1, 0.1) + shared, (Of(1, 0.2) * 2) - shared), 1e-12);
        Assert.Equal(0, Measured.Covariance(Of(1, 0.1), Of(1, 0.1)));
    }

    [Fact]
    public void The_variance_of_a_sum_is_both_variances_and_twice_the_covariance()
        => Gen.Select(AnyMeasured, AnyMeasured, AnyMeasured).Sample((a, b, shared) =>
        {
            var (x, y) = (a * shared, b - shared);
            var expected = Math.Pow(x.StandardUncertainty, 2) + Math.Pow(y.StandardUncertainty, 2) + (2 * Measured.Covariance(x, y));

            Assert.Equal(expected, Math.Pow((x + y).StandardUncertainty, 2), 1e-9 * Math.Max(1, expected));
        });

    [Fact]
    public void An_input_named_twice_counts_with_both_sensitivities()
    {
        var input = new Input("tape", 1, Bench);

        Assert.Equal(5, Measured.From(0, (input, 2), (input, 3)).SensitivityTo(input), 1e-12);
    }

    [Fact]
    public void What_is_not_finite_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Measured.Exact(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => Measured.Exact(1) / 0);
    }

    private static Measured Of(double value, double u, double freedom = double.PositiveInfinity) => Measured.From(value, new Input("input", u, Bench, freedom));

    [Fact]
    public void An_exact_zero_has_no_relative_uncertainty_either() => Assert.Equal(0, Measured.Exact(0).RelativeUncertainty);

    [Fact]
    public void A_value_and_its_negative_are_known_alike_and_cancel()
        => AnyMeasured.Sample(value =>
        {
            Assert.Equal(-value.Value, (-value).Value);
            Assert.Equal(value.RelativeUncertainty, (-value).RelativeUncertainty, 1e-12);
            Assert.Equal(0, (value + -value).StandardUncertainty);
        });

    // JCGM 100:2008, 5.1.6: of a power p the relative uncertainty is |p| times as large; of a square root half.
    [Fact]
    public void A_square_root_has_half_the_relative_uncertainty()
        => AnyMeasured.Sample(value => Assert.Equal(value.RelativeUncertainty / 2, value.SquareRoot().RelativeUncertainty, 1e-12));

    // By hand: 0.04 apart with u = √2 · 0.02 is 1.41 u, 0.08 is 2.83 u; 1.96 u is the limit. What both share takes no part.
    [Fact]
    public void Two_values_agree_where_their_difference_may_be_nothing()
    {
        Assert.True(Of(4.10, 0.02).AgreesWith(Of(4.14, 0.02)));
        Assert.False(Of(4.10, 0.02).AgreesWith(Of(4.18, 0.02)));

        var shared = Of(0, 1);
        Assert.False((Of(4.10, 0.02) + shared).AgreesWith(Of(4.18, 0.02) + shared));
    }

    [Fact]
    public void What_cancels_but_for_rounding_is_gone_however_large_it_was()
    {
        var tyre = Of(2.04, 0.02);

        Assert.Empty(((tyre * 0.1 * 3e7) - (tyre * 0.3e7)).Budget());
    }
}
