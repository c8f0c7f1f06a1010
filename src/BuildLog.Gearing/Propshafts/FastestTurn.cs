using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.RoadLoad;

namespace BuildLog.Gearing.Propshafts;

/// <summary>The fastest a propshaft will turn, and where.</summary>
/// <param name="Speed">Revolutions per second.</param>
/// <param name="At">Such as <c>at the redline in 4 with overdrive</c>.</param>
/// <remarks>
/// The lowest of what is known: the engine at its redline in the longest gear, the top speed on the level, and the top speed that the owner wants.
/// A long overdrive may never be pulled to the redline, so the other two keep the first from asking too much.
/// </remarks>
public sealed record FastestTurn(Measured Speed, string At)
{
    /// <summary>Null while neither is known.</summary>
    public static FastestTurn? Of(Driveline driveline, OwnersGoals goals, FittedShaft shaft)
        => new[] { Wanted(driveline, goals, shaft), Geared(driveline), Reached(driveline, goals, shaft) }.OfType<FastestTurn>().MinBy(turn => turn.Speed.Value);

    private static FastestTurn? Geared(Driveline driveline)
        => driveline.Engine?.Redline is { } redline && driveline.Step(null) is not null && driveline.Steps.MinBy(step => step.Ratio.Value) is { } step
            ? new(ShaftSpeed.FromEngine(redline.Value, step.Ratio), Spoken($"at the redline in {step.InWords}"))
            : null;

    private static FastestTurn? Wanted(Driveline driveline, OwnersGoals goals, FittedShaft shaft)
        => goals.TopSpeed is { } top && FromRoad(driveline, shaft, top.Speed.ToMeasured(Spoken("top speed"))) is { } turns ? new(turns, Spoken($"at {top.Speed.Text}")) : null;

    // Where the owner says how fast it will be driven, there is nothing to work out.
    private static FastestTurn? Reached(Driveline driveline, OwnersGoals goals, FittedShaft shaft)
        => goals.TopSpeed is null && Pull.Of(driveline) is { } pull && TopSpeed.Of(pull) is { } top && FromRoad(driveline, shaft, top.Speed) is { } turns
            ? new(turns, Spoken($"at its top speed in {top.Step.InWords}"))
            : null;

    private static Measured? FromRoad(Driveline driveline, FittedShaft shaft, Measured speed)
        => shaft.Axle?.Ratio is { } axle && driveline.Tyres?.On(shaft.AxlePosition).RollingCircumference is { } tyre
            ? ShaftSpeed.FromRoad(speed, axle.Value, tyre.Value)
            : null;
}
