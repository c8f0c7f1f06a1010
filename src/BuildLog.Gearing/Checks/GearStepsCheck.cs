using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>The steps get smaller from gear to gear, and no upshift drops the engine below its strong torque.</summary>
/// <remarks>
/// <code>φ_k = i_k/i_k+1;   φ_k+1 ≤ φ_k;   n_P/φ_k ≥ n_s</code>
/// <para>i ratios from the lowest gear up, an overdrive unit last; n_P engine speed of peak power, or the redline below it; n_s where the torque comes within 3 % of its peak, which
/// is no more than two curves of one engine differ by: on a flat curve a drop below the very peak is none.</para>
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
        if (steps.Count >= 2 && driveline.Engine is { Torque: not null, MayPeakBeyondItsCurve: false }) yield return Drop(driveline, steps);
    }

    private Finding Progression(IReadOnlyList<DriveStep> steps)
    {
        var k = Enumerable.Range(0, steps.Count - 2).MaxBy(at => Growth(at).Value);
        var (low, middle, high) = (steps[k], steps[k + 1], steps[k + 2]);
        var wanted = Window.AtMost(Alike);
        Measured Growth(int at) => steps[at + 1].Ratio * steps[at + 1].Ratio / (steps[at].Ratio * steps[at + 2].Ratio);

        return this.Judged(new(
            [Position.Transmission], Growth(k), Units.One, wanted,
            $"The step from {middle.InWords} to {high.InWords} is {Rounded.Value(middle.Ratio / high.Ratio, Units.One)}, the one below it, from {low.Name} to {middle.Name}, {Rounded.Value(low.Ratio / middle.Ratio, Units.One)}: the upper is {Said.Number(Growth(k), Units.One, 2)} times the lower and should not be larger.",
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
        var strong = torque.StrongFrom;
        var (shift, where) = driveline.Engine.Redline is { } redline && redline.Value.Value < torque.MostPowerful.EngineSpeed
            ? (redline.Value.Value, Spoken("the redline"))
            : (torque.MostPowerful.EngineSpeed, Spoken("the power peak"));
        var (from, to) = steps.Zip(steps.Skip(1)).MaxBy(pair => (pair.First.Ratio / pair.Second.Ratio).Value);
        var after = to.Ratio / from.Ratio * shift;
        var wanted = Window.AtLeast(strong);

        return this.Judged(new(
            [Position.Engine, Position.Transmission], after, rpm, wanted,
            $"Shifted at {where}, the step from {from.InWords} to {to.InWords} drops the engine to {rpm.FromBase(after.Value):0} rev/min; its torque is near its peak from {rpm.FromBase(strong):0} rev/min.",
            Spoken("common practice"))
        {
            LimitIsVerified = false,
            Cures = [Spoken($"ratio of gear {to.Name} {Math.Ceiling(from.Gear.Value * strong / shift * 100) / 100:0.00} or more")],
        });
    }
}
