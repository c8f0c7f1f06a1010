namespace BuildLog.Sheet.Content;

/// <summary>One finding in words.</summary>
/// <param name="Verdict">The verdict's word: fits, watch, clash or open.</param>
/// <param name="Title">The matter.</param>
/// <param name="Sentence">The numbers, as a sentence.</param>
/// <param name="Cure">What would cure it.</param>
/// <param name="SettledBy">The measurement that would settle it.</param>
public sealed record SheetFinding(string Verdict, string Title, string Sentence, string? Cure = null, string? SettledBy = null);
