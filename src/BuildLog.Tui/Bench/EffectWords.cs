using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

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
        var (was, will) = (CruiseCheck.EngineSpeed(before, goal), CruiseCheck.EngineSpeed(after, goal));
        if (was is not null || will is not null) yield return Spoken($"Cruise    {InWords(was)} → {InWords(will)}");
    }

    private static string InWords(Measured? engineSpeed) => engineSpeed is null ? Spoken("cannot be said") : Rounded.WithInterval(engineSpeed, Units.RevolutionPerMinute);
}
