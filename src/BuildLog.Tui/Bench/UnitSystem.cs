using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Bench;

/// <summary>The units a person wants to read.</summary>
public sealed record UnitSystem(Unit Length, Unit Speed)
{
    public static readonly UnitSystem Metric = new(Units.Metre, Units.KilometrePerHour);

    public static readonly UnitSystem Imperial = new(Units.Inch, Units.MilePerHour);

    public Unit Mass => IsImperial ? Units.Pound : Units.Kilogram;

    public Unit Torque => IsImperial ? Units.PoundFoot : Units.NewtonMetre;

    public Unit Power => IsImperial ? Units.Horsepower : Units.Kilowatt;

    /// <summary>What pulls at the wheels.</summary>
    public Unit Force => Units.Spelt(IsImperial ? "lbf" : "kN")!;

    /// <summary>A round road speed to speak of.</summary>
    public double RoundSpeed => IsImperial ? 60 : 100;

    private bool IsImperial => Speed == Units.MilePerHour;

    /// <summary>The unit to show for one that a result is worded in. In the metric one, what is measured with a caliper stays in millimetres; rims are sold in inches in both.</summary>
    public Unit Shown(Unit unit) => unit.Kind switch
    {
        Kind.Length when unit != Units.Inch => !IsImperial && unit == Units.Millimetre ? unit : Length,
        Kind.Speed => Speed,
        Kind.Mass => Mass,
        Kind.Torque => Torque,
        Kind.Power => Power,
        Kind.Force => Force,
        _ => unit,
    };
}
