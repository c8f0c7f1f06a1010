namespace BuildLog.Gearing.Goals;

/// <summary>Everything an owner wants of one vehicle.</summary>
public sealed record OwnersGoals(IReadOnlyList<CruiseGoal> Cruise)
{
    public static readonly OwnersGoals None = new([]);

    public TopSpeedGoal? TopSpeed { get; init; }

    public LengthLimit? TyreDiameter { get; init; }

    public LengthLimit? TyreWidth { get; init; }

    public LengthLimit? Track { get; init; }
}
