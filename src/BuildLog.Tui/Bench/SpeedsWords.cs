using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Speeds;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Bench;

/// <summary>Gears against speeds, and the sawtooth, for screen and sheet alike.</summary>
public static class SpeedsWords
{
    private const double AssumedIdle = 800 / 60.0;
    private const double AssumedShift = 4500 / 60.0;

    private static readonly int[] Columns = [1000, 2000, 3000, 4000];

    public static SpeedsModel Of(Driveline driveline, OwnersGoals goals, UnitSystem units)
    {
        if (GearSpeeds.Of(driveline) is not { } speeds) return SpeedsModel.Without(Missing(driveline));

        var shift = driveline.Engine?.Redline?.Value ?? AssumedShift;
        return new(
            Headline(driveline, speeds, units),
            ["ratio", .. Columns.Select(rpm => FormattableString.Invariant($"{rpm}")), "drops to"],
            [.. speeds.Steps.Select(step => Row(speeds, step, shift, units))],
            Chart(driveline, speeds, goals, shift.Value, units));
    }

    /// <summary>What the columns of the table mean.</summary>
    public static string Note(Driveline driveline, UnitSystem units)
        => $"Road speed in {units.Speed} at the engine speed in rev/min; 'drops to' is the engine speed after an upshift at {Shift(driveline)} rev/min"
            + (driveline.Engine?.Redline is null ? " (assumed: no redline is recorded)." : " (redline).");

    private static string Shift(Driveline driveline) => Rpm(driveline.Engine?.Redline?.Value ?? AssumedShift);

    private static string Headline(Driveline driveline, GearSpeeds speeds, UnitSystem units)
    {
        var assumed = driveline.Engine?.Redline is null ? ", assumed" : "";
        if (driveline.Step(null) is not { } top) return $"Top gear is not known: the overdrive's ratio is missing; upshifts at {Shift(driveline)}{assumed}.";

        return $"{Rounded.WithInterval(speeds.PerThousand(top), units.Speed)} per 1000 rev/min in top ({top.Name}); upshifts at {Shift(driveline)}{assumed}.";
    }

    private static SpeedsRow Row(GearSpeeds speeds, DriveStep step, Measured shift, UnitSystem units)
    {
        var drop = speeds.Upshifts(shift).FirstOrDefault(upshift => upshift.From == step);
        return new(step.Name,
        [
            Rounded.Fixed(step.Ratio.Value, 2),
            .. Columns.Select(rpm => Number(speeds.RoadSpeed(step, rpm / 60.0), units.Speed)),
            drop is null ? "" : Rpm(drop.EngineSpeed),
        ]);
    }

    private static SawtoothModel Chart(Driveline driveline, GearSpeeds speeds, OwnersGoals goals, double shift, UnitSystem units)
        => new(
            units.Speed.Symbol,
            (driveline.Engine?.Idle?.Value.Value ?? AssumedIdle) * 60,
            shift * 60,
            [.. speeds.Steps.Select(step => new SawtoothGear(step.Name, units.Speed.FromBase(speeds.PerThousand(step).Value)))],
            goals.Cruise is [var goal, ..]
                ? new(units.Speed.FromBase(goal.Speed.Value), Math.Max(0, goal.Wanted.Low * 60), goal.Wanted.High * 60)
                : null);

    private static string Missing(Driveline driveline)
        => driveline switch
        {
            { Transmission: null } => "No gearbox is fitted yet: fit one with its ratios, and the speeds appear.",
            { Steps.Count: 0 } => "The gearbox or transfer case has no ratios yet: enter them, and the speeds appear.",
            { DrivingAxle: null } => "No axle is fitted yet: fit one, and the speeds appear.",
            { DrivingAxle.Ratio: null } => "The axle's ratio is not known: count its turns, and the speeds appear.",
            { Tyres: null } => "No tyres are fitted yet: fit them, and the speeds appear.",
            _ => "The tyres' circumference is not known: roll them out or enter their size, and the speeds appear.",
        };

    private static string Number(Measured value, Unit unit)
        => Rounded.Fixed(unit.FromBase(value.Value), value.IsExact ? 1 : Math.Min(1, Rounded.Places(unit.FromBase(value.Expanded95))));

    private static string Rpm(Measured value)
        => Rounded.Fixed(Units.RevolutionPerMinute.FromBase(value.Value), value.IsExact ? 0 : Math.Min(0, Rounded.Places(Units.RevolutionPerMinute.FromBase(value.Expanded95))));
}
