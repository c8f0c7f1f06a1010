namespace BuildLog.Tui.Workbench;

/// <summary>The swaps of a vehicle, newest first.</summary>
/// <param name="Rows">The swaps.</param>
/// <param name="Doubts">What is not certain of today's driveline, a sentence each.</param>
public sealed record HistoryModel(IReadOnlyList<HistoryRow> Rows, IReadOnlyList<string>? Doubts = null)
{
    /// <summary>By which goals every swap is judged, whenever it was made; empty where there are none.</summary>
    public string Goals { get; init; } = "";
}

/// <summary>One swap and what it changed.</summary>
/// <param name="Removed">Null where the position was empty before.</param>
/// <param name="Fitted">Null where the position was left empty.</param>
/// <param name="CruiseBefore">Engine speed at the cruise goal before, with unit; empty where it cannot be said.</param>
public sealed record HistoryRow(
    string Date,
    string Position,
    string? Removed,
    string? Fitted,
    string Reason,
    string CruiseBefore = "",
    string CruiseAfter = "")
{
    /// <summary>What the findings came to before, and after; empty where that is not known.</summary>
    public string Findings { get; init; } = "";

    /// <summary>What it moved beside the cruise, such as the speedometer or the track, a clause each.</summary>
    public IReadOnlyList<string> Moved { get; init; } = [];

    /// <summary>Spent on the vehicle that day; empty for nothing.</summary>
    public string Spent { get; init; } = "";
}
