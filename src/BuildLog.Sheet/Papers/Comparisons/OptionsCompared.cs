namespace BuildLog.Sheet.Papers.Comparisons;

/// <summary>Two to four ways to meet the goals, beside each other.</summary>
public sealed record OptionsCompared : PaperContent
{
    /// <summary>What was asked: the goals as a sentence.</summary>
    public string? Goal { get; init; }

    /// <summary>The heads of the columns: "as it is", "axle 41/13".</summary>
    public IReadOnlyList<string> Options { get; init; } = [];

    public IReadOnlyList<ComparedRow> Rows { get; init; } = [];

    /// <summary>What the comparison rests on, and what it leaves out.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];
}

/// <summary>One matter and what each option comes to in it.</summary>
/// <param name="Matter">"Engine speed at 110 km/h".</param>
/// <param name="Values">One text an option; null is not recorded.</param>
/// <param name="AreVerdicts">The texts are verdicts, and are boxed like those of the findings.</param>
public sealed record ComparedRow(string Matter, IReadOnlyList<string?> Values, bool AreVerdicts = false);
