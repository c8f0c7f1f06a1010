using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Propshafts;

/// <summary>How hard the joints' angles shake what the shaft drives.</summary>
/// <remarks>
/// <code>α = β_eq² · ω²,   ω = 2π n</code>
/// <para>α rad/s²; β_eq equivalent angle, rad; n shaft speed, rev/s.</para>
/// <para>
/// Limits: 300 rad/s² in an axle maker's guide (read); 400 behind the published table of permitted pairs of angles (read). "Ends within 1°" is not
/// enough at large angles: 6° and 5° make 331 rad/s² at 3000 rev/min.
/// </para>
/// </remarks>
public static class TorsionalAcceleration
{
    /// <summary>rad/s²; up to this it fits.</summary>
    public const double Good = 300;

    /// <summary>rad/s²; beyond this it clashes.</summary>
    public const double Limit = 400;

    /// <summary>α, rad/s², from β_eq² in rad² and the shaft speed in rev/s.</summary>
    public static Measured Of(Measured equivalentAngleSquared, Measured shaftSpeed)
        => equivalentAngleSquared * shaftSpeed * shaftSpeed * (4 * Math.PI * Math.PI);
}
