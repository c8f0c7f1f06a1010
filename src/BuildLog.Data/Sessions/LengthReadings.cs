using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Sessions;

/// <summary>One length read several times with one tape or caliper.</summary>
public static class LengthReadings
{
    /// <summary>Their mean, metres.</summary>
    /// <exception cref="RefusedException">A reading is no length, or there is none.</exception>
    public static Measured Mean(IEnumerable<string> readings, string tool, string name)
        => RepeatedReadings.Mean([.. readings.Select(text => Read(text).OrRefuse().Value)], Read(tool).OrRefuse().Value, name);

    /// <summary>As typed, for whoever reads it.</summary>
    public static string InWords(string text) => AsWritten.InWords(text, Units.Millimetre);

    /// <summary>A bare number is in millimetres.</summary>
    public static Parsed<Typed> Read(string text) => QuantityText.ReadPlain(text, Kind.Length, Units.Millimetre).Showing("312 mm");
}
