using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Gearing.RoadLoad;

/// <summary>The diagram of force at the wheels over road speed: a curve for each gear, a line for each gradient, and the grip above all.</summary>
/// <param name="Gears">One curve a gear, from the lowest up.</param>
/// <param name="Gradients">Resistance on each gradient asked for.</param>
/// <param name="SlipCap">μ · load on the wheels that are driven on the road, newtons; null where that load is not known.</param>
/// <remarks>Plain numbers without uncertainty: it is for looking at. Formula: <see cref="Pull"/>, <see cref="DrivingResistance"/>.</remarks>
public sealed record TractiveEffort(IReadOnlyList<EffortCurve> Gears, IReadOnlyList<ResistanceLine> Gradients, double? SlipCap)
{
    /// <summary>The diagram of a driveline.</summary>
    /// <remarks>Each gear from the first point of the torque curve to the highest engine speed, cut where the tyres slip on the road; each gradient from rest to the fastest of these.</remarks>
    /// <param name="pull">The driveline and its load.</param>
    /// <param name="gradients">Rise over run.</param>
    /// <param name="points">Points a curve, at least two.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than two points.</exception>
    public static TractiveEffort Of(Pull pull, IReadOnlyList<double> gradients, int points = 40)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(points, 2);
        var load = pull.Driveline.Load!;
        var cap = DrivenWheels.ShareOnTheRoad(pull.Driveline) is { } share ? (load.Grip.Value * share * pull.Resistance.Weight).Value : (double?)null;

        EffortCurve[] gears = [.. pull.Steps.Select(step => Curve(pull, step, cap, points))];
        var fastest = gears.Max(gear => gear.Points[^1].Speed);
        return new(
            gears,
            [.. gradients.Select(gradient => new ResistanceLine(gradient,
                [.. Enumerable.Range(0, points).Select(k => fastest * k / (points - 1)).Select(v => new EffortPoint(v, pull.Resistance.At(v, gradient).Value, false))]))],
            cap);
    }

    private static EffortCurve Curve(Pull pull, DriveStep step, double? cap, int points)
    {
        double from = pull.Torque.From, to = pull.HighestEngineSpeed.Value;
        return new(step.Name,
        [
            .. Enumerable.Range(0, points).Select(k =>
            {
                var n = from + ((to - from) * k / (points - 1));
                var v = pull.RoadSpeed(step, n).Value;
                var force = pull.Force(step, v)!.Value;
                return new EffortPoint(v, Math.Min(force, cap ?? force), force > cap);
            }),
        ]);
    }
}

/// <summary>One gear's curve.</summary>
public sealed record EffortCurve(string Gear, IReadOnlyList<EffortPoint> Points);

/// <summary>What a gradient takes, rise over run.</summary>
public sealed record ResistanceLine(double Gradient, IReadOnlyList<EffortPoint> Points);

/// <summary>Road speed in m/s and force in newtons; whether grip cut it.</summary>
public readonly record struct EffortPoint(double Speed, double Force, bool CutByGrip);
