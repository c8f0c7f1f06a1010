using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>At the cruise the engine turns as it can turn at all: not slower than its idle, not faster than its redline.</summary>
/// <remarks>
/// <code>idle ≤ n ≤ redline</code>
/// <para>n engine speed at the cruise, converter slip included. Limit: the engine's own, whatever the goal allows: physics, so it clashes. Says nothing where it is kept, or where neither is known.</para>
/// </remarks>
internal sealed class EngineRangeCheck : ICheck, ILookedAt
{
    public string Id => "engine-range";

    public string Title => Spoken("Cruise between idle and redline");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        var (idle, redline) = (driveline.Engine?.Idle, driveline.Engine?.Redline);
        var range = new Window(idle?.Value.Value ?? double.NegativeInfinity, redline?.Value.Value ?? double.PositiveInfinity);
        if (range.IsEmpty) yield break; // what contradicts itself is asked about elsewhere

        var rpm = Units.RevolutionPerMinute;
        foreach (var goal in goals.Cruise)
        {
            if (CruiseCheck.EngineSpeed(driveline, goal) is not { } n || range.Contains(n.Interval95)) continue;

            var (what, limit) = n.Interval95.High > range.High ? (Spoken("redline"), redline!) : (Spoken("idle"), idle!);
            yield return this.Judged(new(
                [Position.Engine, driveline.DrivingPosition, Position.Tyres], n, rpm, range,
                $"At {goal.Speed.InWords} in {CruiseCheck.GearName(driveline, goal)} the engine would turn {Said.Number(n, rpm)}; its {what} is {Rounded.Value(limit.Value, rpm)}.",
                Spoken($"{what}, {limit.Source.InWords()}"))
            {
                LimitIsVerified = limit.Source != Source.Assumed,
                Windows = CruiseCheck.Windows(driveline, goal with { Wanted = range }),
            });
        }
    }

    IEnumerable<Unlooked> ILookedAt.NotLookedAt(Driveline driveline)
        => driveline.Engine is { Redline: null } ? [new(Position.Engine, Spoken("redline"), Spoken("from a data sheet, or the red mark on its rev counter"))] : [];
}
