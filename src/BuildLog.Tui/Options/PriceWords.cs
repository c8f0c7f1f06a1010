using BuildLog.Data.Costs;

namespace BuildLog.Tui.Options;

/// <summary>A price as people write it.</summary>
internal static class PriceWords
{
    /// <param name="minor">In the smallest coin.</param>
    /// <param name="currency">Its three letters; null where no price names one.</param>
    public static string Of(long minor, string? currency)
        => currency is not null && Currency.Find(currency) is { } known ? Money.Of(minor, known).ToString() : FormattableString.Invariant($"{minor} {currency}");
}
