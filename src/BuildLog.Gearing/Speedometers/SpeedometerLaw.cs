using BuildLog.Gearing.Goals;

namespace BuildLog.Gearing.Speedometers;

/// <summary>What a speedometer may show.</summary>
/// <remarks>
/// <code>0 ≤ V₁ − V₂ ≤ 0.1 · V₂ + 4 km/h</code>
/// <para>V₁ shown, V₂ true speed. It may never read low. For a speedometer off by a share, the top of the range is the strictest: q ≤ 1.1 + 4 / V₂.</para>
/// <para>Source: UN Regulation No. 39, par. 5.3; ADR 18/03 has the same. Older vehicles may be under older rules.</para>
/// </remarks>
public static class SpeedometerLaw
{
    /// <summary>The curve is looked at between these, km/h.</summary>
    public const double From = 30;

    /// <summary>The upper end, km/h.</summary>
    public const double To = 130;

    /// <summary>What may be shown at a true speed, km/h.</summary>
    public static Window Shown(double realKmh) => new(realKmh, (1.1 * realKmh) + 4);

    /// <summary>Shown over true speed that is lawful all the way to a speed, km/h.</summary>
    public static Window Share(double toKmh = To) => new(1, 1.1 + (4 / toKmh));
}
