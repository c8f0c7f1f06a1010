using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Tyres;

/// <summary>How much longer a tyre's turn grows at speed, as a factor on the rolling circumference.</summary>
/// <remarks>
/// <code>factor = 1 + g (v / v₀)²;   bias g = 3 % ± 1 % at v₀ = 120 km/h;   radial with steel belt g = 0.5 % ± 0.5 % at v₀ = 160 km/h</code>
/// <para>The pull outwards goes with v². ± are half-widths of a rectangular error, one shared for all tyres of a construction.</para>
/// <para>
/// All of it is from memory: it may widen or warn, never decide. Not for: slicks and racing tyres, which grow more; speeds above 250 km/h.
/// </para>
/// </remarks>
public static class SpeedGrowth
{
    /// <summary>m/s.</summary>
    public const double Fastest = 250 / 3.6;

    private static readonly Evidence Growth = new(new Later("growth at speed"), _ => Spoken("compare a satellite's road speed with the engine speed at that very speed"));

    private static readonly Measured Bias = Measured.From(0.03, Input.Rectangular(new Later("growth at speed, bias tyre"), 0.01, Growth));

    private static readonly Measured Radial = Measured.From(0.005, Input.Rectangular(new Later("growth at speed, radial tyre"), 0.005, Growth));

    /// <param name="construction">How the cords lie.</param>
    /// <param name="roadSpeed">Metres per second.</param>
    /// <exception cref="RefusedException">A speed that no road tyre is made for.</exception>
    public static Measured At(Construction construction, double roadSpeed)
    {
        if (roadSpeed is not (>= 0 and <= Fastest))
            throw new RefusedException("out-of-range", Spoken($"{roadSpeed * 3.6:0} km/h is no speed for a road tyre's growth: 0 to 250 km/h."), "110 km/h");

        return construction == Construction.Bias
            ? 1 + (Bias * Math.Pow(roadSpeed / (120 / 3.6), 2))
            : 1 + (Radial * Math.Pow(roadSpeed / (160 / 3.6), 2));
    }
}
