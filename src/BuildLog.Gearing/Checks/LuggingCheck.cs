using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;

namespace BuildLog.Gearing.Checks;

/// <summary>At the cruise the engine is not made to lug.</summary>
/// <remarks>
/// <code>n ≥ lowest clean pull;   where nobody knows that: n ≥ 0.5 n_T while the level road takes 70 % or more of the torque there</code>
/// <para>n engine speed at the cruise, converter slip included; n_T engine speed of peak torque.</para>
/// <para>
/// Limit: the engine's own lowest clean pull, as somebody felt it; else common practice, which warns and never clashes. Says nothing without a cruise goal,
/// or where neither the lowest pull nor torque and load are known.
/// </para>
/// </remarks>
internal sealed class LuggingCheck : ICheck, ILookedAt
{
    internal const double ShareOfTorquePeak = 0.5;
    internal const double HighLoad = 0.7;

    public string Id => "lugging";

    public string Title => Spoken("Lugging at the cruise");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        var rpm = Units.RevolutionPerMinute;
        foreach (var goal in goals.Cruise)
        {
            if (CruiseCheck.EngineSpeed(driveline, goal) is not { } n || Limit(driveline, goal, n) is not { } limit) continue;

            var wanted = Window.AtLeast(limit.EngineSpeed);
            yield return this.Judged(new(
                [Position.Engine, driveline.DrivingPosition, Position.Tyres], n, rpm, wanted,
                $"At {goal.Speed.InWords} in {CruiseCheck.GearName(driveline, goal)} the engine turns {Said.Number(n, rpm)}; {limit.Reason} from {wanted.InWords(rpm)}.{(limit.ByLoad ? AssumedLoad.InWords(driveline) : "")}",
                limit.Source)
            {
                LimitIsVerified = limit.IsVerified,
                Windows = CruiseCheck.Windows(driveline, goal with { Wanted = wanted }),
            });
        }
    }

    IEnumerable<Unlooked> ILookedAt.NotLookedAt(Driveline driveline)
        => driveline is { Engine.LowestPull: null, Transmission: not null }
            ? [new(Position.Engine, Spoken("lowest clean pull"), Spoken("drive in top gear and note the engine speed below which it judders"))]
            : [];

    private static PullLimit? Limit(Driveline driveline, CruiseGoal goal, Measured n)
    {
        if (driveline.Engine?.LowestPull is { } lowest)
            return new(lowest.Value.Value, Spoken("it pulls cleanly"), Spoken($"lowest clean pull, {lowest.Source.InWords()}"), lowest.Source != Source.Assumed);
        if (Pull.Of(driveline) is not { } pull || driveline.Step(goal.Gear) is not { } step || pull.Force(step, goal.Speed.Value) is not { } most) return null;

        var load = pull.Resistance.At(goal.Speed.Value).Value / most.Value;
        var limit = ShareOfTorquePeak * pull.Torque.StrongestPoint.EngineSpeed;
        return load < HighLoad && n.Value < limit
            ? null
            : new(limit, Spoken($"the level road takes {load * 100:0} % of its torque there, and it pulls well"), Spoken("common practice: half the torque peak's engine speed"), false) { ByLoad = true };
    }

    private sealed record PullLimit(double EngineSpeed, string Reason, string Source, bool IsVerified)
    {
        /// <summary>What the road takes is in it.</summary>
        public bool ByLoad { get; init; }
    }
}
