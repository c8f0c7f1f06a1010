using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.RoadLoad;

/// <summary>The force that a steady road speed takes at the wheels.</summary>
/// <param name="Mass">Kilograms.</param>
/// <param name="RollingResistance">Crr, rolling resistance over weight.</param>
/// <param name="DragArea">Cd·A, m².</param>
/// <param name="AirDensity">kg/m³.</param>
/// <remarks>
/// <code>F = m g (Crr cos θ + sin θ) + ½ ρ Cd A v²;   θ = atan(gradient)</code>
/// <para>F newtons; v m/s, through still air; gradient rise over run, as on the road sign.</para>
/// <para>
/// Uncertainty: of what is put in. Crr is taken as constant; it rises with speed, by some per cent to 120 km/h. Not for: wind, bends, acceleration.
/// </para>
/// <para>Source: standard vehicle mechanics; with f0 and f2 the road-load form of UNECE GTR 15, annex 4.</para>
/// </remarks>
public sealed record DrivingResistance(Measured Mass, Measured RollingResistance, Measured DragArea, Measured AirDensity)
{
    /// <summary>m, kg; above zero.</summary>
    public Measured Mass { get; init => field = value.AboveZero(Spoken("A mass"), "1500 kg"); } = Mass.AboveZero(Spoken("A mass"), "1500 kg");

    /// <summary>Crr, force over weight; not below zero.</summary>
    public Measured RollingResistance { get; init => field = value.NotBelowZero(Spoken("A rolling resistance"), "0.014"); } = RollingResistance.NotBelowZero(Spoken("A rolling resistance"), "0.014");

    /// <summary>Cd·A, m²; not below zero.</summary>
    public Measured DragArea { get; init => field = value.NotBelowZero(Spoken("A drag area"), "0.8 m²"); } = DragArea.NotBelowZero(Spoken("A drag area"), "0.8 m²");

    /// <summary>ρ, kg/m³; not below zero.</summary>
    public Measured AirDensity { get; init => field = value.NotBelowZero(Spoken("An air density"), "1.2"); } = AirDensity.NotBelowZero(Spoken("An air density"), "1.2");

    /// <summary>Newtons.</summary>
    public Measured Weight => Mass * Units.Gravity;

    /// <summary>Null where mass, drag area or rolling resistance is not known.</summary>
    public static DrivingResistance? Of(VehicleLoad? load)
        => load is { Mass: { } mass, RollingResistance: { } rolling, DragArea: { } area }
            ? new(mass.Value, rolling.Value, area.Value, load.Air.Density)
            : null;

    /// <summary>½ ρ Cd A v², newtons, at a speed in m/s through still air.</summary>
    public Measured Drag(Measured speed) => AirDensity * DragArea * speed * speed * 0.5;

    /// <summary>Newtons at a speed in m/s, on the level.</summary>
    public Measured At(Measured speed) => (Weight * RollingResistance) + Drag(speed);

    /// <summary>Newtons at a speed in m/s, up a gradient.</summary>
    public Measured At(Measured speed, double gradient)
    {
        var theta = Math.Atan(gradient);
        return (Weight * ((RollingResistance * Math.Cos(theta)) + Math.Sin(theta))) + Drag(speed);
    }

    /// <summary>The same on the level as coefficients of a coast-down, without uncertainty.</summary>
    public RoadLoadCurve Curve => new((Weight * RollingResistance).Value, 0, (AirDensity * DragArea).Value / 2);
}
