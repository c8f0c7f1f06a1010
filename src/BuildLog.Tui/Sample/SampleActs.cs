using System.Globalization;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Sample;

/// <summary>Acts on the invented shop: they ask and say, and keep nothing.</summary>
internal sealed class SampleActs(WorkbenchModel open) : IWorkbenchActs
{
    public WorkbenchModel Open() => open;

    public void ChooseVehicle(IWorkbenchView view, long vehicleId) => view.Show(InventedShop.Workbench(vehicleId, view.Model.Banner));

    public void NewVehicle(IWorkbenchView view)
    {
        if (view.Fill(Vehicle("New vehicle", "", ""))) view.Say("The sample shop keeps nothing, but the form was in order.");
    }

    public void EditVehicle(IWorkbenchView view) => view.Fill(Vehicle("Edit vehicle", view.Model.Chosen?.Name ?? "", "being built"));

    public void FitPart(IWorkbenchView view, string? position) =>
        view.Say(position is null ? "Which position? The sample shop does not ask." : $"Fit a part: {position}.");

    public void CountTurns(IWorkbenchView view)
    {
        if (view.Fill(Turns())) view.Say("Counted.");
    }

    public void RollOut(IWorkbenchView view) => throw new InvalidOperationException("The tape measure is nowhere to be found.");

    public void EditGoal(IWorkbenchView view)
    {
        var question = new Question("Remove the goal?", "Without a goal nothing can be judged. It cannot be brought back.", "Remove it", "Keep it");
        view.Say(view.Confirm(question) ? "Goal removed." : "Goal kept.");
    }

    public void WriteSheet(IWorkbenchView view) => view.Say("Wrote heron-estate.pdf, 2 pages.");

    private static Form Vehicle(string title, string name, string state) => new()
    {
        Title = title,
        Entries =
        [
            new TextEntry("name", "Name")
            {
                Initial = name,
                Hint = "what you call it, such as Heron estate",
                Check = values => values.IsEmpty("name") ? "Give it a name, such as Heron estate." : null,
            },
            new ChoiceEntry("drive", "Driven wheels", [new("rear", "rear"), new("front", "front"), new("all", "all four")]) { Initial = "rear" },
            new YesNoEntry("fulltime", "All the time") { ShownWhen = values => values["drive"] == "all", Hint = "no: the front axle is switched in" },
            new TextEntry("state", "State") { Initial = state, Hint = "such as being built, on the road" },
            new TextEntry("odometer", "Odometer") { Hint = "as it stands today, such as 48310 km" },
            new TextEntry("owner", "Owner") { Hint = "for the build sheet" },
            new TextEntry("mass", "Mass") { Hint = "ready to drive, such as 1250 kg" },
            new LinesEntry("notes", "Notes", 3),
        ],
        Save = values => values["name"] == "Wren coupé" ? SaveOutcome.Refuse("name", "There is a vehicle of that name already.") : SaveOutcome.Done,
    };

    private static Form Turns() => new()
    {
        Title = "Count turns: axle ratio",
        Cautions =
        [
            "The vehicle stands on firm, level ground, on stands rated for it. Never under a vehicle that only a jack holds.",
            "The wheels that stay on the ground are chocked on both sides.",
            "The engine is off, the battery isolated, the gearbox in neutral. The wheels are turned by hand.",
            "Someone knows where you are, or is with you.",
            "Local codes and licensed practice decide what you may do yourself.",
        ],
        HelpPage = "Measured",
        SaveCaption = "Record",
        Entries =
        [
            new ChoiceEntry("wheels", "Wheels", [new("one", "one held, the other turned"), new("both", "both turned together")])
            {
                Hint = "open differential: turn one wheel, does the other turn backwards? Then hold it",
            },
            new LinesEntry("readings", "Readings")
            {
                Hint = "wheel turns : propshaft turns, one count a line, such as 10:20 1/2",
                Check = values => values.Lines("readings").Count == 0 ? "At least one count, such as 10:20 1/2." : null,
            },
            new TextEntry("read", "Read to") { Initial = "1/4", Hint = "smallest part of a turn you read, such as 1/4", Echo = _ => "= 0.25 turn" },
        ],
        Echo = values => values.Lines("readings") is { Count: > 0 } lines
            ? [string.Create(CultureInfo.InvariantCulture, $"{lines.Count} counts: ratio 4.08 ± 0.02, nearest 41/10")]
            : [],
        Save = _ => SaveOutcome.Done,
    };
}
