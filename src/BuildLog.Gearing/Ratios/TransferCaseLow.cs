using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Ratios;

/// <summary>The low range of a transfer case from its teeth.</summary>
/// <remarks>
/// <code>planetary, ring held: i = 1 + R/S;   layshaft: i = product of its two pairs, driven over driver</code>
/// <para>Exact: no uncertainty. High of a planetary case is direct; a case that drives over gears or a layshaft in high is two pairs there too.</para>
/// <para>Source: <see cref="Planetary"/>; worked: R 62, S 36 makes 2.722.</para>
/// </remarks>
public static class TransferCaseLow
{
    private const string PlanetarySet = "planetary";

    /// <summary>Reads <c>2.72</c>, or its teeth: <c>planetary 62/36</c>, ring over sun, or two pairs of a layshaft, driven over driver, <c>30/20 40/30</c>.</summary>
    public static Parsed<QuotedRatio> Read(string text)
        => text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries) switch
        {
            [PlanetarySet, var set] => Planetary.Read(set).Then(read => Exactly(() => Of(read), text)).In(text),
            [var first, var second] when first.Contains('/', StringComparison.Ordinal) && second.Contains('/', StringComparison.Ordinal)
                => GearMesh.Read(first).Then(one => GearMesh.Read(second).Then(other => Exactly(() => Of(one, other), text))).In(text),
            _ => QuotedRatio.Read(text, RatioRange.Transfer),
        };

    /// <exception cref="RefusedException">A ratio that no transfer case has.</exception>
    public static double Of(Planetary planetary) => RatioRange.Transfer.Checked(planetary.RingHeld);

    /// <exception cref="RefusedException">A ratio that no transfer case has.</exception>
    public static double Of(GearMesh first, GearMesh second) => RatioRange.Transfer.Checked(first.Ratio * second.Ratio);

    private static Parsed<QuotedRatio> Exactly(Func<double> ratio, string text) => Parsed.From(() => new QuotedRatio(ratio(), 0, text.Trim()));
}
