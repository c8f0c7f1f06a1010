using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;

namespace BuildLog.Gearing.Tests.Drivelines;

/// <summary>An invented propshaft to be changed by each test: 3.0 × 0.083 in, 60 in long, 3° at both joints, yokes in line; everything exact.</summary>
/// <remarks>By the trade's formula its critical speed is 5393.67 rev/min (worked example E2).</remarks>
internal static class InventedShaft
{
    public const double Degree = Math.PI / 180;

    public static readonly ShaftPiece Piece = new(Known(3.0 * 0.0254), Known(0.083 * 0.0254), Known(60 * 0.0254), Yokes.InLine);

    public static readonly Propshaft Plain = new("propshaft", Piece) { Line = Line(3, 6, 3) };

    /// <summary>The invented car with it, and an engine that goes to <paramref name="redline"/> rev/min in a direct top gear.</summary>
    public static Driveline Car(double redline, Propshaft? shaft = null)
        => InventedCar.Plain with { Engine = new("engine", Redline: Known(redline / 60)), Propshaft = shaft ?? Plain };

    /// <summary>Slopes in degrees, from the gearbox to the pinion, the front ends high.</summary>
    public static IReadOnlyList<Inclination> Line(params double[] side) => [.. side.Select(angle => new Inclination(Known(angle * Degree)))];

    public static Known Known(Measured value) => new(value, Source.Measured);
}
