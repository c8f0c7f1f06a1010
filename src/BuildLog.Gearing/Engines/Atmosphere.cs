using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Engines;

/// <summary>The air at an altitude, on a standard day.</summary>
/// <param name="Temperature">Kelvin.</param>
/// <param name="Pressure">Pascals.</param>
/// <remarks>
/// <code>H = r h/(r + h);   T = 288.15 − 0.0065 H;   p = 101 325 (T/288.15)^(g/(0.0065 R));   ρ = p/(R T)</code>
/// <para>h altitude, m; H geopotential altitude, m; r = 6 356 766 m; R = 287.05287 J/(kg K); g = 9.80665 m/s².</para>
/// <para>Valid from −2000 to 11 000 m, dry air. A hot or damp day takes some per cent more off. Source: ISO 2533:1975.</para>
/// </remarks>
public sealed record Atmosphere(double Temperature, double Pressure)
{
    private const double GasConstant = 287.05287;
    private const double Lapse = 0.0065;
    private const double EarthRadius = 6_356_766;

    /// <summary>15 °C and 1013.25 hPa.</summary>
    public static readonly Atmosphere SeaLevel = new(288.15, 101_325);

    /// <summary>T, kelvin; above zero.</summary>
    public double Temperature { get; init => field = value.AboveZero(Spoken("An air temperature, K,"), "288"); } = Temperature.AboveZero(Spoken("An air temperature, K,"), "288");

    /// <summary>p, pascals; above zero.</summary>
    public double Pressure { get; init => field = value.AboveZero(Spoken("An air pressure, Pa,"), "101325"); } = Pressure.AboveZero(Spoken("An air pressure, Pa,"), "101325");

    /// <summary>Kilograms per cubic metre.</summary>
    public double Density => Pressure / (GasConstant * Temperature);

    /// <summary>Density against that at sea level.</summary>
    public double DensityRatio => Density / SeaLevel.Density;

    /// <param name="altitude">Metres above sea level.</param>
    /// <exception cref="RefusedException">Outside −2000 to 11 000 m.</exception>
    public static Atmosphere At(double altitude)
    {
        var temperature = SeaLevel.Temperature - (Lapse * EarthRadius * Checked(altitude) / (EarthRadius + altitude));
        return new(temperature, SeaLevel.Pressure * Math.Pow(temperature / SeaLevel.Temperature, Units.Gravity / (Lapse * GasConstant)));
    }

    /// <param name="altitude">Metres above sea level.</param>
    /// <exception cref="RefusedException">Outside −2000 to 11 000 m.</exception>
    internal static double Checked(double altitude)
        => altitude is >= -2000 and <= 11_000
            ? altitude
            : throw new RefusedException("altitude", Spoken($"Roads lie between −2000 and 11 000 m, not at {altitude:0} m."), "1500 m");

    /// <inheritdoc cref="Checked(double)"/>
    internal static Known? Checked(Known? altitude)
    {
        if (altitude is not null) _ = Checked(altitude.Value.Value);
        return altitude;
    }
}
