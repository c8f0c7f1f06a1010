using System.Globalization;
using System.Text;

namespace BuildLog.Sheet.Drawing;

/// <summary>Makes typed text harmless to print: nothing invisible, nothing that turns the reading direction, nothing half.</summary>
internal static class PlainText
{
    /// <summary>Line breaks stay; other control and format signs go; broken surrogates become "�".</summary>
    public static string Lines(string text)
    {
        if (IsPlain(text)) return text;

        var plain = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())        // a lone surrogate arrives here as U+FFFD
        {
            if (rune.Value == '\r') plain.Append('\r');     // with a line feed it makes one break, not two
            else if (IsLineBreak(rune)) plain.Append('\n');
            else if (rune.Value == '\t') plain.Append(' ');
            else if (!IsInvisible(rune)) plain.Append(rune);
        }

        return plain.Replace("\r\n", "\n").Replace('\r', '\n').ToString().Normalize(NormalizationForm.FormC);
    }

    /// <summary>The same on one line.</summary>
    public static string Line(string text) => Lines(text).ReplaceLineEndings(" ");

    private static bool IsPlain(string text)
    {
        foreach (var sign in text)
            if (sign is < ' ' or > '~') return false;

        return true;
    }

    private static bool IsLineBreak(Rune rune) => rune.Value is '\n' or '\v' or '\f' or 0x85 or 0x2028 or 0x2029;

    private static bool IsInvisible(Rune rune) =>
        Rune.GetUnicodeCategory(rune) is UnicodeCategory.Control or UnicodeCategory.Format
        || rune.Value is >= 0xFE00 and <= 0xFE0F          // variation selectors choose a look that print does not have
        || (rune.Value & 0xFFFE) == 0xFFFE;               // not characters at all
}
