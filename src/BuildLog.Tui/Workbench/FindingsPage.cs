using BuildLog.Gearing.Checks;
using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Workbench;

/// <summary>The findings, worst first; below them why, the interval against the window, and the cure.</summary>
internal sealed class FindingsPage() : ListPage("Findings", Spoken("Findings"), NothingYet)
{
    private static string NothingYet => Spoken("Nothing to check yet: fit parts with f and set a goal with g.");

    private IReadOnlyList<FindingRow> rows = [];

    /// <summary>Of the chosen finding its check's.</summary>
    public override string HelpPage => rows.ElementAtOrDefault(Row)?.Check is { Length: > 0 } check ? HelpText.OfCheck(check) : base.HelpPage;

    public override void Show(VehicleModel vehicle, bool fromTop)
    {
        rows = vehicle.Findings.Rows;
        WhenEmpty = vehicle.Findings.Missing ?? NothingYet;
        var titles = Math.Clamp(rows.Select(row => TextFit.Width(row.Title)).DefaultIfEmpty(0).Max(), 6, 20);
        Show([new("", Verdicts), new(Spoken("matter"), titles), new(Spoken("says"))], rows, Cells, FindingText.Of, fromTop);
    }

    private static int Verdicts => Enum.GetValues<Verdict>().Max(verdict => TextFit.Width(Words(verdict)));

    private static string Words(Verdict verdict) => $"{verdict.Sign()} {verdict.InWords()}";

    private static TextRun[] Cells(FindingRow row) =>
        [new(Words(row.Verdict), row.Verdict.Tone()), new(row.Title, Tone.Strong), new(row.Sentence)];
}
