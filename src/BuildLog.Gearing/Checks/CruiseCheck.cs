using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.Checks;

/// <summary>At the goal's road speed the engine turns as fast as the owner wants.</summary>
/// <remarks>
/// <code>n = v · i_gear · i_transfer · i_axle / (C · (1 − s))</code>
/// <para>n engine speed, rev/s; v the goal's road speed, m/s; i ratios; C rolling circumference, m; s slip of a converter that does not lock.</para>
/// <para>How a bias tyre grows at that speed is from memory, so it is told and not judged: see <see cref="SpeedGrowth"/>.</para>
/// <para>Verdict: the 95 % interval of n against the goal's window. Limit: the owner's goal. Formula: see <see cref="Speeds.SpeedRelation"/>.</para>
/// </remarks>
public sealed class CruiseCheck : ICheck
{
    /// <inheritdoc/>
    public string Id => "cruise";

    /// <inheritdoc/>
    public string Title => Spoken("Cruise engine speed");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
        => goals.Cruise.Count == 0 ? [NoGoal(driveline)] : goals.Cruise.Select(goal => Judge(driveline, goal) with { Wish = Wish(goal) });

    /// <summary>Engine speed at the goal's road speed, rev/s; null while a part or a number is missing.</summary>
    public static Measured? EngineSpeed(Driveline driveline, CruiseGoal goal)
        => driveline is { DrivingAxle.Ratio: { } axle, DrivingTyres.RollingCircumference: { } tyre } && driveline.Step(goal.Gear) is { } step
            ? Driven(driveline, goal) * step.Ratio * axle.Value / tyre.Value
            : null;

    private Finding Judge(Driveline driveline, CruiseGoal goal)
    {
        var rpm = Units.RevolutionPerMinute;
        var windows = Windows(driveline, goal);
        if (EngineSpeed(driveline, goal) is not { } n)
            return this.Open(Joint(driveline), Spoken($"The engine speed at {goal.Speed.InWords}"), Lacking(driveline, goal), rpm, goal.Wanted, Finding.OwnersGoal) with { Windows = windows };

        return this.Judged(new(
            Joint(driveline), n, rpm, goal.Wanted,
            $"At {goal.Speed.InWords} in {GearName(driveline, goal)} the engine turns {Said.Number(n, rpm)}; wanted {goal.Wanted.InWords(rpm)}.{Grown(driveline, goal, n)}{AssumedLoad.SlipInWords(driveline)}",
            Finding.OwnersGoal)
        {
            Windows = windows,
        });
    }

    private static string Wish(CruiseGoal goal) => goal.Gear is { } gear ? Spoken($"at {goal.Speed.InWords} in gear {gear}") : Spoken($"at {goal.Speed.InWords}");

    private static string Grown(Driveline driveline, CruiseGoal goal, Measured n)
    {
        if (driveline.DrivingTyres?.Size?.Construction != Construction.Bias || goal.Speed.Value > SpeedGrowth.Fastest) return "";

        var growth = SpeedGrowth.At(Construction.Bias, goal.Speed.Value);
        return Spoken($" A bias tyre grows by some {Rounded.WithInterval(growth - 1, Units.PercentUnit)} at that speed: then {Rounded.WithInterval(n / growth, Units.RevolutionPerMinute)}.");
    }

    private Finding NoGoal(Driveline driveline) => this.Plain(
        Joint(driveline), Verdict.Open, Because.MissingInput, Spoken("No cruise goal is set, so no engine speed can be called right or wrong."), Finding.OwnersGoal,
        Spoken("set a cruise goal: a road speed and the engine speed wanted there"));

    private static IReadOnlyList<Position> Joint(Driveline driveline) => [driveline.DrivingPosition, Position.Tyres];

    private static IEnumerable<Missing> Lacking(Driveline driveline, CruiseGoal goal)
        => [.. Missing.Gears(driveline), .. Missing.HighRange(driveline), .. Step(driveline, goal), .. Missing.Axle(driveline), .. Missing.Tyres(driveline)];

    private static IEnumerable<Missing> Step(Driveline driveline, CruiseGoal goal)
    {
        if (driveline.Steps is not { Count: > 0 } steps || driveline.Step(goal.Gear) is not null) yield break;
        yield return Missing.UntoldGear(driveline, goal.Gear).FirstOrDefault() is { } untold ? untold
            : driveline.Overdrive is { Ratio: null }
            ? new(Spoken("the overdrive's ratio is not known"), Spoken("enter the overdrive's ratio, or name a gear without it in the goal"))
            : new(Spoken($"there is no gear {Shown.Quoted(goal.Gear ?? "")} among {string.Join(", ", steps.Select(step => step.Name))}"), Spoken("correct the goal's gear"));
    }

    // For each part, everything but that part; a part whose companions are unknown gets no window.
    internal static IReadOnlyList<PartWindow> Windows(Driveline driveline, CruiseGoal goal)
    {
        var v = Driven(driveline, goal);
        var step = driveline.Step(goal.Gear);
        var axle = driveline.DrivingAxle?.Ratio?.Value;
        var tyre = driveline.DrivingTyres?.RollingCircumference?.Value;
        var windows = new List<PartWindow>();

        if (step is not null && tyre is not null)
            windows.Add(PartWindow.Proportional(driveline.DrivingPosition, Spoken($"{driveline.DrivingPosition.InWords()} ratio"), Units.One, v * step.Ratio / tyre, goal.Wanted));
        if (step is not null && axle is not null)
            windows.Add(PartWindow.Inverse(Position.Tyres, Spoken("tyre rolling circumference"), Units.Metre, v * step.Ratio * axle, goal.Wanted));
        if (step is not null && axle is not null && tyre is not null)
            windows.Add(PartWindow.Proportional(Position.Transmission, Spoken($"ratio of {GearOfTheBox(driveline, goal, step)}"), Units.One, v * step.Transfer * step.Overdrive * axle / tyre, goal.Wanted) with { IsOfTopGear = goal.Gear is null || step.Overdrive.Value != 1 });
        return windows;
    }

    // The road speed that the gearbox would drive it at without slip.
    private static Measured Driven(Driveline driveline, CruiseGoal goal)
        => goal.Speed.ToMeasured(Spoken("road speed")) / (1 - (driveline.Transmission?.Converter?.CruiseSlip ?? 0));

    // What the box itself has to give; a unit behind it stays.
    private static string GearOfTheBox(Driveline driveline, CruiseGoal goal, DriveStep step)
        => step.Overdrive.Value == 1 ? GearName(driveline, goal) : Spoken($"gear {driveline.Transmission!.Gears[^1].Name}, without the overdrive");

    /// <summary><c>top (4)</c>; <c>top gear</c> of a gearbox whose top gear has no name.</summary>
    internal static string TopName(Driveline driveline)
        => IsTopNameless(driveline) ? Spoken("top gear") : Spoken($"top ({driveline.Step(null)?.InWords})");

    internal static bool IsTopNameless(Driveline driveline) => driveline is { Transmission.Untold.IsTopNameless: true, Overdrive: null };

    internal static string GearName(Driveline driveline, CruiseGoal goal)
        => goal.Gear is null ? TopName(driveline) : Spoken($"gear {driveline.Step(goal.Gear)?.InWords ?? goal.Gear}");
}
