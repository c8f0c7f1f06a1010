using System.Text.RegularExpressions;

namespace BuildLog.Gearing.Quantities;

/// <summary>A number as somebody typed it, for whoever reads it: his digits and his unit, with the decimal mark of the language spoken.</summary>
/// <remarks>What is stored stays as it was typed. Marks are told apart as <see cref="QuantityText"/> does: the last is the decimal one, the others part thousands.</remarks>
public static partial class AsWritten
{
    /// <summary><c>2,5 bar</c> for a typed <c>2.5 bar</c> in Dutch; <c>870 mm</c> for a typed <c>870</c>, as no number stands without its unit.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="granted">The unit that was taken for granted where none was typed.</param>
    public static string InWords(string text, Unit granted)
    {
        var (body, mark, tail) = QuantityText.AtUncertainty(text.Trim());
        if (!Bare().IsMatch(body)) return Numbers(text.Trim());

        // In "2040 ± 5 mm" the unit stands behind both, in "2040 ± 1 %" only the share has one.
        var lent = tail.EndsWith('%') && granted.Symbol != "%";
        return lent ? $"{Rounded.WithUnit(Numbers(body), granted)} {mark} {Numbers(tail)}"
            : Bare().IsMatch(tail) || tail.Length == 0 ? Rounded.WithUnit(Numbers(text.Trim()), granted)
            : Numbers(text.Trim());
    }

    /// <summary>What holds numbers among other signs, such as a count <c>10:20.5</c>. A number in the middle of a name stays: <c>31x10.50R15LT</c>, <c>6.00-16</c>.</summary>
    public static string Numbers(string text) => Number().Replace(text, match => Said(match.Value));

    private static string Said(string digits)
    {
        var last = digits.LastIndexOfAny(['.', ',']);
        if (last < 0) return digits;

        var isGrouped = digits.IndexOf(digits[last], StringComparison.Ordinal) != last;
        return isGrouped
            ? Joined(digits)
            : Joined(digits[..last]) + Language.Spoken.Culture.NumberFormat.NumberDecimalSeparator + digits[(last + 1)..];
    }

    private static string Joined(string digits) => digits.Replace(",", "", StringComparison.Ordinal).Replace(".", "", StringComparison.Ordinal);

    [GeneratedRegex(@"(?<![\p{L}\d.,])(?>[\d.,]*\d)(?!\p{L}+\d|-\d)", RegexOptions.CultureInvariant)]
    private static partial Regex Number();

    [GeneratedRegex(@"^[-−–+]?[\d\s.,/⁄½¼¾⅓⅔⅛⅜⅝⅞]*\d?[½¼¾⅓⅔⅛⅜⅝⅞\d]\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex Bare();
}
