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
            $"Ratio {Rounded.WithInterval(count.Ratio, Units.One)} (95 %). {MayBe(candidates)}",
            .. Doubts(count),
            .. Settling(count, candidates).Take(1),
        ];
    }

    /// <summary>What a session says beyond its result.</summary>
    public static IReadOnlyList<string> Full(TurnCount count, Measured diffRatio)
    {
        var candidates = RatioCandidates.For(diffRatio);
        return
        [
            .. candidates.Ranked.Take(4).Select(candidate => $"May be {InWords(candidate)}{(candidate.IsListed ? ", a ratio that is sold" : "")}."),
            $"None of these: {Percent(candidates.NotListedProbability)}.",
            .. Doubts(count),
            .. Settling(count, candidates),
        ];
    }

    internal static IEnumerable<string> Doubts(TurnCount count)
    {
        foreach (var suspect in count.Suspects)
            yield return $"Count {suspect.Index + 1} ({count.Readings[suspect.Index].Text}) looks wrong: {suspect.Says}.";
        if (count.NeedsThirdCount) yield return "The two counts disagree: count a third time, then it shows which of them is wrong.";
    }

    private static IEnumerable<string> Settling(TurnCount count, RatioCandidates candidates)
    {
        if (count.TurnsToSettle(candidates.Ranked) is not { } turns) yield break;

        var pair = $"{candidates.Ranked[0].Name} from {candidates.Ranked[1].Name}";
        var counted = count.Readings.Max(reading => reading.WheelSum) / (count.Readings[0].Turned == Wheels.OneHeld ? 1 : 2);
        yield return turns > counted
            ? FormattableString.Invariant($"To tell {pair}: one count over {turns} wheel turns.")
            : FormattableString.Invariant($"{Rounded.Exact(counted)} wheel turns are enough to tell {pair}; what disagrees is the counts. Count once more.");
    }

    private static string MayBe(RatioCandidates candidates) => candidates.Ranked.Count == 0
        ? "No ratio that is sold and no usual pair of teeth lies near it: look at the readings and at which wheels turned."
        : $"May be {string.Join(", ", candidates.Ranked.Take(3).Select(InWords))}; none of these {Percent(candidates.NotListedProbability)}.";

    private static string InWords(RatioCandidate candidate) => $"{candidate.Name} = {Rounded.Fixed(candidate.Ratio, 3)} ({Percent(candidate.Probability)})";

    private static string Percent(double probability) => FormattableString.Invariant($"{probability * 100:0} %");
}
