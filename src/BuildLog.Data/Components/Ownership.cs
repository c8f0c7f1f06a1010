namespace BuildLog.Data.Components;

/// <summary>Whose a part is, where it is not the shop's own.</summary>
public enum Ownership
{
    Customers,

    /// <summary>Lent to the shop, and wanted back.</summary>
    Lent,

    /// <summary>The old one is owed to the supplier.</summary>
    CoreOwed,
}

public static class OwnershipWords
{
    public static string InWords(this Ownership ownership) => ownership switch
    {
        Ownership.Customers => "customer's",
        Ownership.Lent => "lent",
        Ownership.CoreOwed => "core owed",
        _ => throw new ArgumentOutOfRangeException(nameof(ownership), ownership, "No such ownership."),
    };
}
