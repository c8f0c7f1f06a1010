using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Options;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Bench;

/// <summary>What the owner wants, and what follows from it for each part.</summary>
public static class GoalWords
{
    /// <param name="goals">The wishes.</param>
    /// <param name="windows">What each part may be, from all of them together.</param>
    /// <param name="units">The units to show.</param>
    public static GoalModel Of(OwnersGoals goals, IReadOnlyList<WindowOfPart> windows, UnitSystem units) => new(Wants(goals, units), [.. windows.GroupBy(Demanded).SelectMany(alike => Follows(alike, units))]);

    /// <summary>Each wish as a sentence.</summary>
    public static IReadOnlyList<string> Wants(OwnersGoals goals, UnitSystem units) => [.. goals.Cruise.SelectMany(goal => WithQuestion(goal, units)), .. Others(goals, units)];

    private static IEnumerable<string> Others(OwnersGoals goals, UnitSystem units)
    {
        if (goals.Hill is { } hill) yield return Spoken($"Hold a hill of {hill.Gradient.InWords} at {units.InWords(hill.Speed)} in {(hill.Gear is null ? Spoken("top gear") : Spoken($"gear {hill.Gear}"))}.");
        if (goals.HillStart is { } start) yield return Spoken($"Start on a hill of {start.Gradient.InWords}.");
        if (goals.TopSpeed is { } top) yield return Spoken($"Top speed of {units.InWords(top.Speed)} or more.");
        if (goals.OverallLow is { } low) yield return Spoken($"Overall low ratio of {low.Ratio.InWords} or more.");
        if (goals.TyreDiameter is { } diameter) yield return Spoken($"Tyres of {units.InWords(diameter.Most)} across or less.");
        if (goals.TyreWidth is { } width) yield return Spoken($"Tyres of {units.InWords(width.Most)} width or less.");
        if (goals.Track is { } track) yield return Spoken($"Track of {units.InWords(track.Most)} or less.");
    }

    /// <summary><c>Cruise at 110 km/h in top gear with 2400 rev/min; 2280 to 2520 rev/min will do.</c></summary>
    /// <param name="goal">The goal.</param>
    /// <param name="units">The units to show; null for the owner's own, as on a build sheet.</param>
    public static string InWords(CruiseGoal goal, UnitSystem? units = null)
    {
        var (rpm, gear) = (Units.RevolutionPerMinute, goal.Gear is null ? Spoken("top gear") : Spoken($"gear {goal.Gear}"));
        var wish = double.IsFinite(goal.Wanted.Low) ? Spoken($"{Rounded.WithUnit(Rounded.Exact(rpm.FromBase(goal.EngineSpeed.Value)), rpm)}; {goal.Wanted.InWords(rpm)} will do") : goal.Wanted.InWords(rpm);
        return Spoken($"Cruise at {units?.InWords(goal.Speed) ?? goal.Speed.InWords} in {gear} with {wish}.");
    }

    /// <summary>The same, and whether it is meant where that is doubtful.</summary>
    public static IReadOnlyList<string> WithQuestion(CruiseGoal goal, UnitSystem units) => goal.Question is { } question ? [InWords(goal, units), $"? {question}"] : [InWords(goal, units)];

    private static IEnumerable<string> Follows(IGrouping<string, WindowOfPart> alike, UnitSystem units)
        => alike.Key.Length == 0 ? alike.Select(window => WindowWords.Of(window, units)) : [$"{alike.Key}:", .. alike.Select(window => $"  {WindowWords.Of(window, units)}")];

    // Whose wish sets its ends: they may be of two.
    private static string Demanded(WindowOfPart window) => (window.Contradiction, window.Lowest?.InWords, window.Highest?.InWords) switch
    {
        (null, { } low, { } high) when low != high => Spoken($"no less for {low}, no more for {high}"),
        (null, var low, var high) => low ?? high ?? "",
        _ => "",
    };
}
