using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Bench;

/// <summary>What the owner wants, and what follows from it for each part.</summary>
public static class GoalWords
{
    public static GoalModel Of(OwnersGoals goals, IReadOnlyList<Finding> findings)
        => new(
            [.. goals.Cruise.Select(InWords)],
            [.. findings.SelectMany(finding => finding.Windows).Select(Follows)]);

    /// <summary><c>Cruise at 110 km/h in top gear with 2280 to 2520 rev/min.</c></summary>
    public static string InWords(CruiseGoal goal)
        => $"Cruise at {goal.Speed.Text} in {(goal.Gear is null ? "top gear" : $"gear {goal.Gear}")} with {goal.Wanted.InWords(Units.RevolutionPerMinute)}.";

    private static string Follows(PartWindow window)
        => window switch
        {
            { SureWindow: { } sure } => $"{window.InWords()} would do; {sure.InWords(window.Unit)} is sure with today's uncertainties.",
            { OpenedBy: { } step } => $"{window.InWords()} would do, but no value is sure yet: {step}.",
            _ => $"{window.InWords()} would do.",
        };
}
