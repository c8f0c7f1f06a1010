namespace BuildLog.Data.Components;

/// <summary>Whose a part is, where it is not the shop's own to use.</summary>
public enum Ownership
{
    Customers,

    /// <summary>Lent to the shop, and wanted back.</summary>
    Lent,

    /// <summary>The old one is owed to the supplier.</summary>
    CoreOwed,

    /// <summary>Sold, scrapped, left with another shop: it stays in the record for what it was.</summary>
    Gone,
}

public static class OwnershipWords
{
    public static string InWords(this Ownership ownership) => ownership switch
    {
        Ownership.Customers => Spoken("customer's"),
        Ownership.Lent => Spoken("lent"),
        Ownership.CoreOwed => Spoken("core owed"),
        Ownership.Gone => Spoken("gone from the shop"),
        _ => throw new ArgumentOutOfRangeException(nameof(ownership), ownership, "No such ownership."),
    };
}
