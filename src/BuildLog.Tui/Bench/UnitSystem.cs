using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Bench;

/// <summary>The units a person wants to read.</summary>
public sealed record UnitSystem(Unit Length, Unit Speed)
{
    public static readonly UnitSystem Metric = new(Units.Metre, Units.KilometrePerHour);

    public static readonly UnitSystem Imperial = new(Units.Inch, Units.MilePerHour);
}
