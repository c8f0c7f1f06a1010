namespace BuildLog.Gearing.Goals;

/// <summary>Everything an owner wants of one vehicle; null where nothing is wanted.</summary>
public sealed record OwnersGoals(IReadOnlyList<CruiseGoal> Cruise)
{
    public static readonly OwnersGoals None = new([]);

    public HillGoal? Hill { get; init; }

    public HillStartGoal? HillStart { get; init; }

    public TopSpeedGoal? TopSpeed { get; init; }

    public OverallLowGoal? OverallLow { get; init; }

    public LengthLimit? TyreDiameter { get; init; }

    public LengthLimit? TyreWidth { get; init; }

    public LengthLimit? Track { get; init; }
}
