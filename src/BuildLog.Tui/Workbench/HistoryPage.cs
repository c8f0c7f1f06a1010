using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Workbench;

/// <summary>The swaps, newest first, with what each changed.</summary>
internal sealed class HistoryPage() : ListPage("History", "No part has been fitted yet. Press f, or Enter on a box of the strip.")
{
    public override void Show(VehicleModel vehicle, bool fromTop) =>
        Show([new("date", 11), new("position", 13), new("change"), new("cruise", 20, Right: true, FromWidth: 76)], vehicle.History.Rows, Cells, (row, _) => HistoryText.Of(row), fromTop);

    private static TextRun[] Cells(HistoryRow row) =>
        [new(row.Date), new(row.Position), new(HistoryText.Change(row)), new(HistoryText.Cruise(row), Tone.Quiet)];
}
