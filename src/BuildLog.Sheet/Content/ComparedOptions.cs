namespace BuildLog.Sheet.Content;

/// <summary>Two to four ways to meet the goals, beside each other.</summary>
/// <param name="Options">The heads of the columns: "as it is", "axle 41/13".</param>
/// <param name="Rows">What each comes to.</param>
public sealed record ComparedOptions(IReadOnlyList<string> Options, IReadOnlyList<ComparedRow> Rows);

/// <summary>One matter and what each option comes to in it.</summary>
/// <param name="Matter">"Engine speed at 110 km/h".</param>
/// <param name="Values">One text an option; null is not recorded.</param>
/// <param name="AreVerdicts">The texts are verdicts, and are boxed like those of the findings.</param>
public sealed record ComparedRow(string Matter, IReadOnlyList<string?> Values, bool AreVerdicts = false);
