using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Ratios;

/// <remarks>
/// By hand throughout, with read-to r = 0.25 and alignment a = 0.02: seen along y = 2 p, reading gives r/√3, r²/3 = 0.0208333, and
/// each wheel's stop i · a/√3, a²/3 = 0.00013333; at i = 4.1 that is 4.1² · 0.00013333 = 0.00224133.
/// </remarks>
public sealed class TurnCountTests
{
    private const double Reading = 0.25 * 0.25 / 3;
    private const double Stop = 4.1 * 4.1 * 0.02 * 0.02 / 3;

    // Common practice, no source: 23.7 turns of the propshaft to ten of one wheel; 2.37 shows, doubled 4.74.
    [Fact]
    public void One_wheel_held_shows_half_the_ratio()
    {
        Assert.Equal(4.74, Of(Wheels.OneHeld, "10:23.7").Ratio.Value, 1e-12);
        Assert.Equal(2.37, Of(Wheels.Together, "10:23.7").Ratio.Value, 1e-12);
    }

    [Fact]
    public void One_wheel_held_has_one_reading_and_one_stop()
        => Same(Math.Sqrt(Reading + Stop) / 10, Of(Wheels.OneHeld, "10:20.5"));

    // Both wheels stop on one mark's error: u_W = 2 u_w.
    [Fact]
    public void Wheels_that_turn_together_share_their_stop()
        => Same(Math.Sqrt(Reading + (4 * Stop)) / 20, Of(Wheels.Together, "10:41"));

    // Each wheel has a mark of its own: u_W = √2 u_w.
    [Fact]
    public void Wheels_read_each_have_a_stop_of_their_own()
        => Same(Math.Sqrt(Reading + (2 * Stop)) / 20, Of(Wheels.Each, "10,10:41"));

    [Fact]
    public void Repeating_a_count_averages_the_stops_but_not_the_reading()
        => Same(Math.Sqrt(Reading + (Stop / 2)) / 10, Of(Wheels.OneHeld, "10:20.5", "10:20.5"));

    // Two counts of one W round alike whichever wheels made it up.
    [Fact]
    public void The_reading_is_shared_by_all_counts_of_the_same_sum_of_turns()
        => Same(Math.Sqrt(Reading + (2 * Stop / 2)) / 20, Of(Wheels.Each, "10,10:41", "8,12:41"));

    // Line through the origin, both of one weight: u = σ / √(10² + 20²).
    [Fact]
    public void Counts_over_different_turns_have_readings_of_their_own()
        => Same(Math.Sqrt((Reading + Stop) / 500), Of(Wheels.OneHeld, "10:20.5", "20:41"));

    [Fact]
    public void Counting_further_is_better_than_counting_again()
    {
        var again = Of(Wheels.OneHeld, "10:20.5", "10:20.5", "10:20.5").Ratio;
        var further = Of(Wheels.OneHeld, "30:61.5").Ratio;

        Assert.True(further.StandardUncertainty < again.StandardUncertainty / 2.5);
    }

    // y = 41, 41.5, 40.5: χ² = 0.5/σ², R² = 0.25/σ²; u = u_internal R; ν = 2 (R²/(R²−1))².
    [Fact]
    public void From_three_counts_on_scatter_widens_and_brings_degrees_of_freedom()
    {
        var birge = 0.25 / (Reading + Stop);
        var ratio = Of(Wheels.OneHeld, "10:20.5", "10:20.75", "10:20.25").Ratio;

        Assert.Equal(4.1, ratio.Value, 1e-12);
        Assert.Equal(Math.Sqrt((Reading + (Stop / 3)) * birge) / 10, ratio.StandardUncertainty, 1e-9);
        Assert.Equal(2 * Math.Pow(birge / (birge - 1), 2), ratio.DegreesOfFreedom, 1e-6);
    }

    [Fact]
    public void Two_counts_do_not_widen() => Assert.Equal(double.PositiveInfinity, Of(Wheels.OneHeld, "10:20.5", "10:21").Ratio.DegreesOfFreedom);

    [Fact]
    public void A_count_once_over_has_the_uncertainty_that_is_foretold()
        => Gen.Select(Gen.Int[1, 60], Gen.Bool.Select(held => held ? Wheels.OneHeld : Wheels.Together), Gen.Double[0.05, 1], Gen.Double[0, 0.1]).Sample((turns, wheels, readTo, align) =>
        {
            var how = new CountPrecision(readTo, align);
            var sum = wheels == Wheels.OneHeld ? turns : 2 * turns;
            var ratio = TurnCount.Of([TurnReading.Read(FormattableString.Invariant($"{turns}:{4.1 * sum / 2}"), wheels).OrRefuse()], how).Ratio;

            Assert.Equal(ratio.StandardUncertainty, TurnCount.UncertaintyOver(sum, 4.1, wheels, how), 1e-12);
        });

    [Theory]
    [InlineData("10:2", "1.5 and 12")]
    [InlineData("10:238.5", "1.5 and 12")]
    public void A_ratio_that_no_axle_has_is_refused_with_a_hint(string turns, string range)
    {
        var refused = Assert.Throws<RefusedException>(() => Of(Wheels.OneHeld, turns));

        Assert.Contains(range, refused.Message, StringComparison.Ordinal);
        Assert.Contains("which wheels turned", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-0.1, 0.02)]
    [InlineData(1.1, 0.02)]
    [InlineData(double.NaN, 0.02)]
    [InlineData(0.25, -0.01)]
    [InlineData(0.25, 0.6)]
    [InlineData(0.25, double.NaN)]
    public void A_precision_that_nobody_has_is_refused(double readTo, double align)
        => Assert.Throws<RefusedException>(() => TurnCount.Of([TurnReading.Read("10:20.5", Wheels.OneHeld).OrRefuse()], new CountPrecision(readTo, align)));

    [Fact]
    public void Without_a_count_there_is_no_ratio() => Assert.Throws<RefusedException>(() => TurnCount.Of([], new CountPrecision()));

    // A gearbox counts output against input: 10 out, 30.1 in is 3.01, both ends turning alike.
    [Fact]
    public void A_gear_is_counted_by_the_same_law()
    {
        var reading = TurnReading.Read("10:30.1", Wheels.Together).OrRefuse();

        Assert.Equal(3.01, TurnCount.Of([reading], new CountPrecision(), RatioRange.Gear).Ratio.Value, 1e-12);
    }

    [Fact]
    public void The_evidence_says_how_far_to_count_for_a_smaller_uncertainty()
    {
        var evidence = Assert.Single(Of(Wheels.OneHeld, "10:20.5").Ratio.Budget().Select(line => line.Input.Evidence).Distinct());

        Assert.Contains("25 wheel turns", evidence.Settle!(2.5), StringComparison.Ordinal);
    }

    private static TurnCount Of(Wheels wheels, params string[] turns)
        => TurnCount.Of([.. turns.Select(text => TurnReading.Read(text, wheels).OrRefuse())], new CountPrecision(0.25, 0.02));

    private static void Same(double u, TurnCount count)
    {
        Assert.Equal(4.1, count.Ratio.Value, 1e-12);
        Assert.Equal(u, count.Ratio.StandardUncertainty, 1e-9);
        Assert.Equal(double.PositiveInfinity, count.Ratio.DegreesOfFreedom);
    }

    // By hand: both wheels share the turns, so 2.5 times 20 is 25 of each. Two counts are √(Reading + Stop) / √(Reading + Stop/2) = 1.0252 times as good as one: 2 · 10.252
    // is 21. Where counts scatter by a turn, one over ten is no guide: twice the longest count.
    [Theory]
    [InlineData(2.5, "count 25 wheel turns", Wheels.Together, "10:41")]
    [InlineData(2, "count 21 wheel turns", Wheels.OneHeld, "10:20.5", "10:20.5")]
    [InlineData(2, "count 40 wheel turns", Wheels.OneHeld, "10:20.5", "20:43", "10:19.5")]
    public void The_advice_is_one_count_that_is_better_than_the_line_by_the_factor(double factor, string says, Wheels wheels, params string[] turns)
        => Assert.StartsWith(says, Of(wheels, turns).Ratio.Budget()[0].Input.Evidence.Settle!(factor), StringComparison.Ordinal);

    [Fact]
    public void The_coarsest_precision_that_is_taken_is_a_turn_and_half_a_turn()
        => Assert.True(TurnCount.Of([TurnReading.Read("10:20.5", Wheels.OneHeld).OrRefuse()], new CountPrecision(1, 0.5)).Ratio.StandardUncertainty > 0);

    [Fact]
    public void Without_a_count_the_example_is_one_of_what_was_asked_for()
    {
        static string Example(RatioRange range) => Assert.Throws<RefusedException>(() => TurnCount.Of([], new CountPrecision(), range)).Refusal.Example;

        Assert.Equal(CountedEnds.Gearbox.Example, Example(RatioRange.Gear));
        Assert.Equal(CountedEnds.Axle.Example, Example(RatioRange.Axle));
    }

    [Fact]
    public void A_gear_that_no_gearbox_has_is_sent_to_the_end_that_was_turned()
        => Assert.Contains("which end was turned", Assert.Throws<RefusedException>(() => TurnCount.OfGear([TurnReading.ReadGear("10:900").OrRefuse()], new CountPrecision())).Message, StringComparison.Ordinal);
}
