using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.Speeds;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.Options;

/// <summary>One figure of every driveline compared; null where it cannot be said.</summary>
public sealed record ComparedFigure(string What, Unit Unit, IReadOnlyList<Measured?> Values)
{
    /// <summary>What is missing where it cannot be said, each with the cheapest way to get it.</summary>
    public IReadOnlyList<string> Lacking { get; init; } = [];
}

/// <summary>One of the drivelines compared.</summary>
/// <param name="Name">The head of its column.</param>
/// <param name="Driveline">What is judged.</param>
/// <param name="Cost">What its parts cost, in words; null where nobody named a price.</param>
public sealed record ComparedDriveline(string Name, Driveline Driveline, string? Cost = null);

/// <summary>Two to four drivelines side by side, such as now, one tyre size up, an overdrive, another axle.</summary>
/// <param name="Names">The columns.</param>
/// <param name="Figures">The rows.</param>
/// <param name="Costs">What each column costs, in words; null where it is not known.</param>
/// <param name="Counts">The verdicts of each column.</param>
public sealed record OptionComparison(IReadOnlyList<string> Names, IReadOnlyList<ComparedFigure> Figures, IReadOnlyList<string?> Costs, IReadOnlyList<VerdictCounts> Counts)
{
    private const int Fewest = 2;
    private const int Most = 4;

    /// <exception cref="RefusedException">Fewer than two or more than four.</exception>
    public static OptionComparison Of(OwnersGoals goals, params IReadOnlyList<ComparedDriveline> columns)
    {
        if (columns.Count is < Fewest or > Most)
            throw new RefusedException("compare", Spoken($"{Fewest} to {Most} options are compared side by side, not {columns.Count}."), "");

        ComparedFigure Row(string what, Unit unit, Func<Driveline, Measured?> figure, Func<Driveline, IEnumerable<Missing>> missing)
        {
            var values = columns.Select(column => figure(column.Driveline)).ToList();
            var lacking = columns.Where((_, k) => values[k] is null).SelectMany(column => missing(column.Driveline)).Select(entry => $"{entry.What}: {entry.Cure}");
            return new(what, unit, values) { Lacking = [.. lacking.Distinct()] };
        }

        return new(
            [.. columns.Select(column => column.Name)],
            [
                Row(Spoken("overall ratio in top"), Units.One, Overall, Ratios),
                .. goals.Cruise.Select(goal => Row(Spoken($"engine at {goal.Speed.InWords}"), Units.RevolutionPerMinute, driveline => CruiseCheck.EngineSpeed(driveline, goal), Speeds)),
                Row(Spoken("speed per 1000 rev/min in top"), Units.KilometrePerHour, driveline => GearSpeeds.Of(driveline) is { } speeds && driveline.Step(null) is { } top ? speeds.PerThousand(top) : null, Speeds),
                Row(Spoken("overall low ratio"), Units.One, LowRange.OverallRatio, driveline => [.. Ratios(driveline), .. Missing.LowRange(driveline)]),
                .. goals.Cruise.Take(1).Select(goal => Row(Spoken($"hill held at {goal.Speed.InWords}"), Units.PercentUnit, driveline => Hill(driveline, goal), driveline => ForHill(driveline, goal))),
                Row(Spoken("steepest start"), Units.PercentUnit, driveline => HillStart.Of(driveline)?.Gradient, driveline => [.. Missing.ForPull(driveline), .. Missing.LowRange(driveline), .. Missing.DrivenShare(driveline)]),
                Row(Spoken("top speed"), Units.KilometrePerHour, TopSpeedOf, ForTopSpeed),
                .. columns.Any(column => column.Driveline.Speedometer is not null)
                    ? [Row(Spoken("speedometer shows, of the truth"), Units.PercentUnit, driveline => SpeedometerCheck.Computed(driveline)?.Share, SpeedometerCheck.Lacking)]
                    : Array.Empty<ComparedFigure>(),
                .. columns.Select(column => column.Driveline.DrivingTyres?.Size?.Designation).Distinct().Count() > 1
                    ? [
                        Row(Spoken("tyre diameter"), Units.Millimetre, driveline => Size(driveline)?.OverallDiameter, Marking),
                        Row(Spoken("tyres good for"), Units.KilometrePerHour, driveline => Size(driveline)?.SpeedLimitKmh is { } kmh ? Units.KilometrePerHour.ToBase(kmh) : null, Marking),
                        Row(Spoken("one tyre carries"), Units.Kilogram, driveline => Size(driveline) is { LoadIndex: { } index } && LoadIndex.CapacityKg(index) is { } kilograms ? kilograms : null, Marking),
                    ]
                    : Array.Empty<ComparedFigure>(),
            ],
            [.. columns.Select(column => column.Cost)],
            [.. columns.Select(column => VerdictCounts.Of(AllChecks.Look(column.Driveline, goals)))]);
    }

    private static TyreSize? Size(Driveline driveline) => driveline.DrivingTyres?.Size;

    private static IEnumerable<Missing> Marking(Driveline driveline) => [new(Spoken("the marking of the tyres is not known"), Spoken("read size, load index and speed symbol on the side wall"))];

    private static Measured? Overall(Driveline driveline)
        => driveline.Step(null) is { } step && driveline.DrivingAxle?.Ratio is { } axle ? step.Ratio * axle.Value : null;

    // Where nothing bounds it, it is not known.
    private static Measured? TopSpeedOf(Driveline driveline) => Pull.Of(driveline) is { } pull && TopSpeed.Of(pull) is { Most: not null } top ? top.Likely : null;

    private static Measured? Hill(Driveline driveline, CruiseGoal goal)
        => driveline.Step(goal.Gear) is { } step ? Pull.Of(driveline)?.Hill(step, goal.Speed.ToMeasured(Spoken("road speed"))) : null;

    private static IEnumerable<Missing> Ratios(Driveline driveline) => [.. Missing.Gears(driveline), .. Missing.UntoldGear(driveline, null), .. Missing.HighRange(driveline), .. Missing.Axle(driveline)];

    private static IEnumerable<Missing> Speeds(Driveline driveline) => [.. Ratios(driveline), .. Missing.Tyres(driveline)];

    private static IEnumerable<Missing> ForTopSpeed(Driveline driveline) => [.. Missing.ForPull(driveline), .. driveline.Transmission?.Untold is { } untold ? [Missing.Told(untold)] : Array.Empty<Missing>()];

    private static IEnumerable<Missing> ForHill(Driveline driveline, CruiseGoal goal)
        => Pull.Of(driveline) is { } pull && driveline.Step(goal.Gear) is { } step ? [HillCheck.Beyond(pull, step, goal.Speed.ToMeasured(Spoken("road speed")))] : Missing.ForPull(driveline);
}
