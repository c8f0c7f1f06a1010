using System.Globalization;
using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Workbench;

/// <summary>What the page says about the chosen measurement session.</summary>
internal static class SessionText
{
    private const int BarCells = 20;

    public static IReadOnlyList<TextLine> Of(SessionRow session)
    {
        var lines = new List<TextLine>
        {
            TextLine.Of(
                new TextRun(session.Result, Tone.Strong),
                new TextRun($"  {session.Subject}, {session.Method}, {session.Date}", Tone.Quiet)),
        };
        lines.AddRange((session.Interpretation ?? []).Select(line => TextLine.Of(line)));
        AddPart(lines, Spoken("Readings"), session.Readings);
        AddPart(lines, Spoken("Conditions"), session.Conditions);
        if (session.Budget is { Count: > 0 } budget)
        {
            lines.Add(TextLine.Of(Spoken("What the uncertainty is made of"), Tone.Heading));
            lines.AddRange(budget.Select(Share));
        }

        return lines;
    }

    private static TextLine Share(BudgetShare share)
    {
        var bar = new string('■', (int)Math.Round(share.Share * BarCells));
        var percent = share.Share.ToString("P0", CultureInfo.InvariantCulture).Replace(" ", "", StringComparison.Ordinal);
        return TextLine.Of(new TextRun($"  {percent,4}  "), new TextRun(bar.PadRight(BarCells + 2), Tone.Heading), new TextRun(share.Input));
    }

    private static void AddPart(List<TextLine> lines, string heading, IReadOnlyList<string>? part)
    {
        if (part is not { Count: > 0 }) return;
        lines.Add(TextLine.Of(heading, Tone.Heading));
        lines.AddRange(part.Select(line => TextLine.Of("  " + line)));
    }
}
