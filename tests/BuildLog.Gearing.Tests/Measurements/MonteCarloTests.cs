using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Measurements;

public sealed class MonteCarloTests
{
    private static readonly Evidence Bench = new("bench");

    [Fact]
    public void One_seed_draws_the_same_and_another_does_not()
    {
        var value = Normal(4.1, 0.02) * Normal(2.2, 0.03);

        Assert.Equal(MonteCarlo.Of(value, 7)!.Interval95, MonteCarlo.Of(value, 7)!.Interval95);
        Assert.NotEqual(MonteCarlo.Of(value, 7)!.Interval95, MonteCarlo.Of(value, 8)!.Interval95);
    }

    [Fact]
    public void An_input_in_common_is_drawn_once()
    {
        var tyre = Normal(2.2, 0.03);

        Assert.Equal(0, MonteCarlo.Of((tyre * 3) / (tyre * 2), 1)!.StandardUncertainty, 1e-12);
        Assert.Equal(0.06, MonteCarlo.Of(tyre + tyre, 1)!.StandardUncertainty, 0.001);
    }

    // Table G.2: t₀.₉₇₅ with four degrees of freedom is 2.78. JCGM 101:2008, 6.4.9: the standard deviation of a t is √(ν/(ν − 2)) = √2.
    [Fact]
    public void Few_readings_are_drawn_from_students_t()
    {
        var drawn = MonteCarlo.OfTrials(Measured.From(0, new Input("mean of five", 1, Bench, 4)), 3, 1_000_000)!;

        Assert.Equal(2.78, drawn.Interval95.High, 0.03);
        Assert.Equal(Math.Sqrt(2), drawn.StandardUncertainty, 0.03);
    }

    [Fact]
    public void Stated_limits_are_never_left()
    {
        var drawn = MonteCarlo.Of(Measured.From(5, Input.Rectangular("tape", 0.2, Bench)), 1)!;

        Assert.Equal(4.81, drawn.Interval95.Low, 0.005);
        Assert.Equal(5.19, drawn.Interval95.High, 0.005);
    }

    // ln X of a normal X is far from straight at 30 %; there the exact quantiles are ln(1 ± 1.96 · 0.3).
    [Fact]
    public void A_bent_function_is_computed_anew_for_each_draw()
    {
        var drawn = MonteCarlo.OfTrials(Normal(1, 0.3).Map(x => Math.Log(Math.Max(x, 1e-9)), 1), 1, 1_000_000)!;

        Assert.Equal(Math.Log(1 - (1.96 * 0.3)), drawn.Interval95.Low, 0.01);
        Assert.Equal(Math.Log(1 + (1.96 * 0.3)), drawn.Interval95.High, 0.005);
    }

    [Fact]
    public void A_draw_outside_the_domain_gives_no_answer()
    {
        var root = Normal(0.5, 0.5).SquareRoot();

        Assert.Null(MonteCarlo.Of(root, 1));
        Assert.False(Validation.Of(root, 1)!.Agrees);
    }

    // x³ = a, sought and in closed form: with one seed the same draws, so the same cube roots.
    [Fact]
    public void A_root_is_sought_anew_for_each_draw()
    {
        var a = Normal(8, 1.5) * Normal(1, 0.1);
        var x = Measured.Unknown(2);
        var sought = (a - (x * x * x)).SolvedFor(x, -12);
        var closed = a.Map(Math.Cbrt, 1 / 12.0);

        Assert.Equal(closed.StandardUncertainty, sought.StandardUncertainty, 1e-12);
        var (one, other) = (MonteCarlo.Of(sought, 5)!, MonteCarlo.Of(closed, 5)!);
        Assert.Equal(other.Interval95.Low, one.Interval95.Low, 1e-8);
        Assert.Equal(other.Interval95.High, one.Interval95.High, 1e-8);
        Assert.Equal(1, MonteCarlo.Of(sought / closed, 5)!.Interval95.High, 1e-8);
    }

    // y³ = b x with x from x³ = a: y = (b ∛a)^(1/3).
    [Fact]
    public void A_root_in_an_equation_of_another_root_is_sought_as_well()
    {
        var (a, b) = (Normal(8, 1), Normal(4, 0.3));
        var (x, y) = (Measured.Unknown(2), Measured.Unknown(2));
        var sought = ((b * (a - (x * x * x)).SolvedFor(x, -12)) - (y * y * y)).SolvedFor(y, -12);

        Assert.Equal(1, MonteCarlo.Of(sought / (b * a.Map(Math.Cbrt, 1 / 12.0)).Map(Math.Cbrt, 1 / 12.0), 5)!.Interval95.Low, 1e-8);
    }

    // x² = a has two roots and, below zero, none; that on the other side is not this one.
    [Fact]
    public void A_draw_without_a_root_gives_no_answer()
    {
        Measured Root(Measured a)
        {
            var x = Measured.Unknown(1);
            return (a - (x * x)).SolvedFor(x, -2);
        }

        Assert.Null(MonteCarlo.Of(Root(Normal(1, 0.6)), 1));
        Assert.True(MonteCarlo.Of(Root(Measured.From(1, Input.Rectangular("area", 0.99, Bench))), 1)!.Interval95.Low > 0);
    }

    [Fact]
    public void A_cruise_speed_known_to_a_few_per_cent_agrees_with_first_order()
    {
        var car = InventedCar.Plain with { RearAxle = InventedCar.Axle(InventedCar.Of(4.10, 0.02)), Tyres = InventedCar.Rolling(InventedCar.Of(2.00, 0.02)) };
        var n = CruiseCheck.EngineSpeed(car, InventedCar.Goal("100 km/h", "3400"))!;

        var validation = Validation.Of(n, 1)!;

        Assert.True(validation.Agrees);
        Assert.True(validation.Drawn!.Settled);
    }

    // C ± 15 %: 1/C is lopsided, and first order cannot say so.
    [Fact]
    public void A_cruise_speed_on_a_badly_known_tyre_does_not()
    {
        var car = InventedCar.Plain with { Tyres = InventedCar.Rolling(InventedCar.Of(2.00, 0.30)) };
        var n = CruiseCheck.EngineSpeed(car, InventedCar.Goal("100 km/h", "3400"))!;

        var validation = Validation.Of(n, 1)!;

        // By hand: v i / C at C = 2 ∓ 1.96 · 0.3, with v i = 27.78 · 4.1 = 113.9.
        Assert.False(validation.Agrees);
        Assert.Equal(113.889 / 2.588, validation.Drawn!.Interval95.Low, 0.3);
        Assert.Equal(113.889 / 1.412, validation.Drawn.Interval95.High, 1.0);
    }

    // A straight value: whatever ten thousand draws put its ends apart by is chance, however fine the tolerance.
    [Fact]
    public void Chance_is_no_disagreement()
    {
        for (var seed = 1; seed <= 20; seed++)
            Assert.True(new Validation(Normal(10, 1).Interval95, MonteCarlo.OfTrials(Normal(10, 1), seed, 10_000), 1e-6).Agrees, $"seed {seed}");
    }

    // Normal: s(end) = √(p (1 − p)/M)/φ(1.96), φ = 0.05845: 0.0267 of u for ten thousand; three of it 0.080.
    [Fact]
    public void An_end_is_known_as_well_as_its_draws_are_dense()
    {
        Assert.Equal(0.080, MonteCarlo.OfTrials(Normal(10, 1), 1, 10_000)!.EndsWithin, 0.02);
        Assert.Equal(0.008, MonteCarlo.OfTrials(Normal(10, 1), 1, 1_000_000)!.EndsWithin, 0.001);
    }

    [Fact]
    public void A_value_without_uncertainty_has_nothing_to_validate() => Assert.Null(Validation.Of(4.1, 1));

    // 0.0539 has one figure that counts, the second place: δ = 0.005; 0.0123 has two: δ = 0.0005.
    [Theory]
    [InlineData(0.0539, 0.005)]
    [InlineData(0.0123, 0.0005)]
    [InlineData(2.0, 0.5)]
    public void The_tolerance_is_half_a_unit_in_the_last_figure(double u, double expected) => Assert.Equal(expected, MonteCarlo.Tolerance(u), 1e-12);

    [Fact]
    public void Too_few_draws_are_refused_with_the_range()
        => Assert.Contains("10 000 to 10 000 000", Assert.Throws<ArgumentOutOfRangeException>(() => MonteCarlo.OfTrials(1, 1, 9_999)).Message, StringComparison.Ordinal);

    private static Measured Normal(double value, double u) => InventedCar.Of(value, u);
}
