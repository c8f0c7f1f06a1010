using BuildLog.Data.Drivelines;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Bench;

/// <summary>Swaps as rows, the latest first, with what each changed.</summary>
public static class HistoryWords
{
    /// <param name="swaps">From the first to the last.</param>
    /// <param name="goals">What the owner wants.</param>
    /// <param name="units">The units to show.</param>
    /// <param name="doubts">What is not certain of today.</param>
    public static HistoryModel Of(IReadOnlyList<Swap> swaps, OwnersGoals goals, UnitSystem units, IReadOnlyList<string> doubts)
        => new([.. swaps.Reverse().Select(swap => Row(swap, goals, units))], doubts)
        {
            Goals = goals.Cruise is [var cruise, ..] ? Spoken($"Every swap is judged by today's goals, so that one compares with another. {GoalWords.InWords(cruise, units)}") : "",
        };

    /// <summary>An engine speed in rev/min, or nothing where it cannot be said.</summary>
    public static string Cruise(Measured? engineSpeed) => engineSpeed is null ? "" : Rounded.Value(engineSpeed, Units.RevolutionPerMinute);

    private static VerdictCounts Counts(GoalState state) => new(
        state.Findings.GetValueOrDefault(Verdict.Clash), state.Findings.GetValueOrDefault(Verdict.Open),
        state.Findings.GetValueOrDefault(Verdict.Watch), state.Findings.GetValueOrDefault(Verdict.Fits));

    private static string Spent(SwapEffect effect)
    {
        var (before, after) = (string.Join(" + ", effect.Before.Spent), string.Join(" + ", effect.After.Spent));
        return before == after ? "" : Spoken($"{(before.Length > 0 ? before : Spoken("nothing"))} → {after} in all");
    }

    private static HistoryRow Row(Swap swap, OwnersGoals goals, UnitSystem units)
    {
        var effect = swap.Effect(goals);
        return new(
            DayText.InShort(swap.Day),
            swap.Position.InWords(),
            swap.Removed?.Name,
            swap.Fitted?.Name,
            swap.Odometer is { } odometer ? $"{swap.Reason} ({odometer.InWords})".Trim() : swap.Reason,
            Cruise(effect.Before.CruiseEngineSpeed),
            Cruise(effect.After.CruiseEngineSpeed))
        {
            Findings = $"{Counts(effect.Before).Summary()} → {Counts(effect.After).Summary()}",
            Moved = [.. SwapWords.Of(effect.Moves, units)],
            Spent = Spent(effect),
        };
    }
}
