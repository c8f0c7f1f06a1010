using System.Globalization;
using System.Text.RegularExpressions;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Costs;

/// <summary>Reads money the way people write it: <c>1.250,50 €</c>, <c>£45</c>, <c>120 USD</c>, <c>1'250.–</c>.</summary>
/// <remarks>
/// Point and comma are told apart by what follows, whatever the machine's language: a mark with fewer than three digits behind it is the decimal
/// one, a mark before each group of three parts thousands. Nothing is rounded: more decimals than the currency has are refused.
/// </remarks>
public static partial class MoneyText
{
    private const string Right = "1250.50 EUR";
    private const int LongestText = 60;

    /// <param name="text">What was typed.</param>
    /// <param name="ifNone">The currency of a bare number: the shop's.</param>
    public static Parsed<Money> Read(string text, Currency ifNone)
    {
        var typed = text.Trim();
        if (typed.Length == 0) return new Refusal("money", Spoken("An amount of money is missing."), Right);
        if (typed.Length > LongestText) return Refused(typed, Spoken("is too long for an amount of money"));

        var parts = Amount().Match(typed.Replace('\u2212', '-').Replace('\u2019', '\''));
        if (!parts.Success) return Refused(typed, Spoken("is no amount of money"));

        string before = parts.Groups["before"].Value, after = parts.Groups["after"].Value.Trim();
        if (before.Length > 0 && after.Length > 0) return Refused(typed, Spoken("names its currency twice"));

        var named = before.Length > 0 ? before : after;
        if (named.Equals("kr", StringComparison.OrdinalIgnoreCase) || named.Equals("kr.", StringComparison.OrdinalIgnoreCase))
            return new Refusal("currency", Spoken($"{Shown.Quoted(typed)}: several countries write kr; write DKK, ISK, NOK or SEK."), "450 SEK");

        var currency = named.Length == 0 ? ifNone : Currency.Find(named);
        if (currency is null)
            return new Refusal("currency", Spoken($"{Shown.Quoted(typed)}: {Shown.Quoted(named)} is no currency known here; write its three letters."), Right);

        return Minor(parts.Groups["number"].Value, currency, typed).Then<Money>(minor => Money.Of(parts.Groups["minus"].Success ? -minor : minor, currency));
    }

    /// <summary>The same of what something may cost, costs or has cost: never less than nothing.</summary>
    public static Parsed<Money> ReadPrice(string text, Currency ifNone)
        => Read(text, ifNone).Then<Money>(money => money.Minor >= 0 ? money : new Refusal("money", Spoken($"{Shown.Quoted(text.Trim())}: a price is zero or more."), "180 EUR"));

    private static Parsed<long> Minor(string number, Currency currency, string typed)
    {
        var digits = Spaces().Replace(number, "");
        var last = digits.LastIndexOfAny(['.', ',']);
        var behind = last < 0 ? 0 : digits.Length - last - 1;
        var isDecimal = last >= 0 && behind < 3;
        var whole = isDecimal ? digits[..last] : digits;
        var decimals = isDecimal ? digits[(last + 1)..] : "";
        if (decimals.Length > currency.Decimals || (!isDecimal && behind > 3))
            return Refused(typed, Spoken($"has more decimals than {currency} ({currency.Decimals})"));

        if (!decimals.All(char.IsAsciiDigit)) return Refused(typed, Spoken("has a gap in its decimals"));

        var marks = whole.Where(c => !char.IsAsciiDigit(c)).Distinct().ToList();
        if (marks.Count > 1 || (isDecimal && marks.Contains(digits[last])) || (marks.Count == 1 && !Groups(whole.Split(marks[0]))))
            return Refused(typed, Spoken("has marks that part no groups of three digits"));

        var plain = string.Concat(whole.Where(char.IsAsciiDigit)) + decimals.PadRight(currency.Decimals, '0');
        return plain.Length <= 15 ? long.Parse(plain, CultureInfo.InvariantCulture) : Refused(typed, Spoken("is more than any shop has"));
    }

    private static bool Groups(string[] groups) => groups[0].Length is >= 1 and <= 3 && groups.Skip(1).All(group => group.Length == 3);

    private static Refusal Refused(string typed, string why) => new("money", $"{Shown.Quoted(typed)} {why}.", Right);

    // A dash behind the mark stands for no cents: 45,- and 45.–
    [GeneratedRegex(@"^(?:(?<minus>-)\s*)?(?:(?<before>[^\d\s.,'+-][^\d\s,'+-]*)\s*(?:(?<minus>-)\s*)?)?(?<number>[0-9](?:[0-9.,'\s]*[0-9])?)(?:[.,][-–—]+)?(?<after>\s*[^\d\s.,'+-][^\d\s,'+-]*)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Amount();

    [GeneratedRegex(@"(?<=\d)\s(?=\d{3}(?!\d))", RegexOptions.CultureInvariant)]
    private static partial Regex Spaces();
}
