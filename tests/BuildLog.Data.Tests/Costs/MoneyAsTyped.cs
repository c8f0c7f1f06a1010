using BuildLog.Data.Costs;
using Xunit;

namespace BuildLog.Data.Tests.Costs;

public sealed class MoneyAsTyped
{
    [Theory]
    [InlineData("1.250,50 €", 125_050, "EUR")]
    [InlineData("1,250.50 eur", 125_050, "EUR")]
    [InlineData("£45", 4500, "GBP")]
    [InlineData("120 USD", 12_000, "USD")]
    [InlineData("$ 1 250", 125_000, "USD")]
    [InlineData("1'250.50 CHF", 125_050, "CHF")]
    [InlineData("1.250 €", 125_000, "EUR")]
    [InlineData("12,5", 1250, "EUR")]
    [InlineData("45,- €", 4500, "EUR")]
    [InlineData("-30 €", -3000, "EUR")]
    [InlineData("0.99", 99, "EUR")]
    [InlineData("¥1200", 1200, "JPY")]
    [InlineData("£ -45", -4500, "GBP")]
    [InlineData("1 234 567,89 SEK", 123_456_789, "SEK")]
    public void Is_counted_in_the_smallest_unit(string typed, long minor, string currency)
    {
        var money = MoneyText.Read(typed, Currency.Euro).OrRefuse();
        Assert.Equal((minor, currency), (money.Minor, money.Currency));
        Assert.Equal(money, MoneyText.Read(money.ToString(), Currency.Find("USD")!).OrRefuse());
    }

    [Theory]
    [InlineData("", "An amount of money is missing.")]
    [InlineData("about 40", "'about 40': 'about' is no currency known here; write its three letters.")]
    [InlineData("450 kr", "'450 kr': several countries write kr; write DKK, ISK, NOK or SEK.")]
    [InlineData("£45 GBP", "'£45 GBP' names its currency twice.")]
    [InlineData("1.2505 €", "'1.2505 €' has more decimals than EUR (2).")]
    [InlineData("12.5 JPY", "'12.5 JPY' has more decimals than JPY (0).")]
    [InlineData("12,34,567 INR", "'12,34,567 INR' has marks that part no groups of three digits.")]
    [InlineData("1.250.50 €", "'1.250.50 €' has marks that part no groups of three digits.")]
    [InlineData("9 999 999 999 999 999 €", "'9 999 999 999 999 999 €' is more than any shop has.")]
    [InlineData("4x", "'4x': 'x' is no currency known here; write its three letters.")]
    [InlineData("--4", "'--4' is no amount of money.")]
    public void Is_refused_where_it_is_not_sure(string typed, string sentence)
        => Assert.Equal(sentence, MoneyText.Read(typed, Currency.Euro).Refusal?.Message);

    [Fact]
    public void Has_one_sum_for_each_currency()
    {
        var pounds = Currency.Find("GBP")!;
        var sums = Money.Totals([Money.Of(100, Currency.Euro), Money.Of(4500, pounds), null, Money.Of(-30, Currency.Euro)]);
        Assert.Equal([Money.Of(70, Currency.Euro), Money.Of(4500, pounds)], sums);
    }
}
