namespace BuildLog.Tui.Decisions;

/// <summary>What was decided about a vehicle and noted down about it, the latest first.</summary>
public sealed record DecisionsModel(IReadOnlyList<DecisionRow> Rows);

/// <summary>A decision or a note.</summary>
/// <param name="AgreedBy">Who agreed to a decision; empty for a note.</param>
/// <param name="Text">Why, or what was noted.</param>
public sealed record DecisionRow(bool IsDecision, long Id, DateOnly Date, string Title, string AgreedBy, string Text);
