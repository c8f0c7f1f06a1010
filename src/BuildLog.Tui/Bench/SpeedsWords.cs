using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Speeds;
using BuildLog.Sheet.Content;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Bench;

/// <summary>Gears against speeds, and the sawtooth, for screen and sheet alike.</summary>
public static class SpeedsWords
{
    private const double AssumedIdle = 800 / 60.0;
    private const double AssumedShift = 4500 / 60.0;

    private const string Beyond = "*";

    private static string OverTheRedline => Spoken("over");

    private static readonly int[] UsualColumns = [1000, 2000, 3000, 4000];

    /// <param name="driveline">Today's.</param>
    /// <param name="goals">For the mark on the chart.</param>
    /// <param name="units">The units to show.</param>
    /// <param name="wish">Which gears and columns; null for the usual ones.</param>
    public static SpeedsModel Of(Driveline driveline, OwnersGoals goals, UnitSystem units, SpeedsWish? wish = null)
    {
        if (GearSpeeds.Of(driveline) is not { } speeds) return SpeedsModel.Without(Missing(driveline));

        var shown = wish?.In(units) ?? units;
        var shift = driveline.Engine?.Redline?.Value ?? AssumedShift;
        var redline = driveline.Engine?.Redline?.Value;
        var steps = speeds.Steps.Where(step => wish is not { Gears.Count: > 0 } || wish.Gears.Contains(step.Name)).ToList();
        if (steps.Count == 0) steps = [.. speeds.Steps]; // another vehicle's gears were chosen
        return new(
            Headline(driveline, speeds, shown),
            [Spoken("ratio"), .. Columns(wish, shown, redline), Spoken("drops to")],
            [.. Rows(speeds, steps, shift, redline is not null, shown, wish)],
            Chart(driveline, speeds, goals, shift.Value, shown))
        {
            Footnote = Footnote(wish, redline, speeds),
            Pull = () => PullCurves.Of(driveline, shown),
            PullMissing = PullCurves.Missing(driveline),
        };
    }

    /// <summary>What the columns of the table mean.</summary>
    public static string Note(Driveline driveline, UnitSystem units)
        => Spoken($"Road speed in {units.Speed} at the engine speed in rev/min; 'drops to' is the engine speed after an upshift at {Shift(driveline)} rev/min")
            + (driveline.Engine?.Redline is null ? Spoken(" (assumed: no redline is recorded)") : Spoken(" (redline)"))
            + (driveline.Overdrive?.Ratio is not null && driveline.Steps is [.., var top] ? Spoken($"; {top.Name} is gear {driveline.Transmission!.Gears[^1].Name} with the overdrive in.") : ".");

    private static string Shift(Driveline driveline) => Rpm(driveline.Engine?.Redline?.Value ?? AssumedShift);

    private static string Headline(Driveline driveline, GearSpeeds speeds, UnitSystem units)
    {
        var assumed = driveline.Engine?.Redline is null ? Spoken(", assumed") : "";
        if (driveline.Step(null) is not { } top) return Spoken($"Top gear is not known: the overdrive's ratio is missing; upshifts at {Shift(driveline)}{assumed}.");

        return Spoken($"{Rounded.WithInterval(speeds.PerThousand(top), units.Speed)} per 1000 rev/min in top ({top.Name}); upshifts at {Shift(driveline)}{assumed}.");
    }

    private static IEnumerable<string> Columns(SpeedsWish? wish, UnitSystem units, Measured? redline) => wish switch
    {
        { RoadSpeeds.Count: > 0 } => wish.RoadSpeeds.Select((speed, k) => $"{Plain(units.Speed.FromBase(speed))}{(k == wish.RoadSpeeds.Count - 1 ? $" {units.Speed}" : "")}"),
        _ => EngineSpeeds(wish).Select(speed => $"{Plain(Units.RevolutionPerMinute.FromBase(speed))}{(IsBeyond(speed, redline) ? Beyond : "")}"),
    };

    private static bool IsBeyond(double engineSpeed, Measured? redline) => engineSpeed > redline?.Value * (1 + 1e-9);

    private static string? Footnote(SpeedsWish? wish, Measured? redline, GearSpeeds speeds)
        => redline is null ? null
            : wish is { RoadSpeeds.Count: > 0 }
                ? wish.RoadSpeeds.Any(speed => speeds.Steps.Any(step => IsBeyond(speeds.EngineSpeed(step, speed).Value, redline))) ? Spoken($"{OverTheRedline}: beyond the redline of {Rpm(redline)} rev/min") : null
            : EngineSpeeds(wish).Any(speed => IsBeyond(speed, redline)) ? Spoken($"{Beyond} beyond the redline of {Rpm(redline)} rev/min") : null;

    private static IEnumerable<double> EngineSpeeds(SpeedsWish? wish) => wish is { EngineSpeeds.Count: > 0 } ? wish.EngineSpeeds : UsualColumns.Select(rpm => rpm / 60.0);

    private static IEnumerable<SpeedsRow> Rows(GearSpeeds speeds, IReadOnlyList<DriveStep> steps, Measured shift, bool isRedline, UnitSystem units, SpeedsWish? wish)
    {
        IReadOnlyList<IReadOnlyList<string>> columns = wish is { RoadSpeeds.Count: > 0 }
            ? [.. wish.RoadSpeeds.Select(speed => steps.Select(step => speeds.EngineSpeed(step, speed)).Select(n => isRedline && n.Value > shift.Value ? OverTheRedline : Rpm(n)).ToList())]
            : [.. EngineSpeeds(wish).Select(speed => Column([.. steps.Select(step => speeds.RoadSpeed(step, speed))], units.Speed))];
        return steps.Select((step, k) =>
        {
            var drop = speeds.Upshifts(shift).FirstOrDefault(upshift => upshift.From == step);
            return new SpeedsRow(step.Name, [Rounded.Fixed(step.Ratio.Value, 2), .. columns.Select(column => column[k]), drop is null ? "" : Rpm(drop.EngineSpeed)]);
        });
    }

    private static string Plain(double value) => Rounded.Fixed(value, Math.Abs(value - Math.Round(value)) < 0.05 ? 0 : 1);

    private static Sawtooth Chart(Driveline driveline, GearSpeeds speeds, OwnersGoals goals, double shift, UnitSystem units)
    {
        var (idle, highest) = ((driveline.Engine?.Idle?.Value.Value ?? AssumedIdle) * 60, shift * 60);
        var lines = speeds.Steps.Select(step => (step.Name, PerThousand: units.Speed.FromBase(speeds.PerThousand(step).Value)))
            .Select(gear => new GearLine(gear.Name, gear.PerThousand * idle / 1000, idle, gear.PerThousand * highest / 1000, highest)).ToList();
        return new()
        {
            Gears = lines,
            SpeedUnit = units.Speed.Symbol,
            EngineUnit = Units.RevolutionPerMinute.InWords,
            SpeedMax = lines[^1].ToSpeed,
            EngineMax = highest,
            Goal = goals.Cruise is [var goal, ..]
                ? new(units.Speed.FromBase(goal.Speed.Value), Math.Max(0, goal.Wanted.Low * 60), goal.Wanted.High * 60, Spoken("cruise goal"), driveline.Step(goal.Gear)?.Name)
                : null,
        };
    }

    private static string Missing(Driveline driveline)
        => driveline switch
        {
            { Transmission: null } => Spoken("No gearbox is fitted yet: fit one with its ratios, and the speeds appear."),
            { Steps.Count: 0 } => Spoken("The gearbox or transfer case has no ratios yet: enter them, and the speeds appear."),
            { DrivingAxle: null } => Spoken("No axle is fitted yet: fit one, and the speeds appear."),
            { DrivingAxle.Ratio: null } => Spoken("The axle's ratio is not known: count its turns, and the speeds appear."),
            { Tyres: null } => Spoken("No tyres are fitted yet: fit them, and the speeds appear."),
            _ => Spoken("The tyres' circumference is not known: roll them out or enter their size, and the speeds appear."),
        };

    // With as many places throughout as the least certain of them has: 65.4 over 87 reads as if one were better known.
    private static IReadOnlyList<string> Column(IReadOnlyList<Measured> values, Unit unit)
    {
        var places = values.Min(value => value.IsExact ? 1 : Math.Min(1, Rounded.Places(unit.FromBase(value.Expanded95))));
        return [.. values.Select(value => Rounded.Fixed(unit.FromBase(value.Value), places))];
    }

    private static string Rpm(Measured value)
        => Rounded.Fixed(Units.RevolutionPerMinute.FromBase(value.Value), value.IsExact ? 0 : Math.Min(0, Rounded.Places(Units.RevolutionPerMinute.FromBase(value.Expanded95))));
}
