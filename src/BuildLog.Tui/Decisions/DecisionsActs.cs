using BuildLog.Data;
using BuildLog.Data.Days;
using BuildLog.Data.Decisions;
using BuildLog.Data.Notes;
using BuildLog.Data.Plans;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Decisions;

/// <summary>What the keys of the page of decisions do. Each act returns what happened, or null if nothing did.</summary>
public sealed class DecisionsActs(Shop shop, TimeProvider clock)
{
    private const string ADecision = "decision";
    private const string ANote = "note";

    private static string OnPlans => Spoken("A rejected plan is decided anew on the page Plans, with o.");

    private DateOnly Today => clock.Today();

    public DecisionsModel Read(long vehicleId)
    {
        var vehicle = shop.FindVehicle(vehicleId);
        return new(
        [
            .. shop.Decisions(vehicle).Select(decision => (decision.Date, Row: new DecisionRow(DecisionKind.Decision, decision.Id, decision.Day, decision.What, decision.AgreedBy, decision.Why)))
                .Concat(shop.NotesOf(vehicle).Select(note => (note.Date, Row: new DecisionRow(DecisionKind.Note, note.Id, note.Day, note.Title, "", note.Body))))
                .Concat(shop.Plans(vehicle).Where(plan => plan.State == PlanState.Rejected)
                    .Select(plan => (plan.Date, Row: new DecisionRow(DecisionKind.Rejection, plan.Id, LooseDay.On(plan.Date), Spoken($"plan {plan.Name}"), "", plan.Reason))))
                .OrderByDescending(dated => dated.Date)
                .Select(dated => dated.Row),
        ]);
    }

    public string? Add(IFormHost host, long vehicleId)
    {
        var vehicle = shop.FindVehicle(vehicleId);
        var form = host.Choose(Spoken($"Write down what about {vehicle.Name}?"), [new(ADecision, Spoken("a decision")), new(ANote, Spoken("a note"))], help: "Decisions") switch
        {
            ADecision => DecisionForm.For(new Decision(vehicle), Today, edit => shop.Add(new Decision(vehicle), edit)),
            ANote => DecisionForm.For(new Note(vehicle), Today, edit => shop.Add(new Note(vehicle), edit)),
            _ => null,
        };
        return form is not null && host.Fill(form) ? Spoken("Written down.") : null;
    }

    public string? Edit(IFormHost host, long vehicleId, DecisionRow row)
    {
        if (row.Kind == DecisionKind.Rejection) return OnPlans;

        return host.Fill(row.Kind == DecisionKind.Decision ? Form(Decision(vehicleId, row)) : Form(Note(vehicleId, row))) ? Spoken("Changed.") : null;
    }

    public string Strike(long vehicleId, DecisionRow row)
    {
        if (row.Kind == DecisionKind.Rejection) return OnPlans;
        if (row.Kind == DecisionKind.Decision) shop.Remove(Decision(vehicleId, row));
        else shop.Remove(Note(vehicleId, row));
        return Spoken($"Struck: {(row.Kind == DecisionKind.Decision ? Spoken("a decision") : Spoken("a note"))}. z brings it back.");
    }

    private Form Form(Decision decision) => DecisionForm.For(decision, Today, edit => shop.Change(decision, edit));

    private Form Form(Note note) => DecisionForm.For(note, Today, edit => shop.Change(note, edit));

    private Decision Decision(long vehicleId, DecisionRow row) => shop.Decisions(shop.FindVehicle(vehicleId)).First(decision => decision.Id == row.Id);

    private Note Note(long vehicleId, DecisionRow row) => shop.NotesOf(shop.FindVehicle(vehicleId)).First(note => note.Id == row.Id);
}
