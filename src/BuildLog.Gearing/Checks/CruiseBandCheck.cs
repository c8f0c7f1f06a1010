using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>The cruise lies in the lower part of the engine's torque band.</summary>
/// <remarks>
/// <code>0.60 n_T ≤ n ≤ 0.95 n_T</code>
/// <para>n engine speed at the cruise, converter slip included; n_T engine speed of peak torque.</para>
/// <para>
/// Limit: common practice, for big slow engines; it warns and never clashes. A small engine that cruises above its torque peak is noisy and thirsty, not
/// wrong. Needs a cruise goal and the engine's torque; says nothing without them.
/// </para>
/// </remarks>
internal sealed class CruiseBandCheck : ICheck
{
    private const double Low = 0.60;
    private const double High = 0.95;

    public string Id => "cruise-band";

    public string Title => Spoken("Cruise in the torque band");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        if (driveline.Engine?.Torque is not { } torque) yield break;

        var rpm = Units.RevolutionPerMinute;
        var peak = torque.StrongestPoint.EngineSpeed;
        var band = new Window(Low * peak, High * peak);
        foreach (var goal in goals.Cruise)
        {
            if (CruiseCheck.EngineSpeed(driveline, goal) is not { } n) continue;

            yield return this.Judged(new(
                [Position.Engine, driveline.DrivingPosition, Position.Tyres], n, rpm, band,
                $"At {goal.Speed.Text} the engine turns {Rounded.WithInterval(n, rpm)}; its torque peaks at {rpm.FromBase(peak):0} rev/min, and a cruise does best at {band.InWords(rpm)}.",
                Spoken("common practice: 0.60 to 0.95 of the torque peak's engine speed"))
            {
                LimitIsVerified = false,
                Windows = CruiseCheck.Windows(driveline, goal with { Wanted = band }),
            });
        }
    }
}
