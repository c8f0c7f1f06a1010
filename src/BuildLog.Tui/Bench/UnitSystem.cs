using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Bench;

/// <summary>The units a person wants to read.</summary>
public sealed record UnitSystem(Unit Length, Unit Speed)
{
    /// <summary>The unit to show for one that a result is worded in: lengths follow the system, where what is measured with a caliper stays in millimetres.</summary>
    public Unit Shown(Unit unit) => unit.Kind == Kind.Length && !(Length == Units.Metre && unit == Units.Millimetre) ? Length : unit;

    public Unit Mass => Speed == Units.MilePerHour ? Units.Pound : Units.Kilogram;

    public static readonly UnitSystem Metric = new(Units.Metre, Units.KilometrePerHour);

    public static readonly UnitSystem Imperial = new(Units.Inch, Units.MilePerHour);
}
