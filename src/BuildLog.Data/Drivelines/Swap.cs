using BuildLog.Data.Components;
using BuildLog.Data.Costs;
using BuildLog.Data.Days;
using BuildLog.Data.Fitments;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;

namespace BuildLog.Data.Drivelines;

/// <summary>One change in one position of one vehicle.</summary>
public sealed record Swap
{
    /// <summary>The day; where it is not known to the day, the one it is reckoned from.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>The day as typed.</summary>
    public required LooseDay Day { get; init; }

    public required Position Position { get; init; }

    /// <summary>Null where the place was empty.</summary>
    public Component? Removed { get; init; }

    /// <summary>Null where nothing took its place.</summary>
    public Component? Fitted { get; init; }

    public string Reason { get; init; } = "";

    public OdometerReading? Odometer { get; init; }

    public required Driveline Before { get; init; }

    public required Driveline After { get; init; }

    /// <summary>Spent on the vehicle before that day, one sum for each currency.</summary>
    public IReadOnlyList<Money> SpentBefore { get; init; } = [];

    /// <summary>The same at the end of that day.</summary>
    public IReadOnlyList<Money> SpentAfter { get; init; } = [];

    /// <summary>What the swap changed for these goals.</summary>
    public SwapEffect Effect(OwnersGoals goals) => new(GoalState.Of(Before, goals, SpentBefore), GoalState.Of(After, goals, SpentAfter), SwapMoves.Between(Before, After));
}

/// <summary>How a driveline stands before and after a change, and what it moves.</summary>
public sealed record SwapEffect(GoalState Before, GoalState After, SwapMoves Moves);
