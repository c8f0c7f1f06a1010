namespace BuildLog.Gearing.Goals;

/// <summary>Everything an owner wants of one vehicle; null where nothing is wanted.</summary>
public sealed record OwnersGoals(IReadOnlyList<CruiseGoal> Cruise)
{
    /// <summary>An owner who wants nothing yet.</summary>
    public static readonly OwnersGoals None = new([]);

    /// <summary>A hill to hold a road speed on.</summary>
    public HillGoal? Hill { get; init; }

    /// <summary>A hill to pull away on.</summary>
    public HillStartGoal? HillStart { get; init; }

    /// <summary>A road speed to reach on the level.</summary>
    public TopSpeedGoal? TopSpeed { get; init; }

    /// <summary>The least overall ratio in the lowest gear and range.</summary>
    public OverallLowGoal? OverallLow { get; init; }

    /// <summary>The largest tyre that goes under the body.</summary>
    public LengthLimit? TyreDiameter { get; init; }

    /// <summary>The widest one.</summary>
    public LengthLimit? TyreWidth { get; init; }

    /// <summary>The widest track, tyre middle to tyre middle.</summary>
    public LengthLimit? Track { get; init; }
}
