using System.Globalization;
using System.Text;

namespace BuildLog.Tui.Shell;

/// <summary>Which characters the terminal can be trusted with; poor ones get plain ASCII, cell for cell.</summary>
internal static class Characters
{
    private const string Asked = "BUILDLOG_CHARACTERS";
    private const string Signs = "·•●…±°²³½×−–—‑‐→←↑↓›‹»“”‘’√π∞≤≥≠▲▼►◄Σ";
    private const string InAscii = ".**.+d23/x-----><^v><>\"\"''VpI<>!^v><S";

    private static readonly string[] Locales = ["LC_ALL", "LC_CTYPE", "LANG"];

    private static readonly string[] PoorTerminals = ["dumb", "linux", "vt100", "vt102", "vt220", "ansi"];

    /// <summary>Only ASCII may be written.</summary>
    public static bool AreAscii { get; set; }

    /// <summary>Whether these surroundings ask for ASCII: by name, by their terminal, or by a locale that is not UTF-8.</summary>
    /// <param name="environment">Reads one variable.</param>
    public static bool AsciiIn(Func<string, string?> environment)
    {
        if (environment(Asked) is { Length: > 0 } asked) return asked.Equals("ascii", StringComparison.OrdinalIgnoreCase);
        if (PoorTerminals.Contains(environment("TERM") ?? "", StringComparer.Ordinal)) return true;

        // The first of the three that is set decides (POSIX); none set says nothing, and terminals of today are UTF-8.
        var locale = Locales.Select(environment).FirstOrDefault(value => !string.IsNullOrEmpty(value));
        return locale is not null && !locale.Contains("UTF-8", StringComparison.OrdinalIgnoreCase) && !locale.Contains("UTF8", StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>The text as this terminal can show it, in as many cells.</summary>
    public static string Shown(string text) => AreAscii ? ToAscii(text) : text;

    // What is said in the cells of a sign and the spaces around it. "~" is the sign of a watch and stands for nothing else.
    private static readonly (string Sign, string Ascii)[] Spaced = [(" ± ", "+/-"), ("± ", "+-"), (" ±", "+-"), (" …", "..")];

    /// <summary>Plain ASCII in as many cells: lines become <c>- | +</c>, <c>4.10 ± 0.02</c> becomes <c>4.10+/-0.02</c>, letters lose their marks.</summary>
    public static string ToAscii(string text)
    {
        if (text.All(char.IsAscii)) return text;

        var ascii = new StringBuilder(text.Length);
        var graphemes = StringInfo.GetTextElementEnumerator(Spaced.Aggregate(text, (said, each) => said.Replace(each.Sign, each.Ascii, StringComparison.Ordinal)));
        while (graphemes.MoveNext())
        {
            var grapheme = graphemes.GetTextElement();
            ascii.Append(ToAscii(grapheme[0], grapheme)).Append('?', Math.Max(0, TextFit.Width(grapheme) - 1));
        }

        return ascii.ToString();
    }

    private static char ToAscii(char sign, string grapheme)
    {
        if (char.IsAscii(sign)) return sign;
        if (char.IsWhiteSpace(sign)) return ' ';
        if (Signs.IndexOf(sign, StringComparison.Ordinal) is >= 0 and var known) return InAscii[known];
        return sign switch
        {
            '─' or '━' or '═' or '╌' => '-',
            '│' or '┃' or '║' or '▏' or '▐' => '|',
            '▌' => '>', // the box under the cursor
            >= '\u2500' and <= '\u257F' => '+',
            >= '\u2580' and <= '\u259F' => '#',
            >= '\u25A0' and <= '\u25FF' => '*',
            >= '\u2800' and <= '\u28FF' => Dots(sign),
            _ => Unmarked(grapheme),
        };
    }

    // A braille cell by how many of its eight dots are set.
    private static char Dots(char braille) => int.PopCount(braille - 0x2800) switch
    {
        0 => ' ',
        <= 2 => '.',
        <= 4 => ':',
        _ => '*',
    };

    private static char Unmarked(string grapheme) => grapheme.Normalize(NormalizationForm.FormD)[0] is var letter && char.IsAscii(letter) ? letter : '?';
}
