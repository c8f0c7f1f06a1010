namespace BuildLog.Gearing.Ratios;

/// <summary>The low range of a transfer case from its teeth.</summary>
/// <remarks>
/// <code>planetary, ring held: i = 1 + R/S;   layshaft: i = product of its two pairs, driven over driver</code>
/// <para>Exact: no uncertainty. High of a planetary case is direct; a case that drives over gears or a layshaft in high is two pairs there too.</para>
/// <para>Source: <see cref="Planetary"/>; worked: R 62, S 36 makes 2.722.</para>
/// </remarks>
public static class TransferCaseLow
{
    /// <exception cref="Quantities.RefusedException">A ratio that no transfer case has.</exception>
    public static double Of(Planetary planetary) => RatioRange.Transfer.Checked(planetary.RingHeld);

    /// <exception cref="Quantities.RefusedException">A ratio that no transfer case has.</exception>
    public static double Of(GearMesh first, GearMesh second) => RatioRange.Transfer.Checked(first.Ratio * second.Ratio);
}
