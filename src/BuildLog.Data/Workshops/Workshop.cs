using BuildLog.Data.Costs;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Workshops;

/// <summary>The shop itself: what stands on its papers, and the currency of a bare number. There is one in a record.</summary>
public sealed class Workshop : Entered
{
    public string Name
    {
        get;
        set => field = value.Trim();
    } = "";

    public string Address { get; set; } = "";

    /// <summary>The ISO 4217 code.</summary>
    public string Currency { get; set; } = Costs.Currency.Euro.Code;

    public Currency Bare => Costs.Currency.Find(Currency) ?? Costs.Currency.Euro;

    public override void Check()
    {
        TextRules.CheckLine(Name, new Later("name of the shop"), "Thorley's shed");
        TextRules.CheckText(Address, new Later("address"));
        if (!Costs.Currency.All.Any(known => known.Code == Currency))
            throw new RefusedException("currency", Spoken($"'{Currency}' is no currency known here; there are {string.Join(", ", Costs.Currency.All)}."), "EUR");
    }

    public override string ToString() => Name;
}
