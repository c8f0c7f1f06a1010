namespace BuildLog.Data.Costs;

/// <summary>A currency with its ISO 4217 code, the sign people write, and how many decimals its smallest unit is.</summary>
/// <remarks>
/// Codes and decimals: ISO 4217:2015, list one. A sign that several countries share is nobody's here, and a
/// currency with three decimals is not among them: 1.234 of it could be either.
/// </remarks>
public sealed record Currency(string Code, string Sign, int Decimals)
{
    public static Currency Euro { get; } = new("EUR", "€", 2);

    public static IReadOnlyList<Currency> All { get; } =
    [
        Euro,
        new("GBP", "£", 2),
        new("USD", "$", 2),
        new("AUD", "A$", 2),
        new("BRL", "R$", 2),
        new("CAD", "C$", 2),
        new("CHF", "Fr.", 2),
        new("CLP", "", 0),
        new("CZK", "Kč", 2),
        new("DKK", "", 2),
        new("HUF", "Ft", 2),
        new("INR", "₹", 2),
        new("ISK", "", 0),
        new("JPY", "¥", 0),
        new("KRW", "₩", 0),
        new("MXN", "", 2),
        new("NOK", "", 2),
        new("NZD", "NZ$", 2),
        new("PLN", "zł", 2),
        new("RON", "lei", 2),
        new("SEK", "", 2),
        new("TRY", "₺", 2),
        new("UAH", "₴", 2),
        new("ZAR", "R", 2),
    ];

    /// <summary>The currency of this code or sign; null if there is none.</summary>
    public static Currency? Find(string written)
        => All.FirstOrDefault(currency => currency.Code.Equals(written, StringComparison.OrdinalIgnoreCase))
            ?? All.FirstOrDefault(currency => currency.Sign.Length > 0 && currency.Sign.Equals(written, StringComparison.OrdinalIgnoreCase));

    public override string ToString() => Code;
}
