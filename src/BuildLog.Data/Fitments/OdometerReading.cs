using System.Globalization;
using System.Text.RegularExpressions;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Fitments;

/// <summary>What the odometer showed: metres, the unit, and the text as typed.</summary>
public sealed partial record OdometerReading
{
    private const double Most = 10_000_000_000;
    private const string Example = "84 210 km";

    internal OdometerReading(double metres, string unit, string text) => (Metres, Unit, Text) = (metres, unit, text);

    public double Metres { get; private init; }

    public string Unit { get; private init; }

    public string Text { get; private init; }

    /// <summary>The text with its unit, for sentences and lists.</summary>
    public string InWords => AsWritten.InWords(Text, Units.Spelt(Unit)!);

    /// <summary>Reads <c>84 210</c> in the vehicle's unit, or <c>84210 km</c>; empty text is no reading.</summary>
    /// <exception cref="RefusedException">The text is no odometer reading.</exception>
    public static OdometerReading? Read(string text, OdometerUnit unit)
    {
        if (string.IsNullOrWhiteSpace(text)) return null;
        var typed = ReadDistance(text, unit).OrRefuse();
        return new(typed.Value, typed.Unit.Symbol, typed.Text);
    }

    /// <summary>The distance that an odometer showed, a bare number in the vehicle's unit.</summary>
    /// <remarks><c>84.210</c> is a thousand times as far to half of those who write it so: it is refused, as <c>84,210</c> is. What is stored is not read again.</remarks>
    public static Parsed<Typed> ReadDistance(string text, OdometerUnit unit)
    {
        if (PointedThousands().Match(text) is { Success: true } pointed)
        {
            var (whole, thousandths) = (pointed.Groups["whole"].Value, pointed.Groups["thousandths"].Value);
            return new Refusal("odometer", Spoken($"{Shown.Quoted(text.Trim())} could be {whole} {thousandths} or {Rounded.Exact(double.Parse($"{whole}.{thousandths}", CultureInfo.InvariantCulture))}: write it without the point."), $"{whole} {thousandths}");
        }

        var read = QuantityText.Read(text, Kind.Length, unit == OdometerUnit.Miles ? Units.Mile : Units.Kilometre).OnARoad(text);
        return !read.Understood(out var typed) ? new Refusal("odometer", read.Refusal!.Message, Example)
            : typed.Value is >= 0 and <= Most ? typed
            : new Refusal("odometer", Spoken($"{Shown.Quoted(typed.Text)} is no odometer reading."), Example);
    }

    // Before 0.120 nobody means thousands, nor behind four digits, nor where another mark follows.
    [GeneratedRegex(@"^\s*(?<whole>[1-9][0-9]{0,2})\.(?<thousandths>[0-9]{3})(?![0-9.,])", RegexOptions.CultureInvariant)]
    private static partial Regex PointedThousands();
}
