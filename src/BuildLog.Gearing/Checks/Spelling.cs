using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace BuildLog.Gearing.Checks;

/// <summary>Whether two texts name one thing, however they are spelt.</summary>
/// <remarks>Blanks, large and small letters, the many signs for × and -, and how a number is written do not count: <c>m12 × 1,50</c> is <c>M12x1.5</c>.</remarks>
internal static partial class Spelling
{
    public static bool IsSame(string one, string other) => string.Equals(Plain(one), Plain(other), StringComparison.Ordinal);

    /// <summary>The number a text begins with, such as the splines of <c>26 × 1 1/8 in</c>; null where it begins with none.</summary>
    public static int? FirstNumber(string text)
        => int.TryParse(string.Concat(text.Trim().TakeWhile(char.IsAsciiDigit)), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static string Plain(string text)
        => ZerosBehind().Replace(string.Concat(text.Normalize(NormalizationForm.FormKC).Where(sign => !char.IsWhiteSpace(sign)).Select(sign => sign switch
        {
            '×' or '*' or '·' => 'X',
            '‐' or '‑' or '–' or '—' or '−' => '-',
            _ => char.ToUpperInvariant(sign),
        })), number => number.Groups["decimals"].Length == 0 ? number.Groups["whole"].Value : $"{number.Groups["whole"]}.{number.Groups["decimals"]}");

    [GeneratedRegex(@"(?<whole>\d+)[.,](?<decimals>\d*?)0*(?!\d)", RegexOptions.CultureInvariant)]
    private static partial Regex ZerosBehind();
}
