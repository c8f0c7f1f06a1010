using System.Text.Json.Nodes;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Tui.Commands;

/// <summary>What the answers on counted turns share, an axle's and a gear's: suspects, candidates, turns to settle.</summary>
internal static class CountWords
{
    private const int CandidatesInText = 6;

    /// <summary>The fields of an axle's answer and of a gear's, which are the same; null where they do not apply.</summary>
    /// <param name="ratio">What was found.</param>
    /// <param name="count">The count; null where teeth were counted.</param>
    /// <param name="candidates">What the ratio may be, the likeliest first.</param>
    /// <param name="notListed">The share of none of these.</param>
    /// <param name="tag">The ratio quoted; null for none.</param>
    /// <param name="agrees">Whether that is what was found.</param>
    public static JsonObject ToJson(Measured ratio, TurnCount? count, IReadOnlyList<RatioCandidate> candidates, double notListed, QuotedRatio? tag, bool? agrees) => new()
    {
        ["ratio"] = ratio.Value,
        ["standardUncertainty"] = ratio.StandardUncertainty,
        ["degreesOfFreedom"] = Json.DegreesOfFreedom(ratio),
        ["interval95"] = Json.Interval95(ratio, Units.One),
        ["method"] = count is null ? "teeth" : "turns",
        ["diffRatio"] = null,
        ["candidates"] = CandidatesJson(candidates),
        ["notListedProbability"] = notListed,
        ["tag"] = tag is null ? null : new JsonObject { ["ratio"] = tag.Ratio, ["agrees"] = agrees },
        ["suspectReadings"] = SuspectsJson(count),
        ["needsThirdCount"] = count?.NeedsThirdCount ?? false,
        ["turnsToSettle"] = TurnsToSettleJson(count, candidates),
        ["low"] = null,
    };

    private static JsonArray CandidatesJson(IReadOnlyList<RatioCandidate> candidates) => Json.Array(candidates, candidate => new JsonObject
    {
        ["ratio"] = candidate.Ratio,
        ["teeth"] = candidate.Teeth?.ToString(),
        ["listed"] = candidate.IsListed,
        ["probability"] = candidate.Probability,
    });

    private static JsonArray SuspectsJson(TurnCount? count)
        => Json.Array(count?.Suspects ?? [], suspect => new JsonObject { ["index"] = suspect.Index, ["says"] = suspect.Says });

    /// <summary>Null where nothing is left to tell apart. <c>wheelTurns</c> are output turns where a gear was counted.</summary>
    private static JsonObject? TurnsToSettleJson(TurnCount? count, IReadOnlyList<RatioCandidate> candidates)
        => count?.TurnsToSettle(candidates) is { } turns
            ? new JsonObject { ["between"] = new JsonArray(candidates[0].Name, candidates[1].Name), ["wheelTurns"] = turns, ["readTo"] = count!.How.ReadTo }
            : null;

    public static IEnumerable<string> Candidates(IReadOnlyList<RatioCandidate> candidates, double notListed)
    {
        yield return Spoken("It may be:");
        foreach (var candidate in candidates.Take(CandidatesInText))
            yield return $"  {candidate.Name,-8}{Rounded.Fixed(candidate.Ratio, 3),8}  {Percent(candidate.Probability)}{(candidate.IsListed ? Spoken("  listed") : "")}";
        yield return $"  {Spoken("none of these"),-16}  {Percent(notListed)}";
    }

    public static string Counts(int n) => n == 1 ? Spoken("one count") : Spoken($"{n} counts");

    private static string Percent(double probability) => string.Create(Language.Spoken.Culture, $"{probability * 100,5:0.0} %");
}
