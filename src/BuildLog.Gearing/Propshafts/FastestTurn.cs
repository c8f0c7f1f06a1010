using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.RoadLoad;

namespace BuildLog.Gearing.Propshafts;

/// <summary>The fastest a propshaft will turn, and where.</summary>
/// <param name="Speed">Revolutions per second.</param>
/// <param name="At">Such as <c>at the redline in 4 with overdrive</c>.</param>
/// <param name="ToKnow">What to enter where it may turn faster than this; null where it cannot.</param>
/// <remarks>
/// What the vehicle can reach on the level; where its load or torque is not known, the engine at its redline in the longest gear. A top speed that the
/// owner wants is one to reach at least: it keeps nothing from turning faster, and stands here only where nothing else is known, as the least it will be.
/// </remarks>
public sealed record FastestTurn(Measured Speed, string At, string? ToKnow = null)
{
    /// <summary>What the road takes is in it.</summary>
    public bool IsByLoad { get; private init; }

    /// <summary>Null while nothing is known.</summary>
    public static FastestTurn? Of(Driveline driveline, OwnersGoals goals, FittedShaft shaft)
        => Reached(driveline, shaft) ?? Geared(driveline) ?? Wanted(driveline, goals, shaft);

    private static FastestTurn? Reached(Driveline driveline, FittedShaft shaft)
    {
        if (Pull.Of(driveline) is not { } pull || TopSpeed.Of(pull) is not { } top || FromRoad(driveline, shaft, top.Likely) is not { } turns) return null;

        var turn = top switch
        {
            { Limit: not TopSpeedLimit.Unknown } => new(turns, Spoken($"at its top speed in {top.Step.InWords}")),
            { Most: not null } => new(turns, Spoken("at its top speed, as far as the torque curve tells")),
            { Untold: { } untold } => new FastestTurn(turns, Spoken($"at the speed that it reaches at least in {top.Step.InWords}"), untold.Cure),
            _ => new FastestTurn(turns, Spoken($"where the torque curve ends in {top.Step.InWords}"), TopSpeed.TorqueBeyond),
        };
        return turn with { IsByLoad = true };
    }

    private static FastestTurn? Geared(Driveline driveline)
        => driveline.Engine?.Redline is { } redline && driveline.Step(null) is not null && driveline.Steps.MinBy(step => step.Ratio.Value) is { } step
            ? new(ShaftSpeed.FromEngine(redline.Value, step.Ratio), Spoken($"at the redline in {step.InWords}"))
            : null;

    private static FastestTurn? Wanted(Driveline driveline, OwnersGoals goals, FittedShaft shaft)
        => goals.TopSpeed is { } top && FromRoad(driveline, shaft, top.Speed.ToMeasured(Spoken("top speed"))) is { } turns
            ? new(turns, Spoken($"at the {top.Speed.InWords} wanted"), Spoken("enter the engine's redline"))
            : null;

    private static Measured? FromRoad(Driveline driveline, FittedShaft shaft, Measured speed)
        => shaft.Axle?.Ratio is { } axle && driveline.Tyres?.On(shaft.AxlePosition).RollingCircumference is { } tyre
            ? ShaftSpeed.FromRoad(speed, axle.Value, tyre.Value)
            : null;
}
