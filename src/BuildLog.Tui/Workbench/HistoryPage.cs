using BuildLog.Tui.Fitments;
using BuildLog.Tui.Shell;
using Terminal.Gui.Input;

namespace BuildLog.Tui.Workbench;

/// <summary>The swaps, newest first, with what each changed.</summary>
/// <param name="acts">Corrects and strikes; null where the swaps can only be read.</param>
internal sealed class HistoryPage(FitmentActs? acts = null) : ListPage("History", Spoken("History"), Spoken("No part has been fitted yet. Press f, or Enter on a box of the strip."))
{
    private bool isEmpty = true;

    public override IReadOnlyList<PageAct> Acts => isEmpty ? [] : EveryAct;

    public override IReadOnlyList<PageAct> EveryAct => acts is null ? [] :
    [
        new(Key.Enter, Spoken("Correct the chosen swap: its day, odometer reading, reason or place"), new("Enter", Spoken("correct")), (view, vehicle) => acts.Correct(view, vehicle.Id, Row)),
        new((Key)'-', Spoken("Strike a swap that never was"), new("-", Spoken("strike")), (_, vehicle) => acts.Strike(vehicle.Id, Row)),
    ];

    public override void Show(VehicleModel vehicle, bool fromTop)
    {
        isEmpty = vehicle.History.Rows.Count == 0;
        Show([new(Spoken("date"), 11), new(Spoken("position"), 13), new(Spoken("change")), new(Spoken("cruise"), 20, Right: true, FromWidth: 76)], vehicle.History.Rows, Cells, (row, _) => HistoryText.Of(row, vehicle.History.Doubts ?? [], vehicle.History.Goals), fromTop);
    }

    private static TextRun[] Cells(HistoryRow row) =>
        [new(row.Date), new(row.Position), new(HistoryText.Change(row)), new(HistoryText.Cruise(row), Tone.Quiet)];
}
