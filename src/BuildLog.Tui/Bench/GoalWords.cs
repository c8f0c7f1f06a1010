using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Bench;

/// <summary>What the owner wants, and what follows from it for each part.</summary>
public static class GoalWords
{
    public static GoalModel Of(OwnersGoals goals, IReadOnlyList<Finding> findings, UnitSystem units)
        => new(
            [.. goals.Cruise.Select(InWords)],
            [.. findings.SelectMany(finding => finding.Windows).Select(window => Follows(window, units.Shown(window.Unit)))]);

    /// <summary><c>Cruise at 110 km/h in top gear with 2400 rev/min; 2280 to 2520 rev/min will do.</c></summary>
    public static string InWords(CruiseGoal goal)
    {
        var (rpm, gear) = (Units.RevolutionPerMinute, goal.Gear is null ? "top gear" : $"gear {goal.Gear}");
        var wish = double.IsFinite(goal.Wanted.Low) ? $"{Rounded.WithUnit(Rounded.Exact(rpm.FromBase(goal.EngineSpeed.Value)), rpm)}; {goal.Wanted.InWords(rpm)} will do" : goal.Wanted.InWords(rpm);
        return $"Cruise at {goal.Speed.Text} in {gear} with {wish}.";
    }

    private static string Follows(PartWindow window, Unit unit)
        => window switch
        {
            { SureWindow: { } sure } => $"{window.InWords(unit)} would do; {sure.InWords(unit)} is sure with today's uncertainties.",
            { OpenedBy: { } step } => $"{window.InWords(unit)} would do, but no value is sure yet: {step}.",
            _ => $"{window.InWords(unit)} would do.",
        };
}
