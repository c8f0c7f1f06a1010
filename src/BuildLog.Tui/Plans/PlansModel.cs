using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;

namespace BuildLog.Tui.Plans;

/// <summary>The what-ifs that were kept of a vehicle.</summary>
/// <param name="Trying">What is tried on the bench now without being kept; empty for nothing.</param>
internal sealed record PlansModel(IReadOnlyList<PlanRow> Rows, string Trying = "");

/// <summary>One plan and what it comes to today.</summary>
/// <param name="Worst">The worst finding it would have; null where it cannot be said.</param>
/// <param name="Counts">The findings in a few words.</param>
/// <param name="Cruise">The engine speed at the first cruise goal.</param>
/// <param name="State">Open, kept or rejected.</param>
/// <param name="Lines">What it changes, what became of it and why, and what would not fit.</param>
internal sealed record PlanRow(long Id, string Name, string Date, string State, Verdict? Worst, string Counts, string Cruise, IReadOnlyList<string> Lines)
{
    /// <summary>The day it was made.</summary>
    public DateOnly Day { get; init; }

    /// <summary>The engine speed at the first cruise goal, rev/s; null where it cannot be said.</summary>
    public Measured? EngineSpeed { get; init; }

    /// <summary>Why it was kept or rejected; empty where nobody said.</summary>
    public string Reason { get; init; } = "";

    /// <summary>What is said about its parts: that one is to be inspected first, is on another vehicle, or was rejected before.</summary>
    public IReadOnlyList<string> Doubts { get; init; } = [];

    /// <summary>The findings it would have, counted; null where it cannot be said.</summary>
    public VerdictCounts? Whole { get; init; }
}
