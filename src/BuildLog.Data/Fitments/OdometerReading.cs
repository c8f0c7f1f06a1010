using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Fitments;

/// <summary>What the odometer showed: metres, the unit, and the text as typed.</summary>
public sealed record OdometerReading
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
        var read = QuantityText.Read(text, Kind.Length, unit == OdometerUnit.Miles ? Units.Mile : Units.Kilometre).OnARoad(text);
        if (!read.Understood(out var typed)) throw new RefusedException("odometer", read.Refusal!.Message, Example);
        return typed.Value is >= 0 and <= Most
            ? new(typed.Value, typed.Unit.Symbol, typed.Text)
            : throw new RefusedException("odometer", Spoken($"{Shown.Quoted(typed.Text)} is no odometer reading."), Example);
    }
}
