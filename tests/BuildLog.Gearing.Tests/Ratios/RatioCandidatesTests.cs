using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Ratios;

public sealed class RatioCandidatesTests
{
    [Fact]
    public void What_is_believed_beforehand_sums_to_one()
    {
        Assert.Equal(1, RatioCandidates.PriorTotal(null), 1e-12);
        foreach (var listed in (string[][])[["4.10", "4.30", "4.56"], ["3.36", "2.79", "2.73"], ["4.10", "4.10"], ["7.777"], []])
            Assert.Equal(1, RatioCandidates.PriorTotal(Quoted(listed)), 1e-12);
    }

    [Fact]
    public void What_is_believed_afterwards_sums_to_one()
        => Gen.Select(Gen.Double[2.1, 8.9], Gen.Double[0.001, 0.3], Gen.Int[1, 12]).Sample((ratio, u, freedom) =>
        {
            var candidates = RatioCandidates.For(Of(ratio, u, freedom == 12 ? double.PositiveInfinity : freedom), null);
            var shown = candidates.Ranked.Sum(candidate => candidate.Probability) + candidates.NotListedProbability;

            // Those below one in a thousand are not shown; there are some five hundred of them at most.
            Assert.InRange(shown, 0.5, 1 + 1e-9);
            Assert.Equal(candidates.Ranked.OrderByDescending(candidate => candidate.Probability), candidates.Ranked);
            Assert.All(candidates.Ranked, candidate => Assert.True(candidate.Probability > 0.001));
        });

    // Second route: Bayes over the same prior, enumerated here from its definition in words.
    [Fact]
    public void Probabilities_are_those_of_the_definition()
    {
        double[] listed = [41 / 10.0, 43 / 10.0, 41 / 9.0];
        var pairs = new Dictionary<double, double>();
        for (var pinion = 5; pinion <= 20; pinion++)
        {
            for (var ring = 25; ring <= 60; ring++)
            {
                var (ratio, isUsual) = ((double)ring / pinion, pinion is >= 8 and <= 16 && ring >= 30);
                var weight = (isUsual ? 1 : 0.1) * (System.Numerics.BigInteger.GreatestCommonDivisor(ring, pinion).IsOne ? 1 : 0.3);
                if (ratio is >= 2 and <= 9 && !listed.Contains(ratio)) pairs[ratio] = Math.Max(weight, pairs.GetValueOrDefault(ratio));
            }
        }

        var all = pairs.Values.Sum();
        const double Measured = 4.12, U = 0.05;
        static double Density(double ratio) => Math.Exp(-Math.Pow((Measured - ratio) / U, 2) / 2) / (U * Math.Sqrt(2 * Math.PI));
        var notListed = 0.10 / (Measured * Math.Log(4.5));
        var weights = listed.Select(ratio => (Ratio: ratio, Weight: 0.70 / 3 * Density(ratio))).Concat(pairs.Select(pair => (Ratio: pair.Key, Weight: 0.20 * pair.Value / all * Density(pair.Key)))).ToList();
        var total = notListed + weights.Sum(entry => entry.Weight);

        var candidates = RatioCandidates.For(Of(Measured, U), Quoted("4.10", "4.30", "4.56"));

        Assert.Equal(notListed / total, candidates.NotListedProbability, 1e-9);
        Assert.Equal(
            weights.Where(entry => entry.Weight / total > 0.001).OrderByDescending(entry => entry.Weight).Select(entry => (entry.Ratio, Math.Round(entry.Weight / total, 9))),
            candidates.Ranked.Select(candidate => (candidate.Ratio, Math.Round(candidate.Probability, 9))));
    }

    // Student's density by its formula for ν = 2: f(t) = 1 / (2 + t²)^(3/2); two listed ratios, so only their quotient counts.
    [Fact]
    public void Few_degrees_of_freedom_make_the_likelihood_students()
    {
        var ranked = RatioCandidates.For(Of(4.12, 0.02, 2), Quoted("4.10", "4.30")).Ranked;
        var quotient = Math.Pow((2 + Math.Pow(0.18 / 0.02, 2)) / (2 + Math.Pow(0.02 / 0.02, 2)), 1.5);

        Assert.Equal(quotient, Probability(ranked, 41, 10) / Probability(ranked, 43, 10), 1e-6 * quotient);
    }

    // Common practice, no source: 4.74 counted, 43/9 is the axle sold nearest; 47/10 comes next.
    [Fact]
    public void Ten_turns_and_23_7_most_probably_mean_the_axle_sold_nearest()
    {
        var counted = TurnCount.Of([TurnReading.Read("10:23.7", Wheels.OneHeld).OrRefuse()], new CountPrecision()).Ratio;
        var candidates = RatioCandidates.For(counted);

        Assert.Equal("43/9", candidates.Ranked[0].Name);
        Assert.True(candidates.Ranked[0].IsListed);
        Assert.Contains(candidates.Ranked, candidate => candidate.Name == "47/10");
    }

    // Names under which such axles are sold, from the list of ring and pinion pairs; the first three have a nearer pair nobody sells.
    [Theory]
    [InlineData("3.36", "37/11")]
    [InlineData("2.79", "39/14")]
    [InlineData("2.73", "41/15")]
    [InlineData("4.10", "41/10")]
    [InlineData("4.11", "37/9")]
    [InlineData("3.08", "40/13")]
    [InlineData("3.07", "43/14")]
    [InlineData("3.54", "46/13")]
    [InlineData("3.55", "39/11")]
    [InlineData("3.73", "41/11")]
    [InlineData("4.56", "41/9")]
    [InlineData("4.77", "43/9")]
    [InlineData("4.00", "40/10")]
    public void A_listed_ratio_is_the_pair_it_is_sold_as(string listed, string teeth) => Assert.Equal(teeth, SoldAs(listed).Name);

    // A quoted ratio means half of its last digit either way; what is known to be sold goes before what is nearer, but only within that.
    [Theory]
    [InlineData("4.09", "45/11")]
    [InlineData("4.091", "45/11")]
    [InlineData("4.1", "41/10")]
    [InlineData("4.100", "41/10")]
    [InlineData("4,11", "37/9")]
    [InlineData("4.111", "37/9")]
    [InlineData("3.90", "39/10")]
    [InlineData("3.91", "43/11")]
    [InlineData("3.9", "43/11")]
    [InlineData("4.88", "39/8")]
    [InlineData("45/11", "45/11")]
    [InlineData("41/10", "41/10")]
    public void A_listed_ratio_is_as_near_as_it_was_quoted(string listed, string teeth) => Assert.Equal(teeth, SoldAs(listed).Name);

    // 43/9 = 4.777… is 4.78 rounded, which other pairs make as well; 4.77 no pair rounds to.
    [Fact]
    public void What_no_pair_rounds_to_is_one_with_its_digits_cut_off_and_none_that_is_only_near()
    {
        Assert.Equal("43/9", SoldAs("4.77").Name);
        Assert.Null(SoldAs("4.092").Teeth);
    }

    [Fact]
    public void The_pair_of_a_listed_ratio_rounds_to_it_wherever_one_does()
        => Gen.Select(Gen.Int[2050, 8950], Gen.Int[1, 3]).Sample((thousandths, places) =>
        {
            var text = (thousandths / 1000m).ToString($"F{places}", System.Globalization.CultureInfo.InvariantCulture);
            var (quoted, half) = (decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture), 0.5m / (decimal)Math.Pow(10, places));
            bool Rounds(Teeth pair) => Math.Abs(((decimal)pair.Ring / pair.Pinion) - quoted) <= half;

            var pairs = ListedRatios.Common.Concat(ToothPairs.All).Where(Rounds).ToList();
            if (pairs.Count == 0) return;

            var chosen = SoldAs(text).Teeth;
            Assert.True(chosen is { } pair && Rounds(pair), $"{chosen} for {text}");
            Assert.Equal(pairs.Exists(ListedRatios.Common.Contains), ListedRatios.Common.Contains(chosen!.Value));
        });

    // 41 turns for ten, with an axle of 41/10 or 45/11 in the list: the nearer is believed in, and the two are those to be told apart.
    [Fact]
    public void A_count_is_held_against_the_pairs_that_were_quoted()
    {
        var count = TurnCount.Of([TurnReading.Read("20:40.9", Wheels.OneHeld).OrRefuse()], new CountPrecision());

        Assert.Equal("45/11", RatioCandidates.For(count.Ratio, Quoted("4.09")).Ranked[0].Name);
        Assert.Equal(["45/11", "37/9"], RatioCandidates.For(count.Ratio, Quoted("4.09", "4.11")).Ranked.Where(candidate => candidate.IsListed).Select(candidate => candidate.Name));
    }

    // 57/20 is 2.85 to the letter, 37/13 is 2.846: a pinion of 20 is rarely made.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Of_two_pairs_as_near_the_one_of_usual_teeth_is_named_first(bool isListed)
        => Assert.Equal("37/13", RatioCandidates.For(Of(2.85, 0.01), Quoted(isListed ? "2.85" : "4.10")).Ranked[0].Name);

    [Fact]
    public void A_listed_ratio_that_no_pair_makes_stands_for_itself()
    {
        var first = RatioCandidates.For(Of(8.85, 0.001), Quoted("8.85")).Ranked[0];

        Assert.Null(first.Teeth);
        Assert.True(first.IsListed);
        Assert.Equal("8.85", first.Name);
    }

    [Fact]
    public void A_ratio_far_from_every_pair_is_not_listed()
        => Assert.True(RatioCandidates.For(Of(8.93, 0.002), Quoted("4.10")).NotListedProbability > 0.99);

    [Fact]
    public void Without_uncertainty_only_the_very_ratio_is_left()
    {
        Assert.Equal(("43/9", 1.0), RatioCandidates.For(43 / 9.0).Ranked.Select(candidate => (candidate.Name, candidate.Probability)).Single());
        Assert.Equal(1, RatioCandidates.For(4.7777).NotListedProbability);
    }

    [Fact]
    public void A_ratio_typed_twice_weighs_once()
        => Assert.Equal(
            Probability(RatioCandidates.For(Of(4.2, 0.05), Quoted("4.10", "4.30")).Ranked, 41, 10),
            Probability(RatioCandidates.For(Of(4.2, 0.05), Quoted("4.10", "4.30", "4.30")).Ranked, 41, 10),
            1e-12);

    private static double Probability(IReadOnlyList<RatioCandidate> ranked, int ring, int pinion)
        => ranked.Single(candidate => candidate.Teeth == new Teeth(ring, pinion)).Probability;

    private static List<QuotedRatio> Quoted(params string[] texts) => [.. texts.Select(text => QuotedRatio.Read(text, RatioRange.Axle).OrRefuse())];

    /// <summary>The candidate that a listed ratio stands for, believed in because nothing speaks against it.</summary>
    private static RatioCandidate SoldAs(string listed)
    {
        var quoted = Quoted(listed);
        return RatioCandidates.For(Of(quoted[0].Ratio, Math.Max(0.01, quoted[0].HalfLastDigit)), quoted).Ranked.Single(candidate => candidate.IsListed);
    }

    private static Measured Of(double ratio, double u, double freedom = double.PositiveInfinity)
        => BuildLog.Gearing.Measurements.Measured.From(ratio, new Input("count", u, new Evidence("count"), freedom));

    // Far from the list the normal density is below what a double can hold; the belief still sums to one and goes to "not listed".
    [Fact]
    public void A_gear_far_from_its_list_is_none_of_it_and_one_near_is_listed()
    {
        var far = RatioCandidates.ForGear(Of(3.0, 0.001), [2.08]);
        var near = Assert.Single(RatioCandidates.ForGear(Of(2.081, 0.01), [2.08, 3.4]).Ranked);

        Assert.Equal((0, 1.0), (far.Ranked.Count, far.NotListedProbability));
        Assert.True(near.IsListed);
    }

    // Bayes by hand for one listed gear, measured right on it: 0.9 / (u √(2π)) against 0.1 / (x ln(20/0.3)).
    [Fact]
    public void Nine_tenths_are_kept_for_the_list_of_a_gearbox()
    {
        var (listed, not) = (0.9 / (0.01 * Math.Sqrt(2 * Math.PI)), 0.1 / (2 * Math.Log(20 / 0.3)));

        Assert.Equal(not / (listed + not), RatioCandidates.ForGear(Of(2, 0.01), [2]).NotListedProbability, 1e-9);
    }

    [Fact]
    public void A_pair_that_nobody_is_known_to_sell_is_not_called_listed()
        => Assert.False(RatioCandidates.For(Of(51 / 19.0, 0.0001), Quoted("4.10")).Ranked[0].IsListed);
}
