using BuildLog.Data.Days;

namespace BuildLog.Tui.Decisions;

/// <summary>What was decided about a vehicle and noted down about it, the latest first.</summary>
public sealed record DecisionsModel(IReadOnlyList<DecisionRow> Rows);

/// <summary>What stands on the page of decisions.</summary>
public enum DecisionKind
{
    Decision,
    Note,

    /// <summary>A plan that was rejected: it is decided on the page Plans, and told here.</summary>
    Rejection,
}

/// <summary>A decision, a note, or a plan that was rejected.</summary>
/// <param name="AgreedBy">Who agreed to a decision; empty for anything else.</param>
/// <param name="Text">Why, what was noted, or the rule that failed.</param>
public sealed record DecisionRow(DecisionKind Kind, long Id, LooseDay Day, string Title, string AgreedBy, string Text);

public static class DecisionKindWords
{
    public static string InWords(this DecisionKind kind) => kind switch
    {
        DecisionKind.Decision => Spoken("decision"),
        DecisionKind.Note => Spoken("note"),
        DecisionKind.Rejection => Spoken("rejected"),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such kind."),
    };
}
