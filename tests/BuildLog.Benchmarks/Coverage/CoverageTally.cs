using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Benchmarks.Coverage;

/// <summary>How often what the program says of a shop was true.</summary>
internal sealed class CoverageTally
{
    /// <summary>From this share of the variance on, one rectangular error shapes the interval, and 95 % of it is wider than what it can hold.</summary>
    public const double Dominates = 0.5;

    private const int Bins = 10;

    private readonly Dictionary<string, (int Held, int All)> intervals = [];

    /// <summary>By tenths of the probability that was said: how many candidates, the sum of what was said, how many were true.</summary>
    private readonly (int All, double Said, int True)[] candidates = new (int, double, int)[Bins];

    private (int All, double Said, int True) notListed;
    private (int All, double Said, int True) best;

    public IReadOnlyDictionary<string, (int Held, int All)> Intervals => intervals;

    public IReadOnlyList<(int All, double Said, int True)> Candidates => candidates;

    public (int All, double Said, int True) NotListed => notListed;

    /// <summary>The first named of each shop.</summary>
    public (int All, double Said, int True) Best => best;

    /// <summary>Shops by verdict, and whether the truth lay in the wanted window.</summary>
    public Dictionary<(Verdict Verdict, bool IsInside), int> Verdicts { get; } = [];

    public static CoverageTally Of(int shops, int seed)
    {
        var (tally, random) = (new CoverageTally(), new Random(seed));
        for (var k = 0; k < shops; k++) tally.Add(new ShopAtRandom(random));
        return tally;
    }

    private void Add(ShopAtRandom shop)
    {
        var (counts, rolls) = (shop.Count.Readings.Count, shop.Roll.Readings.Count);
        Hold("ratio", shop.Count.Ratio, shop.TrueRatio, counts > 1);
        Hold("circumference", shop.Roll.RollingCircumference, shop.TrueCircumference, rolls > 1);
        Hold("cruise engine speed", shop.Cruise, shop.TrueCruise, counts > 1 || rolls > 1);
        Hold("road speed", shop.Speed, shop.RoadSpeed, counts > 1 || rolls > 1);
        Weigh(shop);
        var said = (Gearing.Checks.Verdicts.Judge(shop.Cruise, shop.Wanted).Verdict, shop.Wanted.Contains(shop.TrueCruise));
        Verdicts[said] = Verdicts.GetValueOrDefault(said) + 1;
    }

    private void Hold(string what, Measured measured, double truth, bool isRepeated)
    {
        var largest = measured.Budget().MaxBy(line => line.Share)!;
        var isRectangular = largest.Share >= Dominates && largest.Input.Spread == Spread.Rectangular;
        foreach (var group in (string[])[$"{what}, all", $"{what}, {(isRectangular ? "one rectangular error dominates" : "no rectangular error dominates")}, {(isRepeated ? "repeated" : "measured once")}"])
        {
            var (held, all) = intervals.GetValueOrDefault(group);
            intervals[group] = (held + (measured.Interval95.Contains(truth) ? 1 : 0), all + 1);
        }
    }

    private void Weigh(ShopAtRandom shop)
    {
        var found = RatioCandidates.For(shop.Count.Ratio);
        foreach (var candidate in found.Ranked)
        {
            ref var bin = ref candidates[Math.Min(Bins - 1, (int)(candidate.Probability * Bins))];
            bin = Added(bin, candidate.Probability, shop.IsListed && candidate.Ratio == shop.TrueRatio);
        }

        notListed = Added(notListed, found.NotListedProbability, !shop.IsListed);
        if (found.Ranked is [var first, ..]) best = Added(best, first.Probability, shop.IsListed && first.Ratio == shop.TrueRatio);
    }

    private static (int All, double Said, int True) Added((int All, double Said, int True) bin, double said, bool isTrue)
        => (bin.All + 1, bin.Said + said, bin.True + (isTrue ? 1 : 0));
}
