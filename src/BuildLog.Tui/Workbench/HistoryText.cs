using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Workbench;

/// <summary>What the page says about the chosen swap.</summary>
internal static class HistoryText
{
    public static string Change(HistoryRow row) => (row.Removed, row.Fitted) switch
    {
        (null, { } fitted) => fitted,
        ({ } removed, null) => Spoken($"{removed} → nothing"),
        var (removed, fitted) => $"{removed} → {fitted}",
    };

    public static string Cruise(HistoryRow row) =>
        row.CruiseBefore.Length == 0 ? row.CruiseAfter : $"{row.CruiseBefore} → {(row.CruiseAfter.Length > 0 ? row.CruiseAfter : "?")}";

    /// <param name="row">The swap.</param>
    /// <param name="doubts">What is not certain of today's driveline.</param>
    /// <param name="goals">What it is judged by; empty for nothing.</param>
    public static IReadOnlyList<TextLine> Of(HistoryRow row, IReadOnlyList<string> doubts, string goals = "")
    {
        var lines = new List<TextLine>
        {
            TextLine.Of(new TextRun($"{row.Date}  {row.Position}", Tone.Strong)),
            Named(Spoken("Removed  "), row.Removed ?? Spoken("nothing was there")),
            Named(Spoken("Fitted   "), row.Fitted ?? Spoken("nothing, the position was left empty")),
        };
        if (row.Reason.Length > 0) lines.Add(Named(Spoken("Reason   "), row.Reason));
        if (Cruise(row).Length > 0) lines.Add(Named(Spoken("Cruise   "), Cruise(row)));
        if (row.Moved.Count > 0) lines.Add(Named(Spoken("Moved    "), string.Join("; ", row.Moved)));
        if (row.Findings.Length > 0) lines.Add(Named(Spoken("Findings "), row.Findings));
        if (row.Spent.Length > 0) lines.Add(Named(Spoken("Spent    "), row.Spent));
        if (goals.Length > 0) lines.Add(TextLine.Of(goals, Tone.Quiet));
        lines.AddRange(doubts.Select(doubt => TextLine.Of(doubt, Tone.Open)));
        return lines;
    }

    private static TextLine Named(string name, string text) => TextLine.Of(new TextRun(name, Tone.Quiet), new TextRun(text));
}
