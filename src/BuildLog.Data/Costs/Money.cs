using System.Globalization;

namespace BuildLog.Data.Costs;

/// <summary>An amount in the smallest unit of its currency.</summary>
/// <remarks>It has no sums by operators on purpose: amounts of two currencies have none, and a query must not multiply cents.</remarks>
public sealed record Money
{
    private const long Most = 1_000_000_000_000_000;

    internal Money(long minor, string currency) => (Minor, Currency) = (minor, currency);

    /// <summary>In the smallest unit: cents, pence, or whole yen.</summary>
    public long Minor { get; private init; }

    /// <summary>The ISO 4217 code.</summary>
    public string Currency { get; private init; }

    public static Money Of(long minor, Currency currency)
        => minor is >= -Most and <= Most ? new(minor, currency.Code) : throw new ArgumentOutOfRangeException(nameof(minor), minor, "No shop has that much.");

    /// <summary>One total for each currency, the largest number of amounts first.</summary>
    public static IReadOnlyList<Money> Totals(IEnumerable<Money?> amounts)
        => [.. amounts.OfType<Money>().GroupBy(amount => amount.Currency).OrderByDescending(group => group.Count()).ThenBy(group => group.Key, StringComparer.Ordinal)
            .Select(group => new Money(group.Sum(amount => amount.Minor), group.Key))];

    /// <summary><c>1250.50</c>, for spreadsheets: the same whatever is spoken.</summary>
    public string Number => In(CultureInfo.InvariantCulture);

    /// <summary><c>1250.50 EUR</c>, for lists that programs read.</summary>
    public string Listed => $"{Number} {Currency}";

    /// <summary><c>1250.50 EUR</c>, as the language spoken writes it: a text that <see cref="MoneyText"/> reads back.</summary>
    public override string ToString() => $"{In(Language.Spoken.Culture)} {Currency}";

    private string In(CultureInfo culture)
    {
        var decimals = Costs.Currency.Find(Currency)?.Decimals ?? 2;
        var whole = (decimal)Minor;
        for (var k = 0; k < decimals; k++) whole /= 10;
        return whole.ToString($"F{decimals}", culture);
    }
}
