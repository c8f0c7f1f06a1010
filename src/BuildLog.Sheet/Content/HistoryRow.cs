namespace BuildLog.Sheet.Content;

/// <summary>One swap in the parts history.</summary>
public sealed record HistoryRow
{
    public required string Date { get; init; }

    public string? Odometer { get; init; }

    public required string Position { get; init; }

    public string? Removed { get; init; }

    public string? Fitted { get; init; }

    public string? Reason { get; init; }

    /// <summary>What the swap changed: "cruise 2980 → 2480 rev/min".</summary>
    public string? Effect { get; init; }
}
