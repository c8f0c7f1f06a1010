using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;

namespace BuildLog.Gearing.Checks;

/// <summary>It reaches the owner's top speed on the level, and the speed of every cruise.</summary>
/// <remarks>
/// Limit: the owner's goal. Formula: <see cref="TopSpeed"/>. Of a cruise it speaks only where that is not reached in any gear: no practice, but physics, so it
/// clashes; what of the load is assumed is said, and its spread is in the interval. Where the torque curve ends before the engine has to, the speed there is
/// judged where it is enough, what redline and power leave where that is not, and nothing in between.
/// </remarks>
internal sealed class TopSpeedCheck : ICheck
{
    public string Id => "top-speed";

    public string Title => Spoken("Top speed");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        var pull = Pull.Of(driveline);
        var top = pull is null ? null : TopSpeed.Of(pull);
        if (goals.TopSpeed is { } goal)
        {
            yield return pull is null ? Open(driveline, goal, Missing.ForPull(driveline))
                : top is null ? NeverMet(driveline, goal)
                : Judge(pull, top, goal);
        }
        else if (pull is not null && top is null && goals.Cruise is [var first, ..])
        {
            yield return NeverMet(driveline, new(first.Speed));
        }

        foreach (var cruise in goals.Cruise.DistinctBy(cruise => cruise.Speed.Value).Where(cruise => cruise.Speed.Value != goals.TopSpeed?.Speed.Value))
        {
            if (pull is not null && top?.Most?.Value < cruise.Speed.Value) yield return Judge(pull, top, new(cruise.Speed), Spoken(", to cruise"));
        }
    }

    private Finding Judge(Pull pull, TopSpeed top, TopSpeedGoal goal, string purpose = "")
    {
        var unit = goal.Speed.Unit;
        var reached = Spoken($"It reaches {Rounded.WithInterval(top.Speed, unit, goal.Wanted)} in gear {top.Step.InWords}");
        if (top.Limit != TopSpeedLimit.Unknown) return Judge(pull, top, top.Speed, goal, $"{reached}: {Ends(pull, top)}", purpose);

        var unknown = top.Untold?.Says ?? Spoken($"the engine's torque beyond {Rounded.Value(pull.Torque.To, Units.RevolutionPerMinute)} is not known");
        if (goal.Wanted.Contains(top.Speed.Value)) return Judge(pull, top, top.Speed, goal, Spoken($"{reached} at least: {unknown}"), purpose);
        if (top.Most is { } most && !goal.Wanted.Contains(most.Value)) return Judge(pull, top, most, goal, Spoken($"It cannot reach more than {Rounded.WithInterval(most, unit, goal.Wanted)}, though {unknown}"), purpose);

        return Open(pull.Driveline, goal, [new(Spoken($"it is {Rounded.WithInterval(top.Speed, unit)} at least in gear {top.Step.InWords}, and {unknown}"), top.ToKnow)]);
    }

    private Finding Judge(Pull pull, TopSpeed top, Measured reached, TopSpeedGoal goal, string says, string purpose)
    {
        var isKept = goal.Wanted.Contains(reached.Interval95);
        var geared = isKept ? null : GearedFor.Of(pull, goal.Speed.Value);
        return this.Judged(new(
            Between(pull.Driveline), reached, goal.Speed.Unit, goal.Wanted,
            $"{says}; wanted {goal.Wanted.InWords(goal.Speed.Unit)}{purpose}.{AssumedLoad.InWords(pull.Driveline)}",
            Finding.OwnersGoal)
        {
            Cures = geared is null ? PowerCure(pull, top, goal) : [],
            Windows = isKept ? (top.Limit == TopSpeedLimit.Gear ? ByRedline(pull, top.Step, goal) : [])
                : geared is not null ? ByPower(pull, geared)
                : Longest(pull) is var longest && IsTurnedOut(pull, longest, goal) ? ByRedline(pull, longest, goal) : [],
        });
    }

    // With power enough at some gearing, the gearing is the cure. Without, the power has to be there at a speed that the engine may turn at.
    private static IEnumerable<Sentence> PowerCure(Pull pull, TopSpeed top, TopSpeedGoal goal)
    {
        var v = goal.Speed.Value;
        if (goal.Wanted.Contains(top.Speed.Value)) yield break;

        if (IsTurnedOut(pull, Longest(pull), goal))
        {
            yield return $"an engine of {Said.AtLeast(pull.PowerNeeded(Longest(pull), v).Interval95.High, Units.Kilowatt)} or more, and one of the ratios or tyres here as well";
            yield break;
        }

        var step = pull.Steps.Where(step => !IsTurnedOut(pull, step, goal)).MaxBy(step => step.Ratio.Value)!;
        yield return $"an engine of {Said.AtLeast(pull.PowerNeeded(step, v).Interval95.High, Units.Kilowatt)} or more at {Said.Number(pull.EngineSpeed(step, v).Value, Units.RevolutionPerMinute, 0)}, as it turns at {goal.Speed.InWords} in gear {step.InWords}";
    }

    private static DriveStep Longest(Pull pull) => pull.Steps.MinBy(step => step.Ratio.Value)!;

    // The speed lies beyond what the engine may turn at in this gear.
    private static bool IsTurnedOut(Pull pull, DriveStep step, TopSpeedGoal goal) => pull.RoadSpeed(step, pull.HighestEngineSpeed).Value < goal.Speed.Value;

    private static string Ends(Pull pull, TopSpeed top)
        => top.Limit == TopSpeedLimit.Gear
            ? Spoken($"the engine then turns {Rounded.Value(pull.HighestEngineSpeed, Units.RevolutionPerMinute)} and may not turn faster")
            : Spoken("more takes more power");

    private static PartWindow[] ByRedline(Pull pull, DriveStep step, TopSpeedGoal goal)
    {
        var (axle, tyre) = AxleAndTyre(pull);
        var most = pull.RoadSpeed(step, pull.HighestEngineSpeed);
        return
        [
            PartWindow.Inverse(pull.Driveline.DrivingPosition, AxleRatio(pull), Units.One, most * axle, goal.Wanted),
            PartWindow.Proportional(Position.Tyres, Circumference, Units.Metre, most / tyre, goal.Wanted),
        ];
    }

    private static PartWindow[] ByPower(Pull pull, GearedFor geared)
    {
        var (axle, tyre) = AxleAndTyre(pull);
        Window Axle(Window factors) => new(factors.Low * axle.Value, factors.High * axle.Value);
        Window Tyre(Window factors) => new(double.IsFinite(factors.High) ? tyre.Value / factors.High : double.NegativeInfinity, factors.Low > 0 ? tyre.Value / factors.Low : double.PositiveInfinity);

        var opened = geared.Sure is null ? Spoken("have the engine's torque measured on a rolling road") : null;
        return
        [
            new(pull.Driveline.DrivingPosition, AxleRatio(pull), Units.One, Axle(geared.Nominal), geared.Sure is { } axles ? Axle(axles) : null, opened),
            new(Position.Tyres, Circumference, Units.Metre, Tyre(geared.Nominal), geared.Sure is { } tyres ? Tyre(tyres) : null, opened),
        ];
    }

    private static (Measured Axle, Measured Tyre) AxleAndTyre(Pull pull) => (pull.Driveline.DrivingAxle!.Ratio!.Value, pull.Driveline.DrivingTyres!.RollingCircumference!.Value);

    private static string AxleRatio(Pull pull) => Spoken($"{pull.Driveline.DrivingPosition.InWords()} ratio");

    private static string Circumference => Spoken("tyre rolling circumference");

    private Finding NeverMet(Driveline driveline, TopSpeedGoal goal)
        => Open(driveline, goal, driveline.Transmission?.Untold is { } untold ? [Missing.Told(untold)] : [new(Spoken("in no gear does the torque curve meet the road load"), Spoken("enter the engine's torque at higher and lower engine speeds"))]);

    private Finding Open(Driveline driveline, TopSpeedGoal goal, IEnumerable<Missing> missing)
        => this.Open(Between(driveline), Spoken("The top speed"), missing, goal.Speed.Unit, goal.Wanted, Finding.OwnersGoal);

    private static Position[] Between(Driveline driveline) => [Position.Engine, Position.Transmission, driveline.DrivingPosition, Position.Tyres];
}
