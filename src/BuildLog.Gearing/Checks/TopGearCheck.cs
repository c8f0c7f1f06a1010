using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;

namespace BuildLog.Gearing.Checks;

/// <summary>The tall gears suit the power: neither does the engine scream in top, nor are two gears too long for it.</summary>
/// <remarks>
/// <code>share = n in a gear at the speed that peak power reaches/n_P;   top: share ≤ 1.10;   the gear below top: share ≥ 0.85</code>
/// <para>n_P engine speed of peak power. A share above 1 in top is under-geared, one below 1 in the gear below top is over-geared: one economy gear is fine, two are not.</para>
/// <para>Limit: common practice, it warns and never clashes. Says nothing until torque up to the power peak, ratios, tyres and load are known.</para>
/// </remarks>
internal sealed class TopGearCheck : ICheck
{
    internal const double MostInTop = 1.10;
    internal const double LeastBelowTop = 0.85;

    public string Id => "top-gear";

    public string Title => Spoken("Over- or under-geared");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        // A power peak beyond the redline is no gearing's fault; what contradicts there is asked about elsewhere.
        if (Pull.Of(driveline) is not { } pull || driveline.Engine!.MayPeakBeyondItsCurve || pull.HighestEngineSpeed.Value < pull.Torque.MostPowerful.EngineSpeed) yield break;

        var top = pull.Steps[^1];
        var inTop = Reached(pull, top);

        // Which gear is the one below top, nobody knows; a unit behind the box leaves top gear itself there.
        if (driveline.Transmission?.Untold is { } untold && (untold.Top || (inTop.Value <= 1 && driveline.Overdrive is null)))
        {
            yield return this.Open(Between(driveline), Spoken("Whether it is over- or under-geared"), [Missing.Told(untold)], Spoken("common practice")) with { LimitIsVerified = false };
            yield break;
        }

        if (inTop.Value > 1 || pull.Steps.Count == 1)
            yield return Judge(pull, top, inTop, inTop.Value > 1 ? Window.AtMost(MostInTop) : Window.AtLeast(LeastBelowTop));
        else
            yield return Judge(pull, pull.Steps[^2], Reached(pull, pull.Steps[^2]), new(LeastBelowTop, inTop.Value < LeastBelowTop ? pull.HighestEngineSpeed.Value / pull.Torque.MostPowerful.EngineSpeed : double.PositiveInfinity));
    }

    private static Position[] Between(Driveline driveline) => [Position.Engine, Position.Transmission, driveline.DrivingPosition, Position.Tyres];

    private static Measured Reached(Pull pull, DriveStep step)
        => pull.EngineSpeed(step, TopSpeed.ByPeakPower(pull)) / pull.Torque.MostPowerful.EngineSpeed;

    private Finding Judge(Pull pull, DriveStep step, Measured reached, Window wanted)
    {
        var axle = pull.Driveline.DrivingPosition;
        var v = TopSpeed.ByPeakPower(pull);
        var percent = Units.PercentUnit;
        var top = pull.Steps[^1];
        var isTop = step.Name == top.Name;
        var gear = isTop ? (CruiseCheck.IsTopNameless(pull.Driveline) ? Spoken("top gear") : Spoken($"top gear ({top.InWords})")) : Spoken($"gear {step.InWords}, the one below top ({top.InWords}),");
        var limit = isTop && double.IsFinite(wanted.High) ? Spoken($"more than {MostInTop * 100:0} % in top is under-geared")
            : isTop ? Spoken($"less than {LeastBelowTop * 100:0} % is over-geared")
            : reached.Value > wanted.High ? Spoken($"that is beyond its redline, {wanted.High * 100:0} %, and top is too long for it: no gear makes use of the power there")
            : Spoken($"less than {LeastBelowTop * 100:0} % in the gear below top is over-geared, as one economy gear is fine and two are not");
        return this.Judged(new(
            Between(pull.Driveline), reached, percent, wanted,
            $"Its peak power would reach {Said.Alone(v, Units.KilometrePerHour)}; there {gear} turns the engine at {Said.Number(reached, percent)} of its power peak's speed; {limit}.{AssumedLoad.InWords(pull.Driveline)}",
            Spoken("common practice"))
        {
            LimitIsVerified = false,
            Windows = [PartWindow.Proportional(axle, Spoken($"{axle.InWords()} ratio"), Units.One, reached / pull.Driveline.DrivingAxle!.Ratio!.Value, wanted)],
        });
    }
}
