using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>Numbers and words as the sentences of the checks have them.</summary>
internal static class Said
{
    /// <summary>With its interval, and with no more than so many decimals, however well the inputs are known.</summary>
    public static string Number(Measured value, Unit unit, int places)
    {
        var half = unit.FromBase(value.Expanded95);
        return half == 0 || Rounded.Places(half) > places
            ? Rounded.WithUnit(Rounded.Fixed(unit.FromBase(value.Value), places), unit)
            : Rounded.WithInterval(value, unit);
    }

    /// <summary>So much or more, rounded up to whole units or decimals.</summary>
    public static string OrMore(double value, Unit unit, int places) => Rounded.Within(unit.FromBase(value), double.PositiveInfinity, places, unit);

    /// <summary>So much or less, rounded down.</summary>
    public static string OrLess(double value, Unit unit, int places) => Rounded.Within(double.NegativeInfinity, unit.FromBase(value), places, unit);

    public static string Between(double low, double high, Unit unit, int places) => Rounded.Within(unit.FromBase(low), unit.FromBase(high), places, unit);

    public static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
