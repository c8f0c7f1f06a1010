namespace BuildLog.Tui.Workbench;

/// <summary>What the owner wants, as sentences, and what follows from it.</summary>
/// <param name="Wants">The goal in words; empty where none is set.</param>
/// <param name="Follows">The windows that follow: which axle ratios, which circumferences would do.</param>
public sealed record GoalModel(IReadOnlyList<string> Wants, IReadOnlyList<string> Follows)
{
    public static GoalModel None { get; } = new([], []);
}
