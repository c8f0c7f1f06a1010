namespace BuildLog.Sheet.Content;

/// <summary>What every pair of axle ratio and tyre comes to, as a small map.</summary>
/// <param name="Rows">The heads of the rows, axle ratios, from top to bottom.</param>
/// <param name="Left">What the leftmost column is: "1.80 m".</param>
/// <param name="Right">What the rightmost column is.</param>
/// <param name="Cells">A row's cells, a letter each: see <see cref="Letters"/>.</param>
public sealed record RegionMap(IReadOnlyList<string> Rows, string Left, string Right, IReadOnlyList<string> Cells) : Chart
{
    /// <summary>What the letters mean, on paper and in the terminal.</summary>
    public static IReadOnlyList<string> Letters =>
        [Spoken("F every wish is met"), Spoken("w too near a limit to tell"), Spoken("? cannot be said"), Spoken("x a wish is missed"), Spoken("+ what is fitted now")];
}
