using BuildLog.Data.Components;
using BuildLog.Data.Fitments;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Data.Drivelines;

/// <summary>One change in one position of one vehicle.</summary>
public sealed record Swap
{
    public required DateOnly Date { get; init; }

    public required Position Position { get; init; }

    /// <summary>Null where the place was empty.</summary>
    public Component? Removed { get; init; }

    /// <summary>Null where nothing took its place.</summary>
    public Component? Fitted { get; init; }

    public string Reason { get; init; } = "";

    public OdometerReading? Odometer { get; init; }

    public required Driveline Before { get; init; }

    public required Driveline After { get; init; }

    /// <summary>What the swap changed for these goals.</summary>
    public SwapEffect Effect(OwnersGoals goals) => new(State(Before, goals), State(After, goals));

    private static GoalState State(Driveline driveline, OwnersGoals goals) => new(
        goals.Cruise.Count == 0 ? null : CruiseCheck.EngineSpeed(driveline, goals.Cruise[0]),
        AllChecks.Look(driveline, goals).Count(finding => finding.Verdict == Verdict.Clash));
}

/// <summary>How a driveline stands before and after a swap.</summary>
public sealed record SwapEffect(GoalState Before, GoalState After);

/// <summary>How a driveline stands to its goals.</summary>
/// <param name="CruiseEngineSpeed">At the first cruise goal, rev/s; null while a part or a number is missing.</param>
/// <param name="Clashes">How many findings clash.</param>
public sealed record GoalState(Measured? CruiseEngineSpeed, int Clashes);
