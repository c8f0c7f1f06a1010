using BuildLog.Gearing.Checks;
using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Workbench;

/// <summary>The five pages below the strip.</summary>
internal sealed class VehiclePages : PageSwitcher
{
    private readonly ListAndText findings = new();
    private readonly SpeedsPage speeds = new();
    private readonly ListAndText measurements = new();
    private readonly TextPage goal = new() { Indent = 1 };
    private readonly ListAndText history = new();
    private Func<int, string?> chosenCheck = _ => null;

    public VehiclePages()
    {
        AddPage("Findings", findings);
        AddPage("Speeds", speeds);
        AddPage("Measured", measurements);
        AddPage("Goal", goal);
        AddPage("History", history);
        findings.List.WhenEmpty = "Nothing to check yet: fit parts with f and set a goal with g.";
        measurements.List.WhenEmpty = "Nothing measured yet. Count turns of the propshaft with t, or roll a tyre out with r.";
        history.List.WhenEmpty = "No part has been fitted yet. Press f, or Enter on a box of the strip.";
    }

    /// <summary>Help page of the page that is shown; of the chosen finding, its check's.</summary>
    public string HelpPage => Page == findings && chosenCheck(findings.List.Row) is { Length: > 0 } check ? HelpText.OfCheck(check) : Page.Title;

    /// <param name="fromTop">Whether the lists begin at their first row: another vehicle.</param>
    public void Show(VehicleModel vehicle, bool fromTop)
    {
        if (vehicle.Findings.Missing is { } missing) findings.List.WhenEmpty = missing;
        chosenCheck = row => vehicle.Findings.Rows.ElementAtOrDefault(row)?.Check;
        findings.Show(
            [new RowColumn("", 7), new RowColumn("matter", WidthOfTitles(vehicle.Findings)), new RowColumn("says")],
            [.. vehicle.Findings.Rows.Select(FindingCells)],
            (row, width) => FindingText.Of(vehicle.Findings.Rows[row], width),
            fromTop);
        speeds.Show(vehicle.Speeds);
        measurements.Show(
            [new RowColumn("date", 11), new RowColumn("method", 10), new RowColumn("part"), new RowColumn("result", 20, Right: true)],
            [.. vehicle.Measurements.Rows.Select(SessionCells)],
            (row, _) => SessionText.Of(vehicle.Measurements.Rows[row]),
            fromTop);
        goal.Show(GoalText.Of(vehicle.Goal));
        history.Show(
            [new RowColumn("date", 11), new RowColumn("position", 13), new RowColumn("change"), new RowColumn("cruise", 20, Right: true, FromWidth: 76)],
            [.. vehicle.History.Rows.Select(HistoryCells)],
            (row, _) => HistoryText.Of(vehicle.History.Rows[row]),
            fromTop);
    }

    private static int WidthOfTitles(FindingsModel findings) =>
        Math.Clamp(findings.Rows.Select(row => TextFit.Width(row.Title)).DefaultIfEmpty(0).Max(), 6, 20);

    private static TextRun[] FindingCells(FindingRow row) =>
    [
        new($"{row.Verdict.Sign()} {row.Verdict.InWords()}", row.Verdict.Tone()),
        new(row.Title, Tone.Strong),
        new(row.Sentence),
    ];

    private static TextRun[] SessionCells(SessionRow row) =>
        [new(row.Date), new(row.Method), new(row.Subject), new(row.Result, Tone.Strong)];

    private static TextRun[] HistoryCells(HistoryRow row) =>
        [new(row.Date), new(row.Position), new(HistoryText.Change(row)), new(HistoryText.Cruise(row), Tone.Quiet)];
}
