using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>What nobody said of the vehicle, and a finding was computed with all the same.</summary>
internal static class AssumedLoad
{
    /// <summary>A sentence to follow another; empty where all of it was told.</summary>
    public static Sentence InWords(Driveline driveline)
    {
        Sentence[] assumed =
        [
            .. Said(Spoken("a drag area of"), driveline.Load?.DragArea, Units.SquareMetre),
            .. Said(Spoken("a rolling resistance of"), driveline.Load?.RollingResistance, Units.One),
        ];
        return InWords(assumed);
    }

    /// <summary>The same of the tyres' grip.</summary>
    public static Sentence GripInWords(Driveline driveline) => InWords([.. Said(Spoken("a grip of"), driveline.Grip, Units.One)]);

    private static Sentence InWords(Sentence[] assumed) => assumed.Length switch
    {
        0 => "",
        1 => Checks.Said.As($" Assumed: {assumed[0]}."),
        _ => Checks.Said.As($" Assumed: {assumed[0]} and {assumed[1]}."),
    };

    private static IEnumerable<Sentence> Said(string what, Known? known, Unit unit)
        => known is { Source: Source.Assumed } ? [Checks.Said.As($"{what} {Checks.Said.Number(known.Value, unit)}{(known.Says.Length > 0 ? $" ({known.Says})" : "")}")] : [];
}
