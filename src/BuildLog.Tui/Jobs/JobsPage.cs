using BuildLog.Tui.Forms;
using BuildLog.Tui.Shell;
using BuildLog.Tui.Workbench;
using Terminal.Gui.Input;

namespace BuildLog.Tui.Jobs;

/// <summary>Jobs, deadlines and costs; below the chosen one its hours, its costs and what was given out.</summary>
internal sealed class JobsPage(JobsActs acts) : ListPage("Jobs", Spoken("Jobs"), Spoken("Nothing to be done is noted. Press + for a job or a deadline, c for a cost."))
{
    private JobsModel model = new([], "");

    public override IReadOnlyList<PageAct> Acts => Chosen is null ? [.. EveryAct.Where(act => act.AtOnce)] : EveryAct;

    public override IReadOnlyList<PageAct> EveryAct =>
    [
        new((Key)'+', Spoken("Add a job or a deadline"), new("+", Spoken("add")), (view, vehicle) => acts.Add(view, vehicle.Id)) { AtOnce = true },
        new(Key.Enter, Spoken("Edit the chosen job or deadline"), new("Enter", Spoken("edit")), (view, vehicle) => acts.Edit(view, vehicle.Id, Chosen!)),
        new((Key)'d', Spoken("Mark the job or deadline done, or open it again"), new("d", Spoken("done")), (_, vehicle) => acts.Done(vehicle.Id, Chosen!)),
        new((Key)'h', Spoken("Note hours worked on the job"), new("h", Spoken("hours")), (view, vehicle) => acts.Hours(view, vehicle.Id, Chosen!)),
        new((Key)'c', Spoken("Note a cost of the job, or of the vehicle"), new("c", Spoken("cost")), (view, vehicle) => acts.Spend(view, vehicle.Id, Chosen)) { AtOnce = true },
        new((Key)'o', Spoken("Give work of the job out, or take it back in"), new("o", Spoken("give out")), (view, vehicle) => acts.GiveOut(view, vehicle.Id, Chosen!)),
        new((Key)'-', Spoken("Strike the chosen job or deadline, or one of its hours and costs"), new("-", Spoken("strike")), (view, vehicle) => acts.Strike(view, vehicle.Id, Chosen!)),
    ];

    private JobRow? Chosen => model.Rows.ElementAtOrDefault(Row);

    public override void Show(VehicleModel vehicle, bool fromTop)
    {
        model = acts.Read(vehicle.Id);
        Show(
            [new(Spoken("state"), 9), new(Spoken("to be done")), new(Spoken("by"), 11), new(Spoken("worked"), 9, Right: true, FromWidth: 70), new(Spoken("spent"), 12, Right: true, FromWidth: 70)],
            model.Rows,
            Cells,
            (row, _) => [TextLine.Of(new TextRun(row.Title, Tone.Strong)), .. row.Lines.Select(line => TextLine.Of(line)), TextLine.Of(Spoken($"All of it: {model.Total}."), Tone.Quiet)],
            fromTop);
    }

    private static TextRun[] Cells(JobRow row) =>
    [
        new(row.IsLate ? Spoken("late") : row.State, row.IsLate ? Tone.Clash : row.IsOver ? Tone.Quiet : Tone.Plain),
        new(row.Title, row.IsOver ? Tone.Quiet : Tone.Strong),
        new(row.Due is { } due ? DayText.InShort(due) : ""),
        new(row.Hours),
        new(row.Cost),
    ];
}
