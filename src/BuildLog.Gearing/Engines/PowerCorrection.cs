using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Engines;

/// <summary>From what a dynamometer read on the day to what the standard day would give.</summary>
/// <remarks>
/// <code>CF = 1.18 · (99/p) · √((t + 273)/298) − 0.18;   corrected = CF · observed</code>
/// <para>p pressure of the dry air, kPa (barometer less water vapour); t inlet air, °C. 0.18/1.18 is 15 % friction, which does not change.</para>
/// <para>Valid for naturally aspirated spark-ignition engines and 0.93 ≤ CF ≤ 1.07; outside that the test should be run on another day.</para>
/// <para>Source: SAE J1349 (June 1990), quoted second-hand; the range is ISO 1585's, from memory.</para>
/// </remarks>
public static class PowerCorrection
{
    /// <summary>Below this the air was too unlike the standard day for the correction.</summary>
    public const double LowestTrusted = 0.93;

    /// <summary>Above this, likewise.</summary>
    public const double HighestTrusted = 1.07;

    /// <param name="dryPressure">Pascals.</param>
    /// <param name="inletCelsius">Degrees Celsius.</param>
    /// <exception cref="RefusedException">No air an engine was ever tested in.</exception>
    public static double J1349(double dryPressure, double inletCelsius)
    {
        if (!(dryPressure is >= 40e3 and <= 120e3))
            throw new RefusedException("pressure", Spoken($"A barometer reads 40 to 120 kPa, not {dryPressure / 1000:0.#} kPa."), "99 kPa");
        if (!(inletCelsius is >= -50 and <= 80))
            throw new RefusedException("temperature", Spoken($"Inlet air has −50 to 80 °C, not {inletCelsius:0.#} °C."), "25");
        return (1.18 * (99e3 / dryPressure) * Math.Sqrt((inletCelsius + 273) / 298)) - 0.18;
    }

    /// <summary>Whether a correction factor is one that the standard lets stand.</summary>
    public static bool IsTrusted(double factor) => factor is >= LowestTrusted and <= HighestTrusted;
}
