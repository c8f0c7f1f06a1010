using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Sheet.Content;
using BuildLog.Tui.Workbench;
using RoadLoad = BuildLog.Gearing.RoadLoad;

namespace BuildLog.Tui.Bench;

/// <summary>What a driveline can pull over road speed, a curve for each gear, for screen and sheet alike.</summary>
internal static class PullCurves
{
    /// <summary>Points of a curve.</summary>
    public const int Points = 48;

    private const double LevelRoad = 0;

    /// <summary>The charts of the page of speeds; null where a number they need is not known.</summary>
    public static PullCharts? Of(Driveline driveline, UnitSystem units)
        => RoadLoad.Pull.Of(driveline) is { } pull ? new(Reserve(pull, units), Hills(pull, units)) : null;

    /// <summary>What has to be known first; empty where nothing is missing.</summary>
    public static string Missing(Driveline driveline)
        => (string.Join(", ", OfEngine(driveline)), string.Join(", ", OfVehicle(driveline))) switch
        {
            ("", "") => "",
            (var engine, "") => Spoken($"Reserve and hills need {engine}: enter it with the engine (f)."),
            ("", var vehicle) => Spoken($"Reserve and hills need {vehicle}: enter it with the vehicle (e)."),
            var (engine, vehicle) => Spoken($"Reserve and hills need {engine}, entered with the engine (f), and {vehicle}, entered with the vehicle (e)."),
        };

    /// <summary>What is not known of the engine and the vehicle, each a noun.</summary>
    public static IReadOnlyList<string> Lacks(Driveline driveline) => [.. OfEngine(driveline), .. OfVehicle(driveline)];

    private static IReadOnlyList<string> OfEngine(Driveline driveline) =>
    [
        .. driveline.Engine?.Torque is null ? (string[])[Spoken("the engine's torque")] : [],
        .. driveline.Engine is { BeginsAboveRedline: true } ? (string[])[Spoken("the engine's torque below its redline")] : [],
    ];

    // By the entries of the vehicle's form: a class will do where nobody measured.
    private static IReadOnlyList<string> OfVehicle(Driveline driveline) =>
    [
        .. driveline.Load?.Mass is null ? (string[])[Spoken("the vehicle's mass")] : [],
        .. driveline.Load?.DragArea is null ? (string[])[Spoken("the drag area or the kind of body")] : [],
        .. driveline.Load?.RollingResistance is null ? (string[])[Spoken("the rolling resistance or the kind of tyres")] : [],
    ];

    /// <summary>Force that is left on the level, and so the power to accelerate or climb; none below zero.</summary>
    public static CurveChart Reserve(RoadLoad.Pull pull, UnitSystem units)
    {
        var unit = units.Force;
        return new()
        {
            Title = Spoken("Force left on the level in each gear"),
            Across = Spoken($"road speed, {units.Speed}"),
            Up = Spoken($"force left, {unit}"),
            Curves = Gears(pull, units, (step, v) => pull.Reserve(step, v) is { Value: >= 0 } reserve ? unit.FromBase(reserve.Value) : null),
        };
    }

    /// <summary>No hill is held on which the wheels spin.</summary>
    public static CurveChart Hills(RoadLoad.Pull pull, UnitSystem units)
    {
        var grip = RoadLoad.HillStart.ByGripOnTheRoad(pull)?.Value ?? double.PositiveInfinity;
        var gears = Gears(pull, units, (step, v) => pull.Hill(step, v) is { Value: >= LevelRoad } hill ? Units.PercentUnit.FromBase(Math.Min(hill.Value, grip)) : null);
        var fastest = gears.SelectMany(gear => gear.Points).Select(point => point.X).DefaultIfEmpty().Max();
        return new()
        {
            Title = Spoken("Steepest hill held in each gear"),
            Across = Spoken($"road speed, {units.Speed}"),
            Up = Spoken($"gradient, {Units.PercentUnit}"),
            Curves = [.. gears, .. double.IsFinite(grip) ? [WheelsSpin(Units.PercentUnit.FromBase(grip), fastest)] : Array.Empty<Curve>()],
        };
    }

    /// <summary>A level line: above it the tyres let go.</summary>
    public static Curve WheelsSpin(double at, double fastest) => new(Spoken("wheels spin"), CurveKind.Limit, [new(0, at), new(fastest, at)]);

    /// <summary>A curve for each gear, over what the engine turns in it.</summary>
    public static IReadOnlyList<Curve> Gears(RoadLoad.Pull pull, UnitSystem units, Func<DriveStep, Measured, double?> value)
        => [.. pull.Steps.Select(step => new Curve(step.Name, CurveKind.Does, [.. Along(pull, step, units, value)]))];

    private static IEnumerable<CurvePoint> Along(RoadLoad.Pull pull, DriveStep step, UnitSystem units, Func<DriveStep, Measured, double?> value)
    {
        double from = pull.Torque.From, to = pull.HighestEngineSpeed.Value;
        foreach (var n in Enumerable.Range(0, Points).Select(k => from + ((to - from) * k / (Points - 1))))
        {
            var v = pull.RoadSpeed(step, n).Value;
            if (value(step, v) is { } y) yield return new(units.Speed.FromBase(v), y);
        }
    }
}
