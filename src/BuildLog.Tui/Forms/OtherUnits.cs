using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Forms;

/// <summary>What a typed quantity is in the other system of units, for the line under its entry.</summary>
public static class OtherUnits
{
    private const int Figures = 4;

    private static readonly HashSet<string> Imperial = new(["in", "ft", "mi", "mph", "lb", "psi", "lb·ft", "hp", "sq ft", "lbf"], StringComparer.Ordinal);

    private static readonly IReadOnlyDictionary<string, string> Other = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["mm"] = "in",
        ["cm"] = "in",
        ["m"] = "ft",
        ["km"] = "mi",
        ["in"] = "mm",
        ["ft"] = "m",
        ["mi"] = "km",
        ["km/h"] = "mph",
        ["mph"] = "km/h",
        ["m/s"] = "km/h",
        ["kg"] = "lb",
        ["lb"] = "kg",
        ["t"] = "lb",
        ["bar"] = "psi",
        ["kPa"] = "psi",
        ["psi"] = "bar",
        ["N·m"] = "lb·ft",
        ["lb·ft"] = "N·m",
        ["kW"] = "hp",
        ["hp"] = "kW",
        ["PS"] = "kW",
        ["m²"] = "sq ft",
        ["sq ft"] = "m²",
        ["N"] = "lbf",
        ["kN"] = "lbf",
        ["lbf"] = "N",
    };

    /// <summary>The echo of an entry; says nothing while the text is not understood.</summary>
    public static Func<FormValues, string?> Of(string id, Func<string, Parsed<Typed>> read)
        => values => read(values[id]).Understood(out var typed) ? InWords(typed) : null;

    /// <summary><c>= 4.5 in</c> for 114.3 mm; of a bare number the unit it was taken in as well; null for what every system writes alike.</summary>
    public static string? InWords(Typed typed)
        => string.Join(' ', new[] { typed is { IsBare: true, Unit.Symbol.Length: > 0 } ? In(typed, typed.Unit) : null, Converted(typed) }.OfType<string>().Select(words => $"= {words}")) is { Length: > 0 } said ? said : null;

    /// <summary>What it is in the other system, <c>4.5 in</c> for 114.3 mm; null for what every system writes alike.</summary>
    public static string? Converted(Typed typed)
        => Other.TryGetValue(typed.Unit.Symbol, out var symbol) ? In(typed, Units.Of(typed.Unit.Kind).First(each => each.Symbol == symbol)) : null;

    /// <summary>Whether a unit is one of inches, pounds and miles, or of metres and kilograms; null for one of both.</summary>
    public static bool? IsImperial(Unit unit) => Other.ContainsKey(unit.Symbol) ? Imperial.Contains(unit.Symbol) : null;

    /// <summary>What it is in another unit, as closely as it was typed.</summary>
    public static string In(Typed typed, Unit unit)
        => typed.StandardUncertainty > 0
            ? Rounded.WithInterval(typed.ToMeasured(Spoken("as typed")), unit)
            : Rounded.WithUnit(ToFigures(unit.FromBase(typed.Value)), unit);

    // Four figures tell a tape's millimetre; zeros behind the last of them say nothing.
    private static string ToFigures(double value)
    {
        var places = value == 0 ? 0 : Math.Clamp(Figures - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, Figures);
        var shown = Rounded.Fixed(value, places);
        return places > 0 ? shown.TrimEnd('0').TrimEnd('.', ',') : shown;
    }
}
