using BuildLog.Data.Components;
using BuildLog.Data.Costs;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;

namespace BuildLog.Data.Drivelines;

/// <summary>What another part in a place makes of the driveline, between two days.</summary>
public sealed record DrivelineDifference
{
    public required DrivelineOfDay Before { get; init; }

    public required DrivelineOfDay After { get; init; }

    /// <summary>Spent on the vehicle until the end of the first day, one sum for each currency.</summary>
    public required IReadOnlyList<Money> SpentBefore { get; init; }

    /// <summary>The same for the second day.</summary>
    public required IReadOnlyList<Money> SpentAfter { get; init; }

    /// <summary>The places that hold another part, from engine to tyres; empty where both days saw the same.</summary>
    public IReadOnlyList<PartChange> Changes
        => [.. Enum.GetValues<Position>().Select(position => new PartChange(position, Before.At(position), After.At(position))).Where(change => change.Removed?.Id != change.Fitted?.Id)];

    /// <summary>What the changes do for these goals.</summary>
    public SwapEffect Effect(OwnersGoals goals) => new(GoalState.Of(Before.Driveline, goals, SpentBefore), GoalState.Of(After.Driveline, goals, SpentAfter), SwapMoves.Between(Before.Driveline, After.Driveline));

    internal static DrivelineDifference Between(VehicleHistory history, DateOnly before, DateOnly after) => new()
    {
        Before = history.On(before),
        After = history.On(after),
        SpentBefore = history.SpentUntil(before),
        SpentAfter = history.SpentUntil(after),
    };
}

/// <summary>One place that holds another part; null where it is empty.</summary>
public sealed record PartChange(Position Position, Component? Removed, Component? Fitted);
