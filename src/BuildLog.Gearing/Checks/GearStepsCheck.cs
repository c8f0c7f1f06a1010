using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>The steps get smaller from gear to gear, and no upshift drops the engine below its torque peak.</summary>
/// <remarks>
/// <code>φ_k = i_k/i_k+1;   φ_k+1 ≤ φ_k;   n_P/φ_k ≥ n_T</code>
/// <para>i ratios from the lowest gear up, an overdrive unit last; n_P and n_T engine speeds of peak power and peak torque.</para>
/// <para>
/// Limit: common practice, with 2 % for ratios quoted to two places; it warns and never clashes. Progression needs three ratios, the drop needs the
/// engine's torque; says nothing without.
/// </para>
/// </remarks>
internal sealed class GearStepsCheck : ICheck
{
    private const double Alike = 1.02;

    public string Id => "gear-steps";

    public string Title => Spoken("Gear steps");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        var steps = driveline.Steps;
        if (steps.Count >= 3) yield return Progression(steps);
        if (steps.Count >= 2 && driveline.Engine?.Torque is not null) yield return Drop(driveline, steps);
    }

    private Finding Progression(IReadOnlyList<DriveStep> steps)
    {
        var k = Enumerable.Range(0, steps.Count - 2).MaxBy(at => Growth(at).Value);
        var (low, middle, high) = (steps[k], steps[k + 1], steps[k + 2]);
        var wanted = Window.AtMost(Alike);
        Measured Growth(int at) => steps[at + 1].Ratio * steps[at + 1].Ratio / (steps[at].Ratio * steps[at + 2].Ratio);

        return this.Judged(new(
            [Position.Transmission], Growth(k), Units.One, wanted,
            $"The step from {middle.InWords} to {high.InWords} is {Rounded.Value(middle.Ratio / high.Ratio, Units.One)}, the one below it, from {low.Name} to {middle.Name}, {Rounded.Value(low.Ratio / middle.Ratio, Units.One)}; the upper should not be larger.",
            Spoken("common practice"))
        {
            LimitIsVerified = false,
            Cures = [Spoken($"ratio of gear {middle.Name} {Math.Sqrt((low.Gear * high.Gear).Value):0.00} or less")],
        });
    }

    private Finding Drop(Driveline driveline, IReadOnlyList<DriveStep> steps)
    {
        var rpm = Units.RevolutionPerMinute;
        var torque = driveline.Engine!.Torque!;
        var (power, strongest) = (torque.MostPowerful.EngineSpeed, torque.StrongestPoint.EngineSpeed);
        var (from, to) = steps.Zip(steps.Skip(1)).MaxBy(pair => (pair.First.Ratio / pair.Second.Ratio).Value);
        var after = to.Ratio / from.Ratio * power;
        var wanted = Window.AtLeast(strongest);

        return this.Judged(new(
            [Position.Engine, Position.Transmission], after, rpm, wanted,
            $"Shifted at the power peak, the step from {from.InWords} to {to.InWords} drops the engine to {rpm.FromBase(after.Value):0} rev/min; its torque peaks at {rpm.FromBase(strongest):0} rev/min.",
            Spoken("common practice"))
        {
            LimitIsVerified = false,
            Cures = [Spoken($"ratio of gear {to.Name} {Math.Ceiling(from.Gear.Value * strongest / power * 100) / 100:0.00} or more")],
        });
    }
}
