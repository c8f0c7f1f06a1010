using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Ratios;

/// <summary>One ratio that a count may mean.</summary>
/// <param name="Ratio">Its value: exact where the teeth are known.</param>
/// <param name="Teeth">The tooth pair, or null for a listed ratio that no pair makes.</param>
/// <param name="IsListed">It is sold under a name, or stands in the owner's list for the donor.</param>
/// <param name="Probability">Its share of belief after the count.</param>
public sealed record RatioCandidate(double Ratio, Teeth? Teeth, bool IsListed, double Probability)
{
    /// <summary><c>43/9</c> or <c>4.77</c>.</summary>
    public string Name => Teeth is { } teeth ? teeth.ToString() : Quantities.Rounded.Exact(Ratio);
}

/// <summary>What a measured ratio may be: listed ratios and tooth pairs with their probabilities, and "none of these".</summary>
/// <remarks>
/// <code>P(k | x) ∝ P(k) · f(x; iₖ, u, ν)</code>
/// <para>x measured ratio; iₖ candidate; f normal density, Student's where ν is finite; u, ν those of x.</para>
/// <para>
/// Prior: 0.70 shared alike by the listed ratios, 0.20 by the other <see cref="ToothPairs"/> in proportion to how likely such teeth are, 0.10 for
/// "not listed", spread evenly in ln i over 2–9. A listed ratio is a pair that rounds to it as it was quoted: the nearest that is known to be sold, else
/// the likeliest. Where none rounds to it, one that reads so with the digits behind cut off: 43/9 = 4.777… is sold as 4.77.
/// </para>
/// <para>
/// A gear of a gearbox has no tooth pairs of its own: there 0.90 is shared alike by the list, 0.10 kept for "not listed", spread evenly in ln i over
/// what gears can be.
/// </para>
/// <para>Source: Bayes' theorem; the prior is our own judgement of what is sold.</para>
/// </remarks>
public sealed class RatioCandidates
{
    private const double ListedShare = 0.70;
    private const double PairsShare = 0.20;
    private const double NotListedShare = 0.10;
    private const double Rounding = 1e-9;
    private const double LeastShown = 0.001;

    private RatioCandidates(IReadOnlyList<RatioCandidate> ranked, double notListed) => (Ranked, NotListedProbability) = (ranked, notListed);

    /// <summary>Those above one in a thousand, the most probable first.</summary>
    public IReadOnlyList<RatioCandidate> Ranked { get; }

    /// <summary>Posterior probability that it is none of the tooth pairs and none of the ratios listed, 0 to 1.</summary>
    public double NotListedProbability { get; }

    /// <param name="measured">The differential's ratio, without a hub reduction.</param>
    /// <param name="listed">The ratios known for that donor, as they were quoted; null or none for the common ones.</param>
    public static RatioCandidates For(Measured measured, IReadOnlyList<QuotedRatio>? listed = null) => Weigh(measured, Prior(listed), ToothPairs.Lowest, ToothPairs.Highest);

    /// <summary>A gear's ratio among those of a list; nothing but the list is a candidate.</summary>
    /// <param name="measured">Input turns per output turn.</param>
    /// <param name="listed">The ratios known for that gearbox; none leaves all to "not listed".</param>
    public static RatioCandidates ForGear(Measured measured, IReadOnlyList<double> listed)
    {
        var ratios = listed.Distinct().ToList();
        return ratios.Count == 0
            ? new([], 1)
            : Weigh(measured, ratios.ConvertAll(ratio => new Entry(ratio, null, true, (1 - NotListedShare) / ratios.Count)), RatioRange.Gear.Low, RatioRange.Gear.High);
    }

    private static RatioCandidates Weigh(Measured measured, List<Entry> prior, double lowest, double highest)
    {
        var u = measured.StandardUncertainty;
        var notListed = Math.Log(NotListedShare) - Math.Log(measured.Value * Math.Log(highest / lowest));
        if (u == 0) return Exactly(measured.Value, prior);

        var freedom = measured.DegreesOfFreedom;
        var logs = prior.ConvertAll(entry => Math.Log(entry.Prior) + StudentT.LogDensity(measured.Value, entry.Ratio, u, freedom));
        var largest = Math.Max(notListed, logs.Max());
        var total = Math.Exp(notListed - largest) + logs.Sum(log => Math.Exp(log - largest));

        return new(
            [
                .. prior
                    .Select((entry, k) => new RatioCandidate(entry.Ratio, entry.Teeth, entry.IsListed, Math.Exp(logs[k] - largest) / total))
                    .Where(candidate => candidate.Probability > LeastShown)
                    .OrderByDescending(candidate => candidate.Probability),
            ],
            Math.Exp(notListed - largest) / total);
    }

    /// <summary>Every candidate's prior and the share kept for "not listed"; they sum to one.</summary>
    internal static double PriorTotal(IReadOnlyList<QuotedRatio>? listed) => Prior(listed).Sum(entry => entry.Prior) + NotListedShare;

    private sealed record Entry(double Ratio, Teeth? Teeth, bool IsListed, double Prior);

    private static RatioCandidates Exactly(double ratio, List<Entry> prior)
    {
        var same = prior.Find(entry => Math.Abs(entry.Ratio - ratio) < 1e-9);
        return same is null ? new([], 1) : new([new(same.Ratio, same.Teeth, same.IsListed, 1)], 0);
    }

    private static List<Entry> Prior(IReadOnlyList<QuotedRatio>? listed)
    {
        var named = listed is null or []
            ? [.. ListedRatios.Common.Select(teeth => (teeth.Ratio, Teeth: (Teeth?)teeth))]
            : listed.Select(quoted => Sold(quoted) is { } teeth ? (teeth.Ratio, teeth) : (quoted.Ratio, Teeth: (Teeth?)null)).Distinct().ToList();

        var entries = named.ConvertAll(entry => new Entry(entry.Ratio, entry.Teeth, true, ListedShare / named.Count));
        var taken = entries.Select(entry => entry.Ratio).ToHashSet();
        var others = ToothPairs.All.Where(pair => !taken.Contains(pair.Ratio)).ToList();
        var share = PairsShare / others.Sum(ToothPairs.Weight);
        entries.AddRange(others.Select(pair => new Entry(pair.Ratio, pair, false, share * ToothPairs.Weight(pair))));
        return entries;
    }

    // The pair a listed ratio is sold as: one that is known to be sold before one that is only near, 37/11 rather than 47/14 for 3.36.
    private static Teeth? Sold(QuotedRatio quoted)
        => Within(quoted, quoted.Ratio - quoted.HalfLastDigit, quoted.Ratio + quoted.HalfLastDigit)
            ?? Within(quoted, quoted.Ratio, quoted.Ratio + (2 * quoted.HalfLastDigit));

    private static Teeth? Within(QuotedRatio quoted, double low, double high)
    {
        IEnumerable<Teeth> Near(IEnumerable<Teeth> pairs)
            => pairs.Where(pair => pair.Ratio >= low - Rounding && pair.Ratio <= high + Rounding).OrderBy(pair => Math.Abs(pair.Ratio - quoted.Ratio));

        return Near(ListedRatios.Common).Concat(Near(ToothPairs.All).OrderByDescending(ToothPairs.Weight)).Select(pair => (Teeth?)pair).FirstOrDefault();
    }
}
