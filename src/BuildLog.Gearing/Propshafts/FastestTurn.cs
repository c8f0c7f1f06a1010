using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Propshafts;

/// <summary>The fastest a propshaft will turn, and where.</summary>
/// <param name="Speed">Revolutions per second.</param>
/// <param name="At">Such as <c>at the redline in 4+OD</c>.</param>
/// <remarks>
/// The lower of two: the engine at its redline in the longest gear, and the road speed that the owner wants as the highest. A long overdrive may
/// never be pulled to the redline, so the road speed keeps the first from asking too much.
/// </remarks>
public sealed record FastestTurn(Measured Speed, string At)
{
    /// <summary>Null while neither is known.</summary>
    public static FastestTurn? Of(Driveline driveline, OwnersGoals goals, FittedShaft shaft)
        => (Geared(driveline), Wanted(driveline, goals, shaft)) switch
        {
            ({ } geared, { } wanted) => wanted.Speed.Value < geared.Speed.Value ? wanted : geared,
            var (geared, wanted) => geared ?? wanted,
        };

    private static FastestTurn? Geared(Driveline driveline)
        => driveline.Engine?.Redline is { } redline && driveline.Step(null) is not null && driveline.Steps.MinBy(step => step.Ratio.Value) is { } step
            ? new(ShaftSpeed.FromEngine(redline.Value, step.Ratio), $"at the redline in {step.Name}")
            : null;

    private static FastestTurn? Wanted(Driveline driveline, OwnersGoals goals, FittedShaft shaft)
        => goals.TopSpeed is { } top && shaft.Axle?.Ratio is { } axle && driveline.Tyres?.On(shaft.AxlePosition).RollingCircumference is { } tyre
            ? new(ShaftSpeed.FromRoad(top.Speed.ToMeasured("top speed"), axle.Value, tyre.Value), $"at {top.Speed.Text}")
            : null;
}
