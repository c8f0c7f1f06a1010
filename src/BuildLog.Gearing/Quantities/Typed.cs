using System.Globalization;
using System.Text.RegularExpressions;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Quantities;

/// <summary>A quantity as somebody typed it: what it is in base units, the unit that was used, and the very text.</summary>
/// <param name="Value">In the base unit of the kind.</param>
/// <param name="Unit">The first unit that was typed, or the one that was taken for granted.</param>
/// <param name="Text">The text as typed, trimmed.</param>
/// <param name="StandardUncertainty">From a typed <c>± …</c> (a 95 % half-width) or <c>u=…</c>; zero if none was typed.</param>
public sealed partial record Typed(double Value, Unit Unit, string Text, double StandardUncertainty = 0)
{
    /// <summary>No unit was typed: the usual one was taken for granted, which has to be said.</summary>
    public bool IsBare { get; init; }

    /// <summary>As typed, for whoever reads it; see <see cref="AsWritten"/>.</summary>
    public string InWords => AsWritten.InWords(Text, Unit);

    /// <summary>The value in the unit that was typed.</summary>
    public double InUnit => Unit.FromBase(Value);

    /// <summary>One of the last digit, in base units: <c>80 1/4 in</c> has a quarter of an inch, the 2 of <c>m2</c> is none.</summary>
    public double LastDigit
    {
        get
        {
            var last = LastNumber().Match(Text);
            var spelt = last.Groups["unit"].Value.Trim();
            var unit = spelt.Length == 0 ? Unit : Units.Spelt(spelt) ?? Unit;
            return last.Groups["parts"].Success
                ? unit.ToBase(1 / double.Parse(last.Groups["parts"].Value, CultureInfo.InvariantCulture))
                : unit.ToBase(Math.Pow(10, -last.Groups["decimals"].Length));
        }
    }

    /// <summary>The value with its typed ± as the one input, named so in a budget; exact where none was typed: for what is meant as it stands.</summary>
    public Measured ToMeasured(string name)
        => StandardUncertainty == 0
            ? Value
            : Measured.From(Value, new Input(name, StandardUncertainty, new Evidence(name, _ => Spoken($"measure the {name} more closely than typed ({InWords})"))));

    /// <summary>The value as sure as its typed ±, else as half its last digit: for what somebody measured or was told.</summary>
    /// <param name="name">What it is, without an article.</param>
    /// <param name="settle">How to know it better; null for measuring it more closely.</param>
    /// <remarks>u = half the last digit / √3 (JCGM 100:2008, F.2.2.1).</remarks>
    public Measured ToItsLastDigit(string name, string? settle = null)
        => StandardUncertainty > 0
            ? ToMeasured(name)
            : Measured.From(Value, Input.Rectangular(
                Spoken($"{name}, last digit of {InWords}"), LastDigit / 2, new Evidence(name, _ => settle ?? Spoken($"measure the {name} more closely than it is noted ({InWords})"))));

    [GeneratedRegex(@"(?:/(?<parts>\d+)|\d(?:[.,](?<decimals>\d+))?)(?<unit>[^\d]*(?:\p{L}2)?)$", RegexOptions.CultureInvariant)]
    private static partial Regex LastNumber();
}
