namespace BuildLog.Sheet.Papers.Comparisons;

/// <summary>Two to four ways to meet the goals, beside each other.</summary>
public sealed record OptionsCompared : PaperContent
{
    /// <summary>What was asked: the goals as a sentence.</summary>
    public string? Goal { get; init; }

    /// <summary>The heads of the columns: "as it is", "axle 41/13".</summary>
    public IReadOnlyList<string> Options { get; init; } = [];

    public IReadOnlyList<ComparedRow> Rows { get; init; } = [];

    /// <summary>Axle against tyre; null for none.</summary>
    public RegionMap? Map { get; init; }

    /// <summary>What the comparison rests on, and what it leaves out.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];
}

/// <summary>One matter and what each option comes to in it.</summary>
/// <param name="Matter">"Engine speed at 110 km/h".</param>
/// <param name="Values">One text an option; null is not recorded.</param>
/// <param name="AreVerdicts">The texts are verdicts, and are boxed like those of the findings.</param>
public sealed record ComparedRow(string Matter, IReadOnlyList<string?> Values, bool AreVerdicts = false);

/// <summary>What every pair of axle ratio and tyre comes to, as a small map.</summary>
/// <param name="Rows">The heads of the rows, axle ratios, from top to bottom.</param>
/// <param name="Left">What the leftmost column is: "1.80 m".</param>
/// <param name="Right">What the rightmost column is.</param>
/// <param name="Cells">A row's cells: F fits, w watch, x clash, ? open, + what is fitted now.</param>
public sealed record RegionMap(IReadOnlyList<string> Rows, string Left, string Right, IReadOnlyList<string> Cells);
