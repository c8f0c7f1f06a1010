namespace BuildLog.Sheet.Content;

/// <summary>What drives the speedometer and how it reads.</summary>
/// <param name="Facts">Label and value, one a line.</param>
/// <param name="Error">What it shows beyond the truth, against what the rule allows; none while it cannot be worked out.</param>
public sealed record SpeedometerFacts(IReadOnlyList<LabelledLine> Facts, CurveChart? Error = null);
