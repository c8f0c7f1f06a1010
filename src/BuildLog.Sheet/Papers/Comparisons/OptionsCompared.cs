using BuildLog.Sheet.Content;

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
