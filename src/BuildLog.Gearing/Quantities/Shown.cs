using System.Globalization;
using System.Text;

namespace BuildLog.Gearing.Quantities;

/// <summary>Typed text as a refusal may repeat it: on one line, printable, and not too much of it.</summary>
public static class Shown
{
    private const int Longest = 40;
    private const string Unprintable = "\ufffd"; // so that a text of nothing else is still seen

    /// <summary>In quotation marks.</summary>
    public static string Quoted(string text) => $"'{Cut(text)}'";

    /// <summary>The first 40 signs, with … where there are more.</summary>
    public static string Cut(string text)
    {
        var kept = new StringBuilder();
        foreach (var rune in text.Trim().EnumerateRunes())
        {
            if (kept.Length >= Longest) return kept.Append('…').ToString();
            kept.Append(Rune.IsWhiteSpace(rune) ? " " : IsPrintable(rune) ? rune.ToString() : Unprintable);
        }

        return kept.ToString();
    }

    private static bool IsPrintable(Rune rune) => Rune.GetUnicodeCategory(rune)
        is not (UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator);
}
