using BuildLog.Gearing.Options;

namespace BuildLog.Tui.Plans;

/// <summary>An offered part in a plan: what it is, and what is claimed of it, such as <c>axle from a late pickup, claimed 3.36</c>. It is stored, so the same in all languages.</summary>
internal sealed record PlannedOffer(string What, Claim Claim)
{
    private const string Behind = ", claimed ";

    /// <summary>As it is typed.</summary>
    public string Text => $"{What}{Behind}{Claim}";

    /// <summary>Null for what is no offered part.</summary>
    public static PlannedOffer? Read(string text)
        => text.LastIndexOf(Behind, StringComparison.OrdinalIgnoreCase) is > 0 and var at ? new(text[..at].Trim(), Claim.Read(text[(at + Behind.Length)..])) : null;
}
