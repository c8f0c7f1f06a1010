using BuildLog.Tui.Measurements;
using BuildLog.Tui.Shell;
using Terminal.Gui.Input;

namespace BuildLog.Tui.Workbench;

/// <summary>The measurement sessions and road tests, newest first; below them the readings and what follows.</summary>
/// <param name="acts">Corrects and strikes sessions; null where they can only be read.</param>
internal sealed class MeasuredPage(SessionActs? acts = null) : ListPage("Measured", Spoken("Measured"), Spoken("Nothing measured yet. Count turns of the propshaft with t, or roll a tyre out with r."))
{
    private IReadOnlyList<SessionRow> rows = [];

    public override IReadOnlyList<PageAct> Acts => rows.Count == 0 ? [] : EveryAct;

    public override IReadOnlyList<PageAct> EveryAct => acts is null ? [] :
    [
        new(Key.Enter, Spoken("Correct a session: its readings, day or conditions"), new("Enter", Spoken("correct")), (view, vehicle) => rows[Row].IsDrive ? acts.CorrectDrive(view, vehicle.Id, rows[Row].Id) : acts.Correct(view, vehicle.Id, rows[Row].Id)),
        new((Key)'-', Spoken("Strike a session entered by mistake"), new("-", Spoken("strike")), (_, vehicle) => rows[Row].IsDrive ? acts.StrikeDrive(vehicle.Id, rows[Row].Id) : acts.Strike(vehicle.Id, rows[Row].Id)),
    ];

    public override void Show(VehicleModel vehicle, bool fromTop)
    {
        rows = vehicle.Measurements.Rows;
        Show([new(Spoken("date"), 11), new(Spoken("method"), 10), new(Spoken("part")), new(Spoken("result"), 20, Right: true)], rows, Cells, (row, _) => SessionText.Of(row), fromTop);
    }

    private static TextRun[] Cells(SessionRow row) => [new(row.Date), new(row.Method), new(row.Subject), new(row.Result, Tone.Strong)];
}
