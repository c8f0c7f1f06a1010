using System.Text.Json.Nodes;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Tui.Commands;

/// <summary>What <c>buildlog axle</c> found out.</summary>
internal sealed record AxleAnswer(
    Measured Ratio,
    Measured DiffRatio,
    string Method,
    IReadOnlyList<RatioCandidate> Candidates,
    double NotListed,
    QuotedRatio? Tag,
    TurnCount? Count,
    Wheels? Wheels)
{
    private const int CandidatesInText = 6;

    public Answer Answer() => new(ToJson(), [.. ToText()]);

    private int? TurnsToSettle => Count is { } count && Wheels is { } wheels && Candidates is [var best, var second, ..]
        ? TurnCount.WheelTurnsToTell(best.Ratio, second.Ratio, wheels, count.How)
        : null;

    private JsonObject ToJson() => new()
    {
        ["ratio"] = Ratio.Value,
        ["standardUncertainty"] = Ratio.StandardUncertainty,
        ["degreesOfFreedom"] = Json.DegreesOfFreedom(Ratio),
        ["interval95"] = Json.Interval95(Ratio, Units.One),
        ["method"] = Method,
        ["diffRatio"] = DiffRatio.Value,
        ["candidates"] = Json.Array(Candidates, candidate => new JsonObject
        {
            ["ratio"] = candidate.Ratio,
            ["teeth"] = candidate.Teeth?.ToString(),
            ["listed"] = candidate.IsListed,
            ["probability"] = candidate.Probability,
        }),
        ["notListedProbability"] = NotListed,
        ["tag"] = Tag is null ? null : new JsonObject { ["ratio"] = Tag.Ratio, ["agrees"] = Tag.Agrees(DiffRatio) },
        ["suspectReadings"] = Json.Array(Count?.Suspects ?? [], suspect => new JsonObject { ["index"] = suspect.Index, ["says"] = suspect.Says }),
        ["needsThirdCount"] = Count?.NeedsThirdCount ?? false,
        ["turnsToSettle"] = TurnsToSettle is { } turns
            ? new JsonObject
            {
                ["between"] = new JsonArray(Candidates[0].Name, Candidates[1].Name),
                ["wheelTurns"] = turns,
                ["readTo"] = Count!.How.ReadTo,
            }
            : null,
    };

    private IEnumerable<string> ToText()
    {
        yield return Method == "teeth"
            ? $"Axle ratio {Rounded.WithInterval(Ratio, Units.One)}, from the teeth: exact."
            : $"Axle ratio {Rounded.WithInterval(Ratio, Units.One)} (95 %), from {Counts(Count!.Readings.Count)}.";
        if (DiffRatio.Value != Ratio.Value) yield return $"The differential's part of it: {Rounded.WithInterval(DiffRatio, Units.One)}.";

        foreach (var suspect in Count?.Suspects ?? [])
            yield return $"Suspect: count {suspect.Index + 1} ({Count!.Readings[suspect.Index].Text}): {suspect.Says}.";
        if (Count?.NeedsThirdCount == true) yield return "The two counts disagree: count a third time, then it shows which of them is wrong.";

        if (Method == "turns")
        {
            yield return "It may be:";
            foreach (var candidate in Candidates.Take(CandidatesInText))
                yield return $"  {candidate.Name,-8}{Rounded.Fixed(candidate.Ratio, 3),8}  {Percent(candidate.Probability)}{(candidate.IsListed ? "  listed" : "")}";
            yield return $"  {"none of these",-16}  {Percent(NotListed)}";
        }

        if (Tag is not null)
            yield return $"The tag's {Tag.Text} {(Tag.Agrees(DiffRatio) ? "agrees with" : "does not agree with")} what was {(Method == "teeth" ? "counted on the gears" : "counted")}.";
        if (TurnsToSettle is { } turns)
            yield return $"To tell {Candidates[0].Name} from {Candidates[1].Name}: {Counts(1)} over {turns} wheel turns, read to {Rounded.Exact(Count!.How.ReadTo)} turn.";
    }

    private static string Counts(int n) => n == 1 ? "one count" : FormattableString.Invariant($"{n} counts");

    private static string Percent(double probability) => FormattableString.Invariant($"{probability * 100,5:0.0} %");
}
