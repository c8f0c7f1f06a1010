using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Data.Hunting;

/// <summary>What a window of a wanted part limits.</summary>
public enum WindowOf
{
    AxleRatio,
    TopGearRatio,
    OverdriveRatio,
    LowRangeRatio,
    Circumference,
    TyreDiameter,
    Width,
    Length,
}

public static class WindowOfWords
{
    public static string InWords(this WindowOf quantity) => quantity switch
    {
        WindowOf.AxleRatio => Spoken("axle ratio"),
        WindowOf.TopGearRatio => Spoken("top gear ratio"),
        WindowOf.OverdriveRatio => Spoken("overdrive ratio"),
        WindowOf.LowRangeRatio => Spoken("low range ratio"),
        WindowOf.Circumference => Spoken("rolling circumference"),
        WindowOf.TyreDiameter => Spoken("tyre diameter"),
        WindowOf.Width => Spoken("width"),
        WindowOf.Length => Spoken("length"),
        _ => throw new ArgumentOutOfRangeException(nameof(quantity), quantity, "No such window."),
    };

    /// <summary>The range of the ratio; null for a length.</summary>
    internal static RatioRange? Range(this WindowOf quantity) => quantity switch
    {
        WindowOf.AxleRatio => RatioRange.Axle,
        WindowOf.TopGearRatio => RatioRange.Gear,
        WindowOf.OverdriveRatio => RatioRange.Overdrive,
        WindowOf.LowRangeRatio => RatioRange.Transfer,
        _ => null,
    };

    /// <summary>What a text means for this quantity.</summary>
    public static Parsed<Typed> Read(this WindowOf quantity, string text)
        => quantity.Range() is { } range ? range.Read(text) : QuantityText.ReadPlain(text, Kind.Length);
}

/// <summary>Between which values a part will do, as typed; an empty side is open.</summary>
public sealed record WantedWindow(WindowOf Quantity, string Low, string High)
{
    /// <summary>In base units.</summary>
    /// <exception cref="RefusedException">A side means nothing.</exception>
    public Window Read() => new(
        Low.Trim().Length == 0 ? double.NegativeInfinity : Quantity.Read(Low).OrRefuse().Value,
        High.Trim().Length == 0 ? double.PositiveInfinity : Quantity.Read(High).OrRefuse().Value);

    internal void Check()
    {
        var window = Read();
        if (double.IsInfinity(window.Low) && double.IsInfinity(window.High))
            throw new RefusedException("window", Spoken($"Between which values will the {Quantity.InWords()} do?"), "2.85 to 3.21");
        if (window.IsEmpty) throw new RefusedException("window", Spoken($"No {Quantity.InWords()} lies between {Low} and {High}."), "2.85 to 3.21");
    }
}

/// <summary>A window as it is stored: as typed, and in base units for queries.</summary>
internal sealed class WindowRow
{
    public long Id { get; set; }

    public long WantedPartId { get; set; }

    public int Ordinal { get; set; }

    public WindowOf Quantity { get; set; }

    public string Low { get; set; } = "";

    public string High { get; set; } = "";

    public double? LowSi { get; set; }

    public double? HighSi { get; set; }

    public static WindowRow Of(WantedWindow window, int ordinal) => new()
    {
        Ordinal = ordinal,
        Quantity = window.Quantity,
        Low = window.Low.Trim(),
        High = window.High.Trim(),
        LowSi = Si(window.Quantity, window.Low),
        HighSi = Si(window.Quantity, window.High),
    };

    // What cannot be read is refused when the part is checked.
    private static double? Si(WindowOf quantity, string text) => quantity.Read(text).Understood(out var typed) ? typed.Value : null;
}
