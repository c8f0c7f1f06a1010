using BuildLog.Data.Sessions;
using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Measurements;

/// <summary>A turn count from the first caution to the kept session, or typed in when it has been counted already.</summary>
/// <remarks>A tally that is left is kept while the program runs, and offered again.</remarks>
internal sealed class TallyActs
{
    private const string Count = "count";
    private const string GoOn = "go on";
    private const string Typed = "typed";
    private readonly Dictionary<long, TallyModel> interrupted = [];

    /// <returns>Whether a session was kept.</returns>
    public bool Run(IWorkbenchView view, long axleId, string axle, DateOnly today, Action<Action<TurnCountSession>> save)
    {
        var tally = interrupted.GetValueOrDefault(axleId);
        switch (view.Choose("Count turns", Ways(tally)))
        {
            case Typed: return view.Fill(TurnCountForm.For(axle, today, save));
            case Count: tally = Begun(view, axle); break;
            case GoOn: break;
            default: return false;
        }

        if (tally is null) return false;
        interrupted[axleId] = tally;
        if (Finished(view, tally) is not { } finished || !view.Fill(TurnCountForm.For(axle, today, save, finished))) return false;
        interrupted.Remove(axleId);
        return true;
    }

    private static List<ChoiceOption> Ways(TallyModel? tally) =>
    [
        .. tally is null ? Enumerable.Empty<ChoiceOption>() : [new(GoOn, FormattableString.Invariant($"go on with the count under way, {tally.WheelTurns}:{tally.PropshaftTurns}"))],
        new(Count, "count now, a key for each turn"),
        new(Typed, "type a count I have already"),
    ];

    private static TallyModel? Begun(IWorkbenchView view, string axle)
    {
        TallyModel? begun = null;
        return view.Fill(TallyForms.SetUp(axle, wheels => begun = new(axle, wheels))) ? begun : null;
    }

    private static FinishedTally? Finished(IWorkbenchView view, TallyModel tally)
    {
        if (!view.Tally(tally)) return null;
        FinishedTally? finished = null;
        var isRead = view.Fill(TallyForms.Fraction(tally, (fraction, readTo) => finished = new(tally.Wheels, tally.Reading(fraction), readTo)));
        return isRead ? finished : null;
    }
}

/// <summary>A count as the tally leaves it, ready for the form.</summary>
public sealed record FinishedTally(Wheels Wheels, string Reading, string ReadTo);
