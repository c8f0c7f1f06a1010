using System.Text;
using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Layout;

/// <summary>Breaks text into lines at spaces and after hyphens; between a number and its unit, or inside a word, only when these alone are too wide.</summary>
internal static class LineBreaker
{
    private const double Rounding = 0.01;

    /// <summary>The lines. The space at which a line was broken stays at its end, so that text copied from the page keeps its words apart.</summary>
    public static IReadOnlyList<string> Lines(string text, TextStyle style, double width)
    {
        var lines = new List<string>();
        var paragraphs = PlainText.Lines(text).Split('\n');
        foreach (var (i, paragraph) in paragraphs.Index())
        {
            BreakParagraph(paragraph, style, width, lines);
            if (i < paragraphs.Length - 1) lines[^1] += " ";
        }

        return lines;
    }

    /// <summary>The text on one line, its end replaced by "…" when it is too wide.</summary>
    public static string Shortened(string text, TextStyle style, double width)
    {
        var line = PlainText.Line(text);
        return style.WidthOf(line) <= width ? line : Cut(line, style, width);
    }

    /// <summary>No more lines than asked, the last ending in "…" when there were more.</summary>
    public static IReadOnlyList<string> Lines(string text, TextStyle style, double width, int most)
    {
        var lines = Lines(text, style, width);
        return lines.Count <= most ? lines : [.. lines.Take(most - 1), Cut(lines[most - 1], style, width)];
    }

    private static string Cut(string line, TextStyle style, double width)
    {
        var room = width - style.WidthOf("…");
        var start = new StringBuilder();
        foreach (var rune in line.EnumerateRunes())
        {
            room -= style.WidthOf(rune.ToString());
            if (room < 0) break;
            start.Append(rune);
        }

        return start.ToString().TrimEnd() + "…";
    }

    private static void BreakParagraph(string paragraph, TextStyle style, double width, List<string> lines)
    {
        var line = new StringBuilder();
        var used = 0.0;
        foreach (var piece in Pieces(paragraph, Quantity.HoldsTogether))
        {
            if (style.VisibleWidthOf(piece) <= width) Place(piece);
            else foreach (var word in Pieces(piece, (_, _) => false)) Place(word);
        }

        EndLine();

        void Place(string piece)
        {
            var needed = style.VisibleWidthOf(piece);
            if (line.Length > 0 && used + needed > width + Rounding) EndLine();
            if (needed > width) BreakWord(piece);
            else Append(piece);
        }

        void Append(string text)
        {
            line.Append(text);
            used += style.WidthOf(text);
        }

        void BreakWord(string word)
        {
            foreach (var rune in word.EnumerateRunes())
            {
                var sign = rune.ToString();
                if (line.Length > 0 && used + style.WidthOf(sign) > width) EndLine();
                Append(sign);
            }
        }

        void EndLine()
        {
            lines.Add(line.ToString());
            line.Clear();
            used = 0;
        }
    }

    /// <summary>Words with the space that follows them, cut after hyphens before letters. A slash does not cut: "rev/min" is one word.</summary>
    /// <param name="text">The paragraph.</param>
    /// <param name="holds">Whether the space at a place in the text keeps its two words together.</param>
    private static IEnumerable<string> Pieces(string text, Func<string, int, bool> holds)
    {
        var start = 0;
        for (var i = 0; i < text.Length; i++)
        {
            var afterHyphen = text[i] is '-' or '–' && i > start && i + 1 < text.Length && char.IsLetter(text[i + 1]);
            if (!afterHyphen && (text[i] != ' ' || holds(text, i))) continue;

            yield return text[start..(i + 1)];
            start = i + 1;
        }

        if (start < text.Length) yield return text[start..];
    }
}
