using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;

namespace BuildLog.Gearing.Checks;

/// <summary>It holds the owner's hill at the owner's speed without changing down.</summary>
/// <remarks>
/// <code>steepest gradient held ≥ the goal's;   with a cruise goal and no hill goal: ≥ 3 % in the cruising gear</code>
/// <para>
/// Limit: the owner's goal; the 3 % is common practice for light vehicles, which warns and never clashes; where more than one number lacks for it, it says nothing.
/// Formula: <see cref="Pull.Hill"/>.
/// </para>
/// </remarks>
internal sealed class HillCheck : ICheck, ILookedAt
{
    internal const double UsualReserve = 0.03;
    private static string Usual => Spoken("common practice: 3 % in reserve at a cruise");

    public string Id => "hill";

    public string Title => Spoken("Hill held at the cruise");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        var pull = Pull.Of(driveline);
        if (goals.Hill is { } hill)
        {
            yield return pull is null ? Open(driveline, hill, Missing.ForPull(driveline)) : Judge(pull, hill, Finding.OwnersGoal, true);
            yield break;
        }

        // One number short of a pull, it is asked for; further off nobody has begun.
        if (pull is null)
        {
            if (goals.Cruise.Count > 0 && Missing.ForPull(driveline).ToList() is [var only])
                yield return Open(driveline, new(new(UsualReserve, Units.PercentUnit, "3 %"), goals.Cruise[0].Speed, goals.Cruise[0].Gear), [only], Usual);
            yield break;
        }

        foreach (var cruise in goals.Cruise)
        {
            var wanted = new HillGoal(new(UsualReserve, Units.PercentUnit, "3 %"), cruise.Speed, cruise.Gear);
            if (driveline.Step(cruise.Gear) is { } step && pull.Hill(step, cruise.Speed.ToMeasured(Spoken("road speed"))) is not null)
                yield return Judge(pull, wanted, Usual, false);
        }
    }

    // All that pulling needs; what gears, axle and tyres lack, their own checks ask for.
    IEnumerable<Unlooked> ILookedAt.NotLookedAt(Driveline driveline)
    {
        if (driveline.Engine is { PeakTorque: null }) yield return new(Position.Engine, Spoken("torque"), Missing.EnterPeaks);
        if (driveline is not { Engine: not null, Transmission: not null }) yield break;

        if (driveline.Load?.Mass is null) yield return new(null, Spoken("mass"), Missing.WeighIt);
        if (driveline.Load?.DragArea is null) yield return new(null, Spoken("drag"), Missing.ChooseBody);
        if (driveline.Tyres is not null && driveline.Load?.RollingResistance is null) yield return new(null, Spoken("rolling resistance"), Missing.ChooseTyres);
    }

    private Finding Judge(Pull pull, HillGoal goal, string source, bool verified)
    {
        var driveline = pull.Driveline;
        var v = goal.Speed.ToMeasured(Spoken("road speed"));
        if (driveline.Step(goal.Gear) is not { } step)
            return Open(driveline, goal, Missing.UntoldGear(driveline, goal.Gear).FirstOrDefault() is { } untold ? [untold] : [new(Spoken($"there is no gear {Shown.Quoted(goal.Gear ?? Spoken("of known ratio on top"))}"), Spoken("correct the goal's gear, or enter the overdrive's ratio"))]);
        if (pull.Hill(step, v) is not { } held)
            return Open(driveline, goal, [Beyond(pull, step, v)]);

        var name = goal.Gear is null ? CruiseCheck.TopName(driveline) : Spoken($"gear {step.InWords}");
        return this.Judged(new(
            Between(driveline), held, Units.PercentUnit, goal.Wanted,
            $"At {goal.Speed.InWords} in {name} it holds a hill of {Said.Number(held, Units.PercentUnit)}; wanted {goal.Wanted.InWords(Units.PercentUnit)}.{AssumedLoad.InWords(driveline)}",
            source)
        {
            LimitIsVerified = verified,
            Cures = Cures(pull, step, v, goal.Gradient.Value),
        });
    }

    private static IEnumerable<Sentence> Cures(Pull pull, DriveStep step, Measured v, double gradient)
    {
        var rpm = Units.RevolutionPerMinute;
        var n = pull.EngineSpeed(step, v);
        yield return $"{Said.AtLeast(pull.TorqueNeeded(step, v, gradient).Interval95.High, Units.NewtonMetre)} or more from the engine at {Rounded.Value(n, rpm)}";

        // The tallest gear below that does hold it.
        foreach (var lower in pull.Steps.Reverse().SkipWhile(other => other.Name != step.Name).Skip(1))
        {
            if (pull.Hill(lower, v) is not { } held || held.Value < gradient) continue;
            yield return $"change down to gear {lower.Name}: {Rounded.Value(held, Units.PercentUnit)} at {Rounded.Value(pull.EngineSpeed(lower, v), rpm)}";
            yield break;
        }
    }

    internal static Missing Beyond(Pull pull, DriveStep step, Measured v)
    {
        var at = Rounded.Value(pull.EngineSpeed(step, v), Units.RevolutionPerMinute);
        return new(Spoken($"the torque curve does not reach {at}"), $"enter the engine's torque at {at}");
    }

    private Finding Open(Driveline driveline, HillGoal goal, IEnumerable<Missing> missing, string? source = null)
        => this.Open(Between(driveline), Spoken($"The hill held at {goal.Speed.InWords}"), missing, Units.PercentUnit, goal.Wanted, source ?? Finding.OwnersGoal);

    private static Position[] Between(Driveline driveline) => [Position.Engine, Position.Transmission, driveline.DrivingPosition, Position.Tyres];
}
