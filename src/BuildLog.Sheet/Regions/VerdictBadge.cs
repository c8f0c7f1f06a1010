using BuildLog.Gearing.Checks;
using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>The verdict's word in a box. The box repeats the word by its shape, never by its colour; an unknown word gets a plain one.</summary>
internal static class VerdictBadge
{
    private static readonly Badge Plain = new(null, new Stroke(Ink.Accent, 0.6));
    private static readonly Badge Heavy = new(Ink.Wash, new Stroke(Ink.Accent, 1.5));
    private static readonly Badge Filled = new(Ink.Accent, new Stroke(Ink.Accent, 1.5));
    private static readonly Badge Dashed = new(null, new Stroke(Ink.Accent, 0.8, 2, 1.6));

    public static CellText Of(string word)
    {
        var style = TypeScale.Strong;
        return VerdictOf(word.Trim()) switch
        {
            Verdict.Clash => new CellText(word, style with { Colour = Ink.White }, Filled),
            Verdict.Watch => new CellText(word, style, Heavy),
            Verdict.Open => new CellText(word, style, Dashed),
            _ => new CellText(word, style, Plain),
        };
    }

    private static Verdict? VerdictOf(string word)
    {
        foreach (var verdict in Enum.GetValues<Verdict>())
        {
            if (verdict.InWords().Equals(word, StringComparison.OrdinalIgnoreCase)) return verdict;
        }

        return null;
    }
}
