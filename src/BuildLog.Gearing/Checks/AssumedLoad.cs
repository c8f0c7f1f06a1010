using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Gearing.Checks;

/// <summary>What nobody said of engine and vehicle, and a finding was computed with all the same: a sentence to follow another, empty where all of it was told.</summary>
internal static class AssumedLoad
{
    /// <summary>On the road.</summary>
    public static Sentence InWords(Driveline driveline) => Listed([.. Said(Spoken("a drag area of"), driveline.Load?.DragArea, Units.SquareMetre), .. Rolling(driveline), .. Curve(driveline)]);

    /// <summary>Pulling away: either the wheels spin first, or the engine gives up.</summary>
    public static Sentence AtStart(Driveline driveline, bool endedByGrip)
        => Listed([.. endedByGrip ? Grip(driveline) : [], .. Rolling(driveline), .. endedByGrip ? [] : Curve(driveline)]);

    /// <summary>The tyres' grip alone.</summary>
    public static Sentence GripInWords(Driveline driveline) => Listed([.. Grip(driveline)]);

    /// <summary>How a propshaft lies seen from above, where nobody measured it.</summary>
    public static Sentence PlanInWords(Propshaft shaft)
        => shaft.Line?.Any(member => member.Plan is null) == true ? Checks.Said.As($" {Spoken("Assumed: seen from above, what was not measured lies along the vehicle.")}") : "";

    /// <summary>The slip of a converter at the cruise alone.</summary>
    public static Sentence SlipInWords(Driveline driveline)
        => driveline.Transmission?.Converter is { SlipIsAssumed: true } converter ? Checks.Said.As($" Assumed: a converter slip of {Checks.Said.Number(converter.CruiseSlip, Units.PercentUnit)}.") : "";

    /// <summary>The tyres' grip, and the load that their pull moves to a rear axle where it could not be reckoned with: it makes the torque at slip more.</summary>
    public static Sentence AtSlip(Driveline driveline, Position axle, Way way)
        => axle == Position.RearAxle && LoadAtSlip.Trails(axle, way) && WeightTransfer.ToTrailing(driveline) is null
            ? Checks.Said.As($"{GripInWords(driveline)} The load that moves to the rear under pull is not in it: enter the height of the centre of gravity and the wheelbase.")
            : GripInWords(driveline);

    private static IEnumerable<Sentence> Grip(Driveline driveline) => Said(Spoken("a grip of"), driveline.Grip, Units.One);

    private static IEnumerable<Sentence> Rolling(Driveline driveline) => Said(Spoken("a rolling resistance of"), driveline.Load?.RollingResistance, Units.One);

    private static IEnumerable<Sentence> Curve(Driveline driveline)
        => driveline.Engine?.Torque is { Source: Source.Assumed } ? [Checks.Said.As($"{Spoken("the torque away from its two peaks")}")] : [];

    private static IEnumerable<Sentence> Said(string what, Known? known, Unit unit)
        => known is { Source: Source.Assumed } ? [Checks.Said.As($"{what} {Checks.Said.Number(known.Value, unit)}{(known.Says.Length > 0 ? $" ({known.Says})" : "")}")] : [];

    private static Sentence Listed(IReadOnlyList<Sentence> assumed) => assumed switch
    {
        [] => "",
        [var one] => Checks.Said.As($" Assumed: {one}."),
        [var one, var other] => Checks.Said.As($" Assumed: {one} and {other}."),
        [var one, var other, var last] => Checks.Said.As($" Assumed: {one}, {other} and {last}."),
        _ => throw new ArgumentOutOfRangeException(nameof(assumed), assumed.Count, "No more than three are assumed."),
    };
}
