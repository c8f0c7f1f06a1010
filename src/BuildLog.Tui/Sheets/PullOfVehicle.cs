using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Sheet.Content;
using BuildLog.Tui.Bench;
using RoadLoad = BuildLog.Gearing.RoadLoad;

namespace BuildLog.Tui.Sheets;

/// <summary>The pull of a driveline as curves for paper: plain numbers, to be looked at; what has to be judged stands among the findings with its ±.</summary>
internal static class PullOfVehicle
{
    private const int Points = PullCurves.Points;

    /// <summary>How far above the engine's best the road load is still drawn.</summary>
    private const double LoadAbovePeak = 1.15;

    /// <summary>Hills whose resistance is drawn against the force, rise over run.</summary>
    private static readonly IReadOnlyList<double> HillsDrawn = [0, 0.1, 0.2, 0.3];

    /// <summary>Null where a number it needs is not known.</summary>
    public static Pull? Of(Driveline driveline, UnitSystem units)
        => RoadLoad.Pull.Of(driveline) is { } pull ? new(Power(pull, units), PullCurves.Hills(pull, units), Note(pull, units)) { Effort = Effort(pull, units) } : null;

    private static CurveChart Power(RoadLoad.Pull pull, UnitSystem units)
    {
        var unit = units.Power;
        var gears = PullCurves.Gears(pull, units, (step, v) => pull.PowerAtWheels(step, v) is { } power ? unit.FromBase(power.Value) : null);
        var fastest = pull.Steps.Max(step => pull.RoadSpeed(step, pull.HighestEngineSpeed).Value);
        var highest = gears.SelectMany(gear => gear.Points).Max(point => point.Y) * LoadAbovePeak;
        var load = Enumerable.Range(0, Points).Select(k => fastest * k / (Points - 1))
            .Select(v => new CurvePoint(units.Speed.FromBase(v), unit.FromBase(pull.Resistance.Curve.Power(v))))
            .TakeWhile(point => point.Y <= highest);
        return new()
        {
            Title = Spoken("Power at the wheels and road load"),
            Across = Spoken($"road speed, {units.Speed}"),
            Up = Spoken($"power, {unit}"),
            Curves = [.. gears, new(Spoken("road load"), CurveKind.Needs, [.. load])],
        };
    }

    private static CurveChart Effort(RoadLoad.Pull pull, UnitSystem units)
    {
        var effort = RoadLoad.TractiveEffort.Of(pull, HillsDrawn, Points);
        IReadOnlyList<CurvePoint> Drawn(IEnumerable<RoadLoad.EffortPoint> points) => [.. points.Select(point => new CurvePoint(units.Speed.FromBase(point.Speed), units.Force.FromBase(point.Force)))];

        var fastest = effort.Gears.Max(gear => gear.Points[^1].Speed);
        return new()
        {
            Title = Spoken("Force at the wheels against hills"),
            Across = Spoken($"road speed, {units.Speed}"),
            Up = Spoken($"force, {units.Force}"),
            Curves =
            [
                .. effort.Gears.Select(gear => new Curve(gear.Gear, CurveKind.Does, Drawn(gear.Points))),
                .. effort.Gradients.Select(hill => new Curve(Rounded.WithUnit(Rounded.Fixed(Units.PercentUnit.FromBase(hill.Gradient), 0), Units.PercentUnit), CurveKind.Needs, Drawn(hill.Points))),
                .. effort.SlipCap is { } cap
                    ? [PullCurves.WheelsSpin(units.Force.FromBase(cap), units.Speed.FromBase(fastest))]
                    : Array.Empty<Curve>(),
            ],
        };
    }

    private static string Note(RoadLoad.Pull pull, UnitSystem units)
    {
        var load = pull.Driveline.Load!;
        var mass = Rounded.Value(load.Mass!.Value, units.Mass);
        return Spoken($"Full throttle, still air, {mass} ({load.Mass.Source.InWords()}); drag {load.DragArea!.Source.InWords()}, rolling resistance {load.RollingResistance!.Source.InWords()}; where wheels spin, a grip of {Rounded.WithInterval(load.Grip.Value, Units.One)} ({load.Grip.Source.InWords()}).");
    }
}
