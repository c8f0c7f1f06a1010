using System.Globalization;
using System.Text;
using Terminal.Gui.Text;

namespace BuildLog.Tui.Shell;

/// <summary>Makes text fit a width counted in terminal cells.</summary>
internal static class TextFit
{
    /// <summary>The text in exactly <paramref name="width"/> cells: cut with an ellipsis or padded.</summary>
    public static string Exactly(string text, int width, bool right = false)
    {
        var cut = Cut(text, width);
        var pad = Math.Max(0, width - Width(cut));
        return right ? new string(' ', pad) + cut : cut + new string(' ', pad);
    }

    private static string CutSign => Characters.AreAscii ? ".." : "…";

    /// <summary>The text in at most <paramref name="width"/> cells; what was cut off shows as an ellipsis.</summary>
    public static string Cut(string text, int width)
    {
        if (width <= 0) return "";
        text = Printable(text);
        if (Width(text) <= width) return text;

        var kept = new StringBuilder();
        var used = 0;
        var graphemes = StringInfo.GetTextElementEnumerator(text);
        while (graphemes.MoveNext())
        {
            var grapheme = graphemes.GetTextElement();
            var cells = Width(grapheme);
            if (used + cells > width - CutSign.Length) break;
            kept.Append(grapheme);
            used += cells;
        }

        return kept.ToString().TrimEnd() + CutSign[..Math.Min(width, CutSign.Length)];
    }

    /// <summary>A word as a line begins with it.</summary>
    public static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];

    public static int Width(string text) => IsPlain(text) ? text.Length : text.GetColumns();

    /// <summary>The text broken between words into lines of at most <paramref name="width"/> cells.</summary>
    /// <param name="hang">Spaces before every line but the first.</param>
    public static IEnumerable<string> Wrap(string text, int width, int hang = 0)
    {
        if (width <= hang + 1)
        {
            yield return Cut(text, width);
            yield break;
        }

        text = Printable(text);
        var indent = text.Length - text.TrimStart(' ').Length;
        var line = new StringBuilder().Append(' ', indent);
        var isFirstWord = true;
        foreach (var word in text.Trim(' ').Split(' '))
        {
            if (!isFirstWord && Width(line.ToString()) + 1 + Width(word) > width)
            {
                yield return line.ToString();
                line.Clear().Append(' ', hang);
            }
            else if (!isFirstWord)
            {
                line.Append(' ');
            }

            line.Append(Cut(word, width - Math.Max(hang, indent)));
            isFirstWord = false;
        }

        yield return line.ToString();
    }

    /// <summary>Stored text can hold anything; nothing in it may steer the terminal.</summary>
    public static string Printable(string text) =>
        text.Any(char.IsControl) ? string.Concat(text.Select(c => char.IsControl(c) ? ' ' : c)) : text;

    private static bool IsPlain(string text) => text.All(c => c is >= ' ' and < '\u0300');
}
