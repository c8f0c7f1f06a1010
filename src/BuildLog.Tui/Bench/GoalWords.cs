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
            [.. goals.Cruise.SelectMany(WithQuestion), .. Others(goals)],
            [.. findings.SelectMany(finding => finding.Windows.Select(window => $"{finding.Title}: {Follows(window, units.Shown(window.Unit))}"))]);

    private static IEnumerable<string> Others(OwnersGoals goals)
    {
        if (goals.Hill is { } hill) yield return Spoken($"Hold a hill of {hill.Gradient.InWords} at {hill.Speed.InWords} in {(hill.Gear is null ? Spoken("top gear") : Spoken($"gear {hill.Gear}"))}.");
        if (goals.HillStart is { } start) yield return Spoken($"Start on a hill of {start.Gradient.InWords}.");
        if (goals.TopSpeed is { } top) yield return Spoken($"Top speed of {top.Speed.InWords} or more.");
        if (goals.OverallLow is { } low) yield return Spoken($"Overall low ratio of {low.Ratio.InWords} or more.");
        if (goals.TyreDiameter is { } diameter) yield return Spoken($"Tyres of {diameter.Most.InWords} across or less.");
        if (goals.TyreWidth is { } width) yield return Spoken($"Tyres of {width.Most.InWords} width or less.");
        if (goals.Track is { } track) yield return Spoken($"Track of {track.Most.InWords} or less.");
    }

    /// <summary><c>Cruise at 110 km/h in top gear with 2400 rev/min; 2280 to 2520 rev/min will do.</c></summary>
    public static string InWords(CruiseGoal goal)
    {
        var (rpm, gear) = (Units.RevolutionPerMinute, goal.Gear is null ? Spoken("top gear") : Spoken($"gear {goal.Gear}"));
        var wish = double.IsFinite(goal.Wanted.Low) ? Spoken($"{Rounded.WithUnit(Rounded.Exact(rpm.FromBase(goal.EngineSpeed.Value)), rpm)}; {goal.Wanted.InWords(rpm)} will do") : goal.Wanted.InWords(rpm);
        return Spoken($"Cruise at {goal.Speed.InWords} in {gear} with {wish}.");
    }

    /// <summary>The same, and whether it is meant where that is doubtful.</summary>
    public static IReadOnlyList<string> WithQuestion(CruiseGoal goal) => goal.Question is { } question ? [InWords(goal), $"? {question}"] : [InWords(goal)];

    private static string Follows(PartWindow window, Unit unit)
        => window switch
        {
            { AsMade: null } => Spoken($"{window.InWords(unit)} would do, and none is made so."),
            { SureWindow: { } sure } => Spoken($"{window.InWords(unit)} would do; {sure.AsTyped(unit) ?? sure.InWords(unit)} is sure with today's uncertainties."),
            { OpenedBy: { } step } => Spoken($"{window.InWords(unit)} would do, but no value is sure yet: {step}."),
            _ => Spoken($"{window.InWords(unit)} would do."),
        };
}
