using BuildLog.Data.Drivelines;
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
    public static HistoryModel Of(IReadOnlyList<Swap> swaps, OwnersGoals goals) => new([.. swaps.Reverse().Select(swap => Row(swap, goals))]);

    /// <summary>An engine speed in rev/min, or nothing where it cannot be said.</summary>
    public static string Cruise(Measured? engineSpeed) => engineSpeed is null ? "" : Rounded.Value(engineSpeed, Units.RevolutionPerMinute);

    private static HistoryRow Row(Swap swap, OwnersGoals goals)
    {
        var effect = swap.Effect(goals);
        return new(
            DayText.InShort(swap.Day),
            swap.Position.InWords(),
            swap.Removed?.Name,
            swap.Fitted?.Name,
            swap.Odometer is { } odometer ? $"{swap.Reason} ({odometer.InWords})".Trim() : swap.Reason,
            Cruise(effect.Before.CruiseEngineSpeed),
            Cruise(effect.After.CruiseEngineSpeed));
    }
}
