namespace BuildLog.Gearing.Ratios;

/// <summary>The tooth pairs that axles may be made with, each ratio once, the likeliest first.</summary>
/// <remarks>
/// <para>
/// One rule for all who name pairs: first those of usual numbers, a pinion of 8 to 16 and a ring of 30 to 60 teeth; among them those without a common
/// factor, which makers prefer because every tooth then meets every other; then the smaller pinion. Of the pairs that make one ratio the first by
/// this rule stands for it: 35/10 for 3.50, as 28/8 is unusually small.
/// </para>
/// <para>Source: common practice, no source; that is why it only orders and weighs, and strikes nothing out.</para>
/// </remarks>
public static class ToothPairs
{
    /// <summary>The ratios that axles are made with, without a hub reduction.</summary>
    internal const double Lowest = 2, Highest = 9;

    private const double Unusual = 0.1;
    private const double WithCommonFactor = 0.3;

    /// <summary>Pinion 5 to 20, ring 25 to 60 teeth.</summary>
    public static readonly IReadOnlyList<Teeth> All =
    [
        .. ByLikelihood(
            (from pinion in Enumerable.Range(5, 16)
             from ring in Enumerable.Range(25, 36)
             where ring >= Lowest * pinion && ring <= Highest * pinion
             select new Teeth(ring, pinion)).GroupBy(pair => pair.Ratio).Select(same => ByLikelihood(same).First())),
    ];

    /// <summary>How likely a pair is against one of usual numbers without a common factor.</summary>
    public static double Weight(Teeth pair) => (pair is { Pinion: >= 8 and <= 16, Ring: >= 30 and <= 60 } ? 1 : Unusual) * (pair.IsCoprime ? 1 : WithCommonFactor);

    private static IOrderedEnumerable<Teeth> ByLikelihood(IEnumerable<Teeth> pairs) => pairs.OrderByDescending(Weight).ThenBy(pair => pair.Pinion);
}
