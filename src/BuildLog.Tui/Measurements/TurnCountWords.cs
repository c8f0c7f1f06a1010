using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Tui.Measurements;

/// <summary>What a turn count says: the ratio, which axle that may be, which count looks wrong, and what would settle it.</summary>
public static class TurnCountWords
{
    /// <summary>A few lines while the counts are being typed.</summary>
    public static IReadOnlyList<string> Live(TurnCount count)
    {
        var candidates = RatioCandidates.For(count.Ratio);
        return
        [
            Spoken($"Ratio {Rounded.WithInterval(count.Ratio, Units.One)} (95 %). {MayBe(candidates)}"),
            .. Doubts(count),
            .. Questions(count, count.Ratio.Value),
            .. Settling(count, candidates.Ranked),
        ];
    }

    /// <summary>What a session says beyond its result.</summary>
    public static IReadOnlyList<string> Full(TurnCount count, Measured diffRatio)
    {
        var candidates = RatioCandidates.For(diffRatio);
        return
        [
            .. candidates.Ranked.Take(4).Select(candidate => Spoken($"May be {InWords(candidate)}{(candidate.IsListed ? Spoken(", a ratio that is sold") : "")}.")),
            Spoken($"None of these: {Percent(candidates.NotListedProbability)}."),
            .. WhyNotTheNearest(candidates.Ranked, diffRatio),
            .. Doubts(count),
            .. HowTheWheelsTurned(count, diffRatio.Value),
            .. Settling(count, candidates.Ranked),
        ];
    }

    /// <summary>The slip that no number betrays.</summary>
    internal static IEnumerable<string> HowTheWheelsTurned(TurnCount count, double diffRatio)
        => RatioTraps.OfWheels(diffRatio, count.Readings[0].Turned == Wheels.OneHeld) is { } question ? [question.InWords()] : [];

    internal static IEnumerable<string> Doubts(TurnCount count)
    {
        foreach (var suspect in count.Suspects)
            yield return Spoken($"Count {suspect.Index + 1} ({count.Readings[suspect.Index].Text}) looks wrong: {suspect.Says}.");
        if (LineThroughOrigin.IsFromTheReadingsApart(count.Ratio)) yield return Spoken("Most of the ± is how far the counts lie apart, not how finely they were read.");
        if (count.NeedsThirdCount) yield return Spoken("The two counts disagree: count a third time, then it shows which of them is wrong.");
    }

    /// <summary>The slips that would make an unusual axle a usual one.</summary>
    /// <param name="count">How the wheels turned.</param>
    /// <param name="diffRatio">Without a hub reduction.</param>
    internal static IEnumerable<string> Questions(TurnCount count, double diffRatio)
        => RatioTraps.OfAxle(diffRatio, oneHeld: count.Readings[0].Turned == Wheels.OneHeld).Select(question => question.InWords());

    /// <summary>Nothing where a third count is what settles it, or no two ratios are left to tell.</summary>
    internal static IEnumerable<string> Settling(TurnCount? count, IReadOnlyList<RatioCandidate> candidates)
    {
        if (count is null or { NeedsThirdCount: true } || count.TurnsToSettle(candidates) is not { } turns) yield break;

        var pair = Spoken($"{candidates[0].Name} from {candidates[1].Name}");
        var counted = count.Readings.Max(reading => reading.WheelSum) / (count.Readings[0].Turned == Wheels.OneHeld ? 1 : 2);
        yield return turns > counted
            ? Spoken($"To tell {pair}: one count over {turns} {count.Ends.Driven} turns, read to {Rounded.Exact(count.How.ReadTo)} turn.")
            : Spoken($"{Rounded.Exact(counted)} {count.Ends.Driven} turns are enough to tell {pair}{(count.Readings.Count == 1 ? Spoken(", but this count lies between the two") : Spoken("; what disagrees is the counts"))}. Count once more.");
    }

    /// <summary>That a pair fits the count better than the likeliest, which is believed more because it is sold.</summary>
    internal static IEnumerable<string> WhyNotTheNearest(IReadOnlyList<RatioCandidate> candidates, Measured diffRatio)
    {
        if (candidates is not [{ IsListed: true, Probability: >= 0.5 } likeliest, ..]) yield break;
        var nearest = candidates.MinBy(candidate => Math.Abs(candidate.Ratio - diffRatio.Value))!;
        if (nearest.IsListed) yield break;
        yield return Spoken($"{nearest.Name} lies nearer the count, but {likeliest.Name} is sold: seven axles in ten are taken to have a ratio that is sold.");
    }

    private static string MayBe(RatioCandidates candidates) => candidates.Ranked.Count == 0
        ? Spoken("No ratio that is sold and no usual pair of teeth lies near it: look at the readings and at which wheels turned.")
        : Spoken($"May be {string.Join(", ", candidates.Ranked.Take(3).Select(InWords))}; none of these {Percent(candidates.NotListedProbability)}.");

    private static string InWords(RatioCandidate candidate) => $"{candidate.Name} = {Rounded.Fixed(candidate.Ratio, 3)} ({Percent(candidate.Probability)})";

    private static string Percent(double probability) => FormattableString.Invariant($"{probability * 100:0} %");
}
