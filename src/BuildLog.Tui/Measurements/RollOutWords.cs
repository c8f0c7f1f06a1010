using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Measurements;

/// <summary>What a roll-out says.</summary>
public static class RollOutWords
{
    public static IReadOnlyList<string> Live(RollOut roll, UnitSystem units) => [.. Circumference(roll, units), .. Doubts(roll)];

    /// <summary>Which marks look wrong.</summary>
    internal static IEnumerable<string> Doubts(RollOut roll)
    {
        var suspects = SuspectRoll.Among(roll);
        foreach (var suspect in suspects) yield return Spoken($"Mark {suspect.Index + 1} ({roll.Readings[suspect.Index].Text}) looks wrong: {suspect.Says}.");
        if (LineThroughOrigin.IsFromTheReadingsApart(roll.Measured)) yield return Spoken("Most of the ± is how far the marks lie apart, not how finely they were read.");
        if (roll.Readings.Count == 2 && suspects.Count > 0) yield return Spoken("The two marks disagree: roll to a third, then it shows which of them is wrong.");
    }

    private static IReadOnlyList<string> Circumference(RollOut roll, UnitSystem units)
        => roll.How.Loaded
            ? [Spoken($"Rolling circumference {Rounded.WithInterval(roll.RollingCircumference, units.Length)} (95 %).")]
            :
            [
                Spoken($"Rolled {Rounded.WithInterval(roll.Measured, units.Length)} a turn; free diameter {Rounded.Value(roll.FreeDiameter!, units.Length)}."),
                Spoken($"Under the vehicle it covers less: rolling circumference {Rounded.WithInterval(roll.RollingCircumference, units.Length)} (95 %)."),
            ];
}
