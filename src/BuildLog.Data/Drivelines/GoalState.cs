using BuildLog.Data.Costs;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Data.Drivelines;

/// <summary>How a driveline stands to its goals.</summary>
public sealed record GoalState
{
    /// <summary>At the first cruise goal, rev/s; null while a part or a number is missing.</summary>
    public Measured? CruiseEngineSpeed { get; private init; }

    /// <summary>How many findings say so.</summary>
    public required IReadOnlyDictionary<Verdict, int> Findings { get; init; }

    /// <summary>How many findings clash.</summary>
    public int Clashes => Findings.GetValueOrDefault(Verdict.Clash);

    /// <summary>Spent on the vehicle until then, one sum for each currency.</summary>
    public required IReadOnlyList<Money> Spent { get; init; }

    internal static GoalState Of(Driveline driveline, OwnersGoals goals, IReadOnlyList<Money> spent) => new()
    {
        CruiseEngineSpeed = goals.Cruise.Count == 0 ? null : CruiseCheck.EngineSpeed(driveline, goals.Cruise[0]),
        Findings = AllChecks.Look(driveline, goals).CountBy(finding => finding.Verdict).ToDictionary(),
        Spent = spent,
    };
}
