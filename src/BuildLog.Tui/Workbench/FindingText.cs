using BuildLog.Gearing.Checks;
using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Workbench;

/// <summary>What the page says about the chosen finding.</summary>
internal static class FindingText
{
    public static IReadOnlyList<TextLine> Of(FindingRow finding, int width)
    {
        var lines = new List<TextLine>
        {
            TextLine.Of(
                new TextRun($"{finding.Verdict.Sign()} {finding.Verdict.InWords()}", finding.Verdict.Tone()),
                new TextRun("  " + finding.Title, Tone.Strong),
                new TextRun("  " + finding.Place, Tone.Quiet)),
            finding.Sentence,
        };
        if (finding.Bar is { } bar) lines.AddRange(WindowBarText.Of(bar, finding.Verdict.Tone(), width));
        AddNamed(lines, Spoken("Why      "), finding.Why);
        foreach (var cure in finding.Cures ?? []) AddNamed(lines, Spoken("Cure     "), cure);
        AddNamed(lines, Spoken("Settle   "), finding.SettledBy ?? "");
        AddNamed(lines, Spoken("Limit    "), finding.Source);
        return lines;
    }

    private static void AddNamed(List<TextLine> lines, string name, string text)
    {
        if (text.Length > 0) lines.Add(TextLine.Of(new TextRun(name, Tone.Quiet), new TextRun(text)));
    }
}
