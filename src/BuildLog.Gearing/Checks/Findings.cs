using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>How a check words what it found.</summary>
internal static class Findings
{
    /// <summary>A value against a window.</summary>
    public static Finding Judged(this ICheck check, Judgement judgement)
    {
        var (verdict, because) = Verdicts.Judge(judgement.Value, judgement.Wanted, judgement.LimitIsVerified);
        var fits = verdict == Verdict.Fits;
        return new()
        {
            Check = check.Id,
            Title = check.Title,
            Verdict = verdict,
            Because = because,
            Between = judgement.Between,
            Says = judgement.Says,
            Value = judgement.Value,
            Unit = judgement.Unit,
            Wanted = judgement.Wanted,
            Source = judgement.Source,
            Cures = fits ? [] : [.. judgement.Cures, .. judgement.Windows.Select(window => window.InWords())],
            Windows = judgement.Windows,
            SettledBy = because == Because.Uncertainty ? Settling.Of(judgement.Value, judgement.Wanted) : null,
        };
    }

    /// <summary>What cannot be said, and the cheapest way to each missing number.</summary>
    public static Finding Open(
        this ICheck check, IReadOnlyList<Position> between, string what, IEnumerable<Missing> missing, Unit unit, Window wanted, string source)
    {
        var all = missing.ToList();
        return new()
        {
            Check = check.Id,
            Title = check.Title,
            Verdict = Verdict.Open,
            Because = Because.MissingInput,
            Between = between,
            Says = $"{what} cannot be said: {string.Join(" and ", all.Select(entry => entry.What))}.",
            Unit = unit,
            Wanted = wanted,
            Source = source,
            Cures = [.. all.Select(entry => entry.Cure)],
        };
    }
}

/// <summary>What a check has to say of one value.</summary>
internal sealed record Judgement(IReadOnlyList<Position> Between, Measured Value, Unit Unit, Window Wanted, string Says, string Source)
{
    public const string OwnersGoal = "owner's goal";

    /// <summary>False for a limit from memory or common practice.</summary>
    public bool LimitIsVerified { get; init; } = true;

    public IEnumerable<string> Cures { get; init; } = [];

    public IReadOnlyList<PartWindow> Windows { get; init; } = [];
}
