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
/// engine's torque; says nothing without. Open where nobody told some of the gears.
/// </para>
/// </remarks>
internal sealed class GearStepsCheck : ICheck
{
    internal const double Alike = 1.02;

    public string Id => "gear-steps";

    public string Title => Spoken("Gear steps");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        var steps = driveline.Steps;
        if (steps.Count > 0 && driveline.Transmission?.Untold is { } untold)
        {
            yield return this.Open([Position.Transmission], Spoken("Whether the steps get smaller from gear to gear"), [Missing.Told(untold)], Spoken("common practice")) with { LimitIsVerified = false };
            yield break;
        }

        var shift = steps.Count >= 2 ? Upshift.Of(driveline.Engine) : null;
        if (steps.Count >= 3) yield return Progression(steps, shift);
        if (shift is not null) yield return Drop(steps, shift);
    }

    private Finding Progression(IReadOnlyList<DriveStep> steps, Upshift? shift)
    {
        var k = Enumerable.Range(0, steps.Count - 2).MaxBy(at => GrowthAt(steps, at).Value);
        var (low, middle, high) = (steps[k], steps[k + 1], steps[k + 2]);
        var wanted = Window.AtMost(Alike);
        var growth = GrowthAt(steps, k);

        return this.Judged(new(
            [Position.Transmission], growth, Units.One, wanted,
            $"The step from {middle.InWords} to {high.InWords} is {Rounded.Value(middle.Ratio / high.Ratio, Units.One)}, the one below it, from {low.Name} to {middle.Name}, {Rounded.Value(low.Ratio / middle.Ratio, Units.One)}: the upper is {Said.Number(growth, Units.One, 2)} times the lower and should not be larger.",
            Spoken("common practice"))
        {
            LimitIsVerified = false,
            Cures = [CureOfProgression(steps, k, shift)],
        });
    }

    // Two alike steps are the best that the gear between can do; where they drop too far, or the step below is smaller, the hole would only move.
    private static string CureOfProgression(IReadOnlyList<DriveStep> steps, int k, Upshift? shift)
    {
        var alike = Math.Floor(Math.Sqrt((steps[k].Gear * steps[k + 2].Gear).Value) * 100) / 100;
        var ratios = With(steps, k + 1, alike);
        return WorstGrowth(ratios) > SurelyAlike(steps, alike) || ratios[k] / ratios[k + 2] > shift?.LargestStep * shift?.LargestStep
            ? Closer(steps, shift)
            : Spoken($"ratio of gear {steps[k + 1].Name} {alike:0.00} or less");
    }

    private static string Closer(IReadOnlyList<DriveStep> steps, Upshift? shift)
    {
        var even = Math.Pow((steps[0].Ratio / steps[^1].Ratio).Value, 1.0 / (steps.Count - 1));
        return Spoken($"a gearbox with steps of {Math.Floor(Math.Min(even, shift?.LargestStep ?? even) * 100) / 100:0.00} or less, none larger than the one below it");
    }

    private Finding Drop(IReadOnlyList<DriveStep> steps, Upshift shift)
    {
        var rpm = Units.RevolutionPerMinute;
        var k = Enumerable.Range(0, steps.Count - 1).MaxBy(at => (steps[at].Ratio / steps[at + 1].Ratio).Value);
        var (from, to) = (steps[k], steps[k + 1]);
        var after = to.Ratio / from.Ratio * shift.From;
        var wanted = Window.AtLeast(shift.Strong);

        return this.Judged(new(
            [Position.Engine, Position.Transmission], after, rpm, wanted,
            $"Shifted at {shift.Where}, the step from {from.InWords} to {to.InWords} drops the engine to {rpm.FromBase(after.Value):0} rev/min; its torque is near its peak from {rpm.FromBase(shift.Strong):0} rev/min.",
            Spoken("common practice"))
        {
            LimitIsVerified = false,
            Cures = [CureOfDrop(steps, k, shift)],
        });
    }

    // A shorter gear makes the next step larger, and another step may be too large as well: then no single ratio is a cure.
    private static string CureOfDrop(IReadOnlyList<DriveStep> steps, int k, Upshift shift)
    {
        var growth = WorstGrowth([.. steps.Select(step => step.Ratio.Value)]);
        var strong = Math.Ceiling((steps[k].Gear.Interval95.High / shift.LargestStep * 100) + 0.5) / 100;
        var ratios = With(steps, k + 1, strong);
        return Drops(ratios).Max() > shift.LargestStep || WorstGrowth(ratios) > Math.Max(SurelyAlike(steps, strong), growth)
            ? Closer(steps, shift)
            : Spoken($"ratio of gear {steps[k + 1].Name} {strong:0.00} or more");
    }

    private static Measured GrowthAt(IReadOnlyList<DriveStep> steps, int at) => steps[at + 1].Ratio * steps[at + 1].Ratio / (steps[at].Ratio * steps[at + 2].Ratio);

    // With the ratios known as they are, and the one in question to half its last figure.
    private static double SurelyAlike(IReadOnlyList<DriveStep> steps, double gear)
    {
        var doubt = Enumerable.Range(0, steps.Count - 2).Select(k => GrowthAt(steps, k)).Select(growth => growth.Expanded95 / growth.Value).DefaultIfEmpty().Max();
        return Alike / (1 + doubt + (0.01 / gear));
    }

    // What turns behind the gearbox stays.
    private static double[] With(IReadOnlyList<DriveStep> steps, int at, double gear)
    {
        var ratios = steps.Select(step => step.Ratio.Value).ToArray();
        ratios[at] *= gear / steps[at].Gear.Value;
        return ratios;
    }

    private static IEnumerable<double> Drops(double[] ratios) => ratios.Zip(ratios.Skip(1), (low, high) => low / high);

    private static double WorstGrowth(double[] ratios)
    {
        var drops = Drops(ratios).ToArray();
        return drops.Zip(drops.Skip(1), (below, above) => above / below).DefaultIfEmpty().Max();
    }

    /// <summary>Where the engine is shifted up, and where its torque is strong; rev/s.</summary>
    private sealed record Upshift(double From, string Where, double Strong)
    {
        /// <summary>The step that lands where the torque begins to be strong.</summary>
        public double LargestStep => From / Strong;

        /// <summary>Null where nobody knows the torque as far as the power peak.</summary>
        public static Upshift? Of(Engine? engine)
        {
            if (engine is not { Torque: { } torque, MayPeakBeyondItsCurve: false }) return null;

            return engine.Redline is { } redline && redline.Value.Value < torque.MostPowerful.EngineSpeed
                ? new(redline.Value.Value, Spoken("the redline"), torque.StrongFrom)
                : new(torque.MostPowerful.EngineSpeed, Spoken("the power peak"), torque.StrongFrom);
        }
    }
}
