using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;

namespace BuildLog.Gearing.Checks;

/// <summary>It reaches the owner's top speed on the level.</summary>
/// <remarks>Limit: the owner's goal. Formula: <see cref="TopSpeed"/>. Says nothing without such a goal.</remarks>
internal sealed class TopSpeedCheck : ICheck
{
    public string Id => "top-speed";

    public string Title => Spoken("Top speed");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        if (goals.TopSpeed is not { } goal) yield break;
        if (Pull.Of(driveline) is not { } pull)
        {
            yield return Open(driveline, goal, Missing.ForPull(driveline));
            yield break;
        }

        yield return TopSpeed.Of(pull) is { } top
            ? Judge(pull, top, goal)
            : Open(driveline, goal, [new(Spoken("in no gear does the torque curve meet the road load"), Spoken("enter the engine's torque at higher and lower engine speeds"))]);
    }

    private Finding Judge(Pull pull, TopSpeed top, TopSpeedGoal goal)
    {
        var ends = top.Limit == TopSpeedLimit.Gear
            ? Spoken($"the engine then turns {Rounded.Value(pull.HighestEngineSpeed, Units.RevolutionPerMinute)} and may not turn faster")
            : Spoken("more takes more power");
        return this.Judged(new(
            Between(pull.Driveline), top.Speed, goal.Speed.Unit, goal.Wanted,
            $"It reaches {Rounded.WithInterval(top.Speed, goal.Speed.Unit)} in gear {top.Step.InWords}: {ends}; wanted {goal.Wanted.InWords(goal.Speed.Unit)}.{AssumedLoad.InWords(pull.Driveline)}",
            Finding.OwnersGoal)
        {
            Cures = PowerCure(pull, top, goal),
            Windows = top.Limit == TopSpeedLimit.Gear ? GearWindows(pull, top, goal) : [],
        });
    }

    private static IEnumerable<Sentence> PowerCure(Pull pull, TopSpeed top, TopSpeedGoal goal)
    {
        if (goal.Wanted.Contains(top.Speed.Value)) yield break;

        var needed = pull.PowerNeeded(top.Step, goal.Speed.Value);
        if (needed.Value > pull.Torque.PeakPower.Value) yield return $"an engine of {Said.Alone(needed, Units.Kilowatt)}{(top.Limit == TopSpeedLimit.Gear ? Spoken(", and one of the ratios or tyres here as well") : "")}";
        else if (top.Limit == TopSpeedLimit.Power) yield return $"a gear that lets the engine reach its {Said.Alone(pull.Torque.PeakPower, Units.Kilowatt)} at {goal.Speed.Text}";
    }

    private static PartWindow[] GearWindows(Pull pull, TopSpeed top, TopSpeedGoal goal)
    {
        var driveline = pull.Driveline;
        var axle = driveline.DrivingAxle!.Ratio!.Value;
        var tyre = driveline.DrivingTyres!.RollingCircumference!.Value;
        return
        [
            PartWindow.Inverse(driveline.DrivingPosition, Spoken($"{driveline.DrivingPosition.InWords()} ratio"), Units.One, top.Speed * axle, goal.Wanted),
            PartWindow.Proportional(Position.Tyres, Spoken("tyre rolling circumference"), Units.Metre, top.Speed / tyre, goal.Wanted),
        ];
    }

    private Finding Open(Driveline driveline, TopSpeedGoal goal, IEnumerable<Missing> missing)
        => this.Open(Between(driveline), Spoken("The top speed"), missing, goal.Speed.Unit, goal.Wanted, Finding.OwnersGoal);

    private static Position[] Between(Driveline driveline) => [Position.Engine, Position.Transmission, driveline.DrivingPosition, Position.Tyres];
}
