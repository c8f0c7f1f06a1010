using BuildLog.Data.Goals;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Goals;

/// <summary>Asks for a cruise goal: an engine speed at a road speed.</summary>
public static class GoalForm
{
    /// <param name="goal">A new goal, or one to be changed.</param>
    /// <param name="gears">What the driver can select, as the choice of gear; empty while no gearbox is fitted.</param>
    /// <param name="save">Stores it with the edit applied; refusals stay in the form.</param>
    /// <param name="units">The units to show; null for metric ones.</param>
    public static Form For(CruiseGoalEntry goal, IReadOnlyList<string> gears, Action<Action<CruiseGoalEntry>> save, UnitSystem? units = null) => new()
    {
        Title = Spoken("Cruise goal"),
        HelpPage = "Goal",
        Entries =
        [
            RoadSpeedEntry.Of(goal.Speed, Spoken("such as 110 km/h or 70 mph"), units ?? UnitSystem.Metric),
            new TextEntry("engine", Spoken("Engine speed"))
            {
                Initial = goal.EngineSpeed,
                Hint = Spoken("such as 2400 rpm, or 2400 to 2700 rpm"),
                Check = Forms.Checks.Needed("engine", ReadEngineSpeed),
                Echo = values => Range(values) is { } range ? Spoken($"= {range.Middle}, give or take {range.Tolerance}") : OtherUnits.Of("engine", CruiseGoal.ReadEngineSpeed)(values),
            },
            new TextEntry("tolerance", Spoken("Give or take"))
            {
                Initial = goal.Tolerance,
                ShownWhen = values => Range(values) is null,
                Hint = Spoken($"5 %, 150 rpm, -100/+200 rpm or {CruiseGoal.AtMost}; empty is {CruiseGoal.UsualTolerance}"),
                Check = values => CruiseGoal.ReadEngineSpeed(values["engine"]).Understood(out var n) ? CruiseGoal.ReadTolerance(values["tolerance"], n).Refusal?.Sentence : null,
                Echo = Tolerated,
            },
            GearEntry.Of(goal.Gear, gears),
        ],
        Echo = values => CruiseGoal.Read(RoadSpeedEntry.In(values, units ?? UnitSystem.Metric), EngineSpeed(values), Tolerance(values), GearEntry.In(values)).Understood(out var understood)
            ? [GoalWords.InWords(understood, units ?? UnitSystem.Metric), .. understood.Question is { } question && $"? {question}" != Tolerated(values) ? (string[])[$"? {question}"] : []]
            : [],
        Save = values => Forms.Checks.Try(() => save(edited =>
            (edited.Speed, edited.EngineSpeed, edited.Tolerance, edited.Gear) = (RoadSpeedEntry.In(values, units ?? UnitSystem.Metric), EngineSpeed(values), Tolerance(values), GearEntry.In(values)))),
    };

    private static EngineRange? Range(FormValues values) => EngineRange.Read(values["engine"]) is { } read && read.Understood(out var range) ? range : null;

    private static string EngineSpeed(FormValues values) => Range(values)?.Middle ?? values["engine"];

    private static string Tolerance(FormValues values) => Range(values)?.Tolerance ?? values["tolerance"];

    private static Parsed<Typed> ReadEngineSpeed(string text) => EngineRange.Read(text) is { } read ? read.Then(range => CruiseGoal.ReadEngineSpeed(range.Middle)) : CruiseGoal.ReadEngineSpeed(text);

    // What will do, or whether so little is meant: a bare 5 may have been meant as a share.
    private static string? Tolerated(FormValues values)
        => CruiseGoal.ReadEngineSpeed(values["engine"]).Understood(out var n) && CruiseGoal.ReadTolerance(values["tolerance"], n).Understood(out var wanted)
            ? CruiseGoal.QuestionOf(wanted, n) is { } question ? $"? {question}" : $"= {wanted.InWords(Units.RevolutionPerMinute)}"
            : null;
}
