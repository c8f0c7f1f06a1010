using BuildLog.Gearing.Ratios;
using Xunit;

namespace BuildLog.Gearing.Tests.Ratios;

/// <summary>A gearbox on the bench: output turned, input read.</summary>
public sealed class GearCountTests
{
    // By hand: read to 0.25 is ± 0.125 on the input, the stop ± 0.02 · 3.01 seen along it: √(0.125² + 0.0602²)/√3/10.
    [Fact]
    public void One_count_has_one_reading_and_one_stop()
    {
        var ratio = Of("10:30.1").Ratio;

        Assert.Equal(3.01, ratio.Value, 1e-12);
        Assert.Equal(0.0080103, ratio.StandardUncertainty, 1e-6);
        Assert.Equal(["input turns of 10:30.1, reading", "output stop of 10:30.1"], ratio.Budget().Select(line => line.Input.Name));
    }

    [Fact]
    public void The_advice_is_in_output_turns()
        => Assert.Equal("count 20 output turns in one go (turn count of the gear)", Of("10:30.1").Ratio.Budget()[0].Input.Evidence.Settle!(2));

    // The bench trick, read in trade text: 15 of 21 output splines for one input turn are 21/15 = 1.400.
    [Fact]
    public void Splines_are_fractions_of_a_turn() => Assert.Equal(1.4, Of("15/21:1").Ratio.Value, 1e-12);

    // Ten output turns: 3.01 ± 0.008 tells 3.01 from 2.97; second route, both densities by hand: exp(−((3.01 − 2.97)/u)²/2).
    [Fact]
    public void Only_the_list_is_believed_in()
    {
        var candidates = RatioCandidates.ForGear(Of("10:30.1").Ratio, [2.97, 3.01, 3.01]);
        var quotient = Math.Exp(-Math.Pow(0.04 / 0.0080103, 2) / 2);

        Assert.Equal("3.01", candidates.Ranked[0].Name);
        Assert.Null(candidates.Ranked[0].Teeth);
        Assert.True(candidates.Ranked.Count == 1 || Math.Abs((candidates.Ranked[1].Probability / candidates.Ranked[0].Probability) - quotient) < 1e-6);
        Assert.Equal(1, candidates.NotListedProbability + candidates.Ranked.Sum(candidate => candidate.Probability), 1e-3);
    }

    [Fact]
    public void Without_a_list_nothing_is_believed_in() => Assert.Equal((0, 1.0), (RatioCandidates.ForGear(Of("10:30.1").Ratio, []).Ranked.Count, RatioCandidates.ForGear(Of("10:30.1").Ratio, []).NotListedProbability));

    private static TurnCount Of(params string[] turns) => TurnCount.OfGear([.. turns.Select(text => TurnReading.ReadGear(text).OrRefuse())], new CountPrecision());
}
