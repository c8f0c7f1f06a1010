using BuildLog.Data.Goals;
using BuildLog.Gearing.Goals;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Goals;

/// <summary>Asks for a hill to hold a road speed on.</summary>
public static class HillForm
{
    /// <param name="goal">A new goal, or one to be changed.</param>
    /// <param name="gears">What the driver can select; empty while no gearbox is fitted.</param>
    /// <param name="save">Stores it with the edit applied; refusals stay in the form.</param>
    /// <param name="units">The units to show; null for metric ones.</param>
    public static Form For(HillGoalEntry goal, IReadOnlyList<string> gears, Action<Action<HillGoalEntry>> save, UnitSystem? units = null) => new()
    {
        Title = Spoken("Hill to hold"),
        HelpPage = "Goal",
        Entries =
        [
            new TextEntry("gradient", Spoken("Gradient")) { Initial = goal.Gradient, Hint = Spoken("such as 6 %"), Check = Forms.Checks.Needed("gradient", HillStartGoal.Read) },
            RoadSpeedEntry.Of(goal.Speed, Spoken("such as 90 km/h"), units ?? UnitSystem.Metric),
            GearEntry.Of(goal.Gear, gears),
        ],
        Save = values => Forms.Checks.Try(() => save(edited => (edited.Gradient, edited.Speed, edited.Gear) = (values["gradient"], RoadSpeedEntry.In(values, units ?? UnitSystem.Metric), GearEntry.In(values)))),
    };
}
