using BuildLog.Data;
using BuildLog.Data.Plans;
using BuildLog.Data.Vehicles;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Plans;

/// <summary>Asks for the name under which changes are kept as a plan.</summary>
internal static class PlanForm
{
    public static Form For(string title, string proposedName, Shop shop, Vehicle vehicle, IReadOnlyList<PlannedChange> changes, DateOnly today, IReadOnlyList<PlannedWish>? wishes = null) => new()
    {
        Title = title,
        HelpPage = "Plans",
        SaveCaption = Spoken("Keep"),
        Entries = [new TextEntry("name", Spoken("Name")) { AnswersFor = ["name-of-the-plan"], Initial = PlanName.Free(shop, vehicle, proposedName), Check = values => values.IsEmpty("name") ? Spoken("A plan has a name.") : PlanName.Taken(shop, vehicle, values["name"])?.Sentence }],
        Save = values => Checks.Try(() => shop.Add(new Plan(vehicle) { Name = values["name"], Date = today, Changes = changes, Wishes = wishes ?? [] })),
    };
}
