using System.Globalization;
using System.Text.RegularExpressions;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Drivelines;

/// <summary>A length that somebody states is as sure as half its last digit, or as the ± typed with it.</summary>
/// <remarks>u = half the last digit / √3 (JCGM 100:2008, F.2.2.1). The last digit of <c>80 1/4 in</c> is a quarter of an inch.</remarks>
internal static partial class QuotedLength
{
    public static Measured Measured(Noted stated, string name)
    {
        var typed = QuantityText.Read(stated.Text, Kind.Length).OrRefuse();
        if (typed.StandardUncertainty > 0) return typed.ToMeasured(name);

        var evidence = new Evidence(Spoken($"{name} as stated"), _ => Spoken("roll the tyres out with the vehicle standing on them"));
        return Gearing.Measurements.Measured.From(typed.Value, Input.Rectangular(Spoken($"{name}, last digit of {stated.Text}"), LastDigit(stated.Text, typed.Unit) / 2, evidence));
    }

    /// <summary>One of the last digit, in base units; the 2 of <c>m2</c> is none. A bare number is in the unit that was taken for granted.</summary>
    internal static double LastDigit(string text, Unit first)
    {
        var last = LastNumber().Match(text);
        var spelt = last.Groups["unit"].Value.Trim();
        var unit = spelt.Length == 0 ? first : Units.Spelt(spelt) ?? first;
        if (last.Groups["parts"].Success) return unit.ToBase(1 / double.Parse(last.Groups["parts"].Value, CultureInfo.InvariantCulture));
        return unit.ToBase(Math.Pow(10, -last.Groups["decimals"].Length));
    }

    [GeneratedRegex(@"(?:/(?<parts>\d+)|\d(?:[.,](?<decimals>\d+))?)(?<unit>[^\d]*(?:\p{L}2)?)$", RegexOptions.CultureInvariant)]
    private static partial Regex LastNumber();
}
