using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Workbench;

/// <summary>The measurement sessions, newest first; below them the readings and what follows.</summary>
internal sealed class MeasuredPage() : ListPage("Measured", "Nothing measured yet. Count turns of the propshaft with t, or roll a tyre out with r.")
{
    public override void Show(VehicleModel vehicle, bool fromTop) =>
        Show([new("date", 11), new("method", 10), new("part"), new("result", 20, Right: true)], vehicle.Measurements.Rows, Cells, (row, _) => SessionText.Of(row), fromTop);

    private static TextRun[] Cells(SessionRow row) => [new(row.Date), new(row.Method), new(row.Subject), new(row.Result, Tone.Strong)];
}
