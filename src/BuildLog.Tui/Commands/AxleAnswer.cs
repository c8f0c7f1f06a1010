using System.Text.Json.Nodes;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Measurements;

namespace BuildLog.Tui.Commands;

/// <summary>What <c>buildlog axle</c> found out.</summary>
internal sealed record AxleAnswer(
    Measured Ratio,
    Measured DiffRatio,
    string Method,
    IReadOnlyList<RatioCandidate> Candidates,
    double NotListed,
    QuotedRatio? Tag,
    TurnCount? Count)
{
    /// <summary>Null where the axle has one ratio, or nobody asked.</summary>
    public TwoSpeedAxle? Low { get; init; }

    public Answer Answer() => new(ToJson(), [.. ToText()]);

    private JsonObject ToJson()
    {
        var json = CountWords.ToJson(Ratio, Count, Candidates, NotListed, Tag, Tag?.Agrees(DiffRatio));
        json["diffRatio"] = DiffRatio.Value;
        if (Low is not null) json["low"] = new JsonObject { ["ratio"] = Low.Low.Value, ["interval95"] = Json.Interval95(Low.Low, Units.One), ["step"] = Low.Step.Value };
        return json;
    }

    private IEnumerable<string> ToText()
    {
        yield return Method == "teeth"
            ? Spoken($"Axle ratio {Rounded.WithInterval(Ratio, Units.One)}, from the teeth: exact.")
            : Spoken($"Axle ratio {Rounded.WithInterval(Ratio, Units.One)} (95 %), from {CountWords.Counts(Count!.Readings.Count)}.");
        if (DiffRatio.Value != Ratio.Value) yield return Spoken($"The differential's part of it: {Rounded.WithInterval(DiffRatio, Units.One)}.");
        if (Low is not null)
        {
            yield return Spoken($"In low {Rounded.WithInterval(Low.Low, Units.One)}: {Rounded.WithInterval(Low.Step, Units.One)} times high.");
            if (!TwoSpeedAxle.UsualStep.Contains(Low.Step.Value))
                yield return Spoken($"A two-speed axle's step is usually {TwoSpeedAxle.UsualStep.InWords(Units.One)} (from memory): was the same wheel held both times?");
        }

        if (Count is not null)
        {
            foreach (var line in TurnCountWords.Doubts(Count)) yield return line;
            foreach (var line in TurnCountWords.Questions(Count, DiffRatio.Value)) yield return line;
            if (Tag?.Agrees(DiffRatio) != true)
            {
                foreach (var line in TurnCountWords.HowTheWheelsTurned(Count, DiffRatio.Value)) yield return line;
            }

            foreach (var line in CountWords.Candidates(Candidates, NotListed)) yield return line;
            foreach (var line in TurnCountWords.WhyNotTheNearest(Candidates, DiffRatio)) yield return line;
        }

        if (Tag is not null)
            yield return Spoken($"The tag's {Tag.InWords} {(Tag.Agrees(DiffRatio) ? Spoken("agrees with") : Spoken("does not agree with"))} what was {(Method == "teeth" ? Spoken("counted on the gears") : Spoken("counted"))}.");
        if (Tag is not null && Count is not null && !Tag.Agrees(DiffRatio))
        {
            foreach (var question in RatioTraps.ForgottenWheel(factor => Tag.Agrees(DiffRatio * factor))) yield return question;
        }

        foreach (var line in TurnCountWords.Settling(Count, Candidates)) yield return line;
    }
}
