using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Tyres;

/// <summary>How a tyre's design diameter is known.</summary>
public enum DimensionsFrom
{
    /// <summary>It follows from the marking by a rule.</summary>
    Formula,

    /// <summary>It stands in a table under the marking.</summary>
    Table,
}

/// <summary>A tyre's design diameter and where it comes from.</summary>
/// <param name="Diameter">New tyre, free, metres.</param>
/// <param name="From">By rule or out of a table.</param>
/// <param name="Source">Which rule or table; says so where it is only from memory.</param>
/// <param name="Spread">Relative standard uncertainty: what tyres of one marking differ by, more where the source is weaker.</param>
/// <exception cref="RefusedException">A diameter that is not above zero, or a spread below zero.</exception>
public sealed record Dimensions(double Diameter, DimensionsFrom From, string Source, double Spread)
{
    /// <summary>New tyre, free, metres; above zero.</summary>
    public double Diameter { get; init => field = value.AboveZero(Spoken("A tyre's diameter, m,"), "0.668"); } = Diameter.AboveZero(Spoken("A tyre's diameter, m,"), "0.668");

    /// <summary>Relative standard uncertainty; zero or more.</summary>
    public double Spread { get; init => field = value.NotBelowZero(Spoken("A tyre's spread"), "0.01"); } = Spread.NotBelowZero(Spoken("A tyre's spread"), "0.01");

    internal static Dimensions ByFormula(double diameter, string source, double spread) => new(diameter, DimensionsFrom.Formula, source, spread);

    internal static Dimensions ByTable(double diameter, string source, double spread) => new(diameter, DimensionsFrom.Table, source, spread);
}

/// <summary>How a diameter is known, in words.</summary>
public static class DimensionsWords
{
    /// <summary><c>formula</c> or <c>table</c>.</summary>
    public static string InWords(this DimensionsFrom from) => from == DimensionsFrom.Table ? Spoken("table") : Spoken("formula");
}
