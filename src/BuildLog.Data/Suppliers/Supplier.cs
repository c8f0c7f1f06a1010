namespace BuildLog.Data.Suppliers;

/// <summary>Whom the shop buys from or sends work to: a dealer, a breaker, a machine shop, a person.</summary>
public sealed class Supplier : Entered
{
    public string Name
    {
        get;
        set => field = value.Trim();
    } = "";

    /// <summary>Telephone, address, opening hours: as it is wanted at hand.</summary>
    public string Contact { get; set; } = "";

    /// <summary>What they are good for: <c>axles, machining, gaskets</c>.</summary>
    public string GoodFor { get; set; } = "";

    public string Notes { get; set; } = "";

    /// <summary>Whether somebody means this one by a name; capitals do not matter.</summary>
    internal bool IsCalled(string name) => Name.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase);

    public override void Check()
    {
        TextRules.CheckTitle(Name, new Later("name of the supplier"), "Tolland yard");
        TextRules.CheckText(Contact, new Later("contact"));
        TextRules.CheckLine(GoodFor, new Later("trade of the supplier"), "axles and shafts");
        TextRules.CheckText(Notes, new Later("notes"));
    }

    public override string ToString() => Name;
}
