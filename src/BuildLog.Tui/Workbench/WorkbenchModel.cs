namespace BuildLog.Tui.Workbench;

/// <summary>What the workbench says: the vehicles of the shop and, of the chosen one, everything.</summary>
/// <param name="Vehicles">All vehicles in the order shown.</param>
/// <param name="Chosen">The vehicle on the bench; null in an empty shop.</param>
/// <param name="Banner">One line that explains a special state, such as the demo shop; null for none.</param>
/// <param name="Revision">Another number where the record has changed since: what was read beside the screen is read again.</param>
public sealed record WorkbenchModel(IReadOnlyList<VehicleRow> Vehicles, VehicleModel? Chosen, string? Banner = null, int Revision = 0)
{
    public static WorkbenchModel EmptyShop { get; } = new([], null);
}

/// <summary>One vehicle in the list at the left.</summary>
/// <param name="State">In the shop's words: "being built", "on the road", "waiting for parts".</param>
/// <param name="Counts">Null while it has not been judged yet.</param>
public sealed record VehicleRow(long Id, string Name, string State, VerdictCounts? Counts);

/// <summary>The chosen vehicle with its strip and its pages.</summary>
/// <param name="Facts">A short line beside the name: owner, odometer, state.</param>
public sealed record VehicleModel(
    long Id,
    string Name,
    string Facts,
    DrivelineModel Driveline,
    FindingsModel Findings,
    SpeedsModel Speeds,
    MeasurementsModel Measurements,
    GoalModel Goal,
    HistoryModel History);
