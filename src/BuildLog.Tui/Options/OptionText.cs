using BuildLog.Gearing.Checks;
using BuildLog.Tui.Hunting;
using BuildLog.Tui.Shell;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Options;

/// <summary>What the page says about the chosen way out.</summary>
internal static class OptionText
{
    public static IReadOnlyList<TextLine> Of(OptionsModel model, OptionRow row)
    {
        var lines = new List<TextLine>
        {
            TextLine.Of(new TextRun($"{row.Worst.Sign()} {row.Counts}", row.Worst.Tone()), new TextRun($"  {row.Cruise}  {row.Cost}  {row.Sure}")),
        };
        lines.AddRange(row.Parts.Select(part => TextLine.Of($"  {part}", Tone.Strong)));
        if (row.IsOffered) lines.Add(TextLine.Of(Spoken("  These are all checks of the whole driveline; what the offer itself does in it, the page Wanted says."), Tone.Quiet));
        if (row.Rejected is { } rejected) lines.Add(TextLine.Of($"  {rejected.Says}", rejected.AreTheseParts ? Tone.Clash : Tone.Watch));
        lines.AddRange(row.Says.Select(says => TextLine.Of(new TextRun($"{says.Verdict.Sign()} {says.Verdict.InWords()}  ", says.Verdict.Tone()), new TextRun(says.Sentence))));
        lines.AddRange(Besides(model));
        return lines;
    }

    /// <summary>What the page says on the line between the two kinds of ways out.</summary>
    public static IReadOnlyList<TextLine> OfTheRest(OptionsModel model)
        => [TextLine.Of(Spoken("What stands below this line makes it less bad than it is, and something still clashes with it."), Tone.Strong), .. Besides(model)];

    private static List<TextLine> Besides(OptionsModel model)
    {
        List<TextLine> lines = [];
        lines.AddRange(model.Clashes.Select(clash => TextLine.Of(clash, Tone.Strong)));
        lines.Add(TextLine.Of(model.Summary, Tone.Quiet));
        lines.AddRange((model.Notes ?? []).Select(note => TextLine.Of(note, Tone.Quiet)));
        return lines;
    }
}
