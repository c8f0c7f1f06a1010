using BuildLog.Data.Goals;
using BuildLog.Gearing.Goals;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Goals;

/// <summary>Asks for a hill to hold a road speed on.</summary>
public static class HillForm
{
    /// <param name="goal">A new goal, or one to be changed.</param>
    /// <param name="gears">What the driver can select; empty while no gearbox is fitted.</param>
    /// <param name="save">Stores it with the edit applied; refusals stay in the form.</param>
    public static Form For(HillGoalEntry goal, IReadOnlyList<string> gears, Action<Action<HillGoalEntry>> save) => new()
    {
        Title = Spoken("Hill to hold"),
        HelpPage = "Goal",
        Entries =
        [
            new TextEntry("gradient", Spoken("Gradient")) { Initial = goal.Gradient, Hint = Spoken("such as 6 %"), Check = Forms.Checks.Needed("gradient", HillStartGoal.Read) },
            new TextEntry("speed", Spoken("Road speed"))
            {
                Initial = goal.Speed,
                Hint = Spoken("such as 90 km/h"),
                Check = Forms.Checks.Needed("speed", CruiseGoal.ReadSpeed),
                Echo = OtherUnits.Of("speed", CruiseGoal.ReadSpeed),
            },
            GearEntry.Of(goal.Gear, gears),
        ],
        Save = values => Forms.Checks.Try(() => save(edited => (edited.Gradient, edited.Speed, edited.Gear) = (values["gradient"], values["speed"], GearEntry.In(values)))),
    };
}
