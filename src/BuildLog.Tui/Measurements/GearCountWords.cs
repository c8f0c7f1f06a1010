using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Tui.Measurements;

/// <summary>What the count of a gear says: the ratio and which count looks wrong. Unlike an axle's, it is not guessed from the ratios that are sold.</summary>
public static class GearCountWords
{
    public static IReadOnlyList<string> Live(TurnCount count)
        => [Spoken($"Input turns per output turn {Rounded.WithInterval(count.Ratio, Units.One)} (95 %)."), .. TurnCountWords.Doubts(count), .. Questions(count, [])];

    /// <summary>The slip that would make an unusual gear a usual one.</summary>
    internal static IEnumerable<string> Questions(TurnCount count, IReadOnlyList<double> known)
        => RatioTraps.OfGear(count.Ratio.Value, known) is { } question ? [question.InWords()] : [];
}
