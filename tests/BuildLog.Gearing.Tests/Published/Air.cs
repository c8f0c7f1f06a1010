using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Tests.Published;

/// <summary>The standard atmosphere, and what thin air leaves of an engine.</summary>
internal static class Air
{
    public static PublishedSet Constants() => new("Standard gravity and air at sea level", "NIST SP 811; the standard atmosphere's defined values", Standing.Read,
    [
        Figure.ToRelative("g, m/s²", 9.80665, Units.Gravity, 1e-14),
        Figure.ToRelative("T, K", 288.15, Atmosphere.At(0).Temperature, 1e-14),
        Figure.ToRelative("p, Pa", 101_325, Atmosphere.At(0).Pressure, 1e-14),
    ]);

    // Geometric altitudes.
    public static PublishedSet TableFromMemory() => new("Pressure (hPa) and density at altitude", "ISO 2533:1975, table", Standing.FromMemory,
    [
        Figure.ToPlaces("0 m, ρ", 1.225, 4, Atmosphere.At(0).Density),
        Figure.ToPlaces("1000 m, p", 898.76, 2, Atmosphere.At(1000).Pressure / 100),
        Figure.ToPlaces("1000 m, ρ", 1.1117, 4, Atmosphere.At(1000).Density),
        Figure.ToPlaces("2000 m, p", 795.01, 2, Atmosphere.At(2000).Pressure / 100),
        Figure.ToPlaces("2000 m, ρ", 1.0066, 4, Atmosphere.At(2000).Density),
        Figure.ToPlaces("3000 m, p", 701.21, 2, Atmosphere.At(3000).Pressure / 100),
        Figure.ToPlaces("3000 m, ρ", 0.90925, 5, Atmosphere.At(3000).Density),
        Figure.ToPlaces("5000 m, p", 540.48, 2, Atmosphere.At(5000).Pressure / 100),
        Figure.ToPlaces("5000 m, ρ", 0.73643, 5, Atmosphere.At(5000).Density),
        Figure.ToPlaces("11 000 m, ρ", 0.36480, 5, Atmosphere.At(11_000).Density),
    ]);

    public static PublishedSet ByAnotherProgram() => new("Standard atmosphere at 3000 m", "values an open test suite keeps from an independent program", Standing.Read,
    [
        Figure.ToRelative("T, K", 268.65919845164115, Atmosphere.At(3000).Temperature, 1e-9),
        Figure.ToRelative("p, Pa", 70121.14406807562, Atmosphere.At(3000).Pressure, 1e-6),
        Figure.ToRelative("ρ, kg/m³", 0.9092543452517026, Atmosphere.At(3000).Density, 1e-6),
    ]);

    // One engine's certificate; within 2 % of the whole.
    public static PublishedSet Altitude() => new("Power left at altitude", "a certified aero engine, second-hand", Standing.CommonPractice,
    [
        new("10 000 ft, hp of 100", 71, 100 * AltitudeLoss.Factor(Induction.NaturallyAspirated, Atmosphere.At(3048)), 2),
    ]);
}
