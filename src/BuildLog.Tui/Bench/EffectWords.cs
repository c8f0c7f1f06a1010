using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;

namespace BuildLog.Tui.Bench;

/// <summary>What another part would do, said before it is fitted: cruise engine speed and findings, before and after.</summary>
internal static class EffectWords
{
    public static IReadOnlyList<string> Of(Driveline before, Driveline after, OwnersGoals goals) =>
    [
        .. Cruise(before, after, goals),
        Spoken($"Findings  {FindingsWords.Count(AllChecks.Look(before, goals)).Summary()} → {FindingsWords.Count(AllChecks.Look(after, goals)).Summary()}"),
    ];

    private static IEnumerable<string> Cruise(Driveline before, Driveline after, OwnersGoals goals)
    {
        if (goals.Cruise.FirstOrDefault() is not { } goal) yield break;
        var (was, will) = (HistoryWords.Cruise(CruiseCheck.EngineSpeed(before, goal)), HistoryWords.Cruise(CruiseCheck.EngineSpeed(after, goal)));
        if (was.Length + will.Length > 0) yield return Spoken($"Cruise    {Known(was)} → {Known(will)}");
    }

    private static string Known(string cruise) => cruise.Length > 0 ? cruise : Spoken("cannot be said");
}
