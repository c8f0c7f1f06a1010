using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Data.Drivelines;

/// <summary>What a change of parts moves beside the cruise; null where it moves nothing or a number is missing.</summary>
public sealed record SwapMoves
{
    /// <summary>The true speed that the speedometer is told at, m/s.</summary>
    public static readonly double TrueSpeed = Units.KilometrePerHour.ToBase(100);

    private const double Nothing = 1e-9;

    /// <summary>What the speedometer showed at <see cref="TrueSpeed"/>, m/s; null too where it was not known.</summary>
    public Measured? ShownBefore { get; private init; }

    /// <summary>What it then shows, m/s.</summary>
    public Measured? ShownAfter { get; private init; }

    /// <summary>Of the driving axle, metres, positive where it grows wider.</summary>
    public Measured? Track { get; private init; }

    /// <summary>By how much each outer side wall of the driving axle moves out, metres.</summary>
    public Measured? OuterEdge { get; private init; }

    /// <summary>By how much each inner side wall moves in, towards the springs, metres.</summary>
    public Measured? InnerEdge { get; private init; }

    /// <summary>Where the converter stalls behind the other engine, if what is noted is of the one before, rev/s.</summary>
    public Measured? Stall { get; private init; }

    internal static SwapMoves Between(Driveline before, Driveline after)
    {
        var (shownBefore, shownAfter) = (Shown(before), Shown(after));
        var shows = shownAfter is not null && Moves(shownBefore, shownAfter);
        var faces = FacesMove(before, after);
        var offset = Change(before, after, line => line.DrivingTyres?.Wheel?.Offset?.Value);
        var width = Change(before, after, line => line.DrivingTyres?.Size?.SectionWidth);
        return new()
        {
            ShownBefore = shows ? shownBefore : null,
            ShownAfter = shows ? shownAfter : null,
            Track = offset is null || faces is null ? null : Any(WheelPlace.TrackChange(0, offset, 0, faces)),
            OuterEdge = offset is null || width is null || faces is null ? null : Any(WheelPlace.OuterEdgeMoves(width, offset) + (faces * 0.5)),
            InnerEdge = offset is null || width is null || faces is null ? null : Any(WheelPlace.InnerEdgeMoves(width, offset) - (faces * 0.5)),
            Stall = StallBehind(before, after),
        };
    }

    private static Measured? Shown(Driveline driveline) => SpeedometerCheck.Computed(driveline)?.Shown(TrueSpeed);

    // An axle that stays has the hub faces it had, measured or not.
    private static Measured? FacesMove(Driveline before, Driveline after)
        => Change(before, after, line => line.DrivingAxle?.HubFaces?.Value) ?? (before.DrivingAxle is not null && before.DrivingAxle == after.DrivingAxle ? 0 : null);

    private static Measured? StallBehind(Driveline before, Driveline after)
        => after.Transmission?.Converter?.StallSpeed is { } stall && before.Transmission?.Converter?.StallSpeed == stall
            && before.Engine?.Torque?.At(stall.Value) is { } then && after.Engine?.Torque?.At(stall.Value) is { } now && Moves(then, now)
                ? Converter.StallBehind(stall.Value, then, now)
                : null;

    private static Measured? Change(Driveline before, Driveline after, Func<Driveline, Measured?> number)
        => number(before) is { } then && number(after) is { } now ? now - then : null;

    private static Measured? Any(Measured change) => Moves(0, change) ? change : null;

    private static bool Moves(Measured? then, Measured now) => then is null || Math.Abs(now.Value - then.Value) > Nothing;
}
