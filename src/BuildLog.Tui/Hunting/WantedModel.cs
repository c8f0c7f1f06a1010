using BuildLog.Gearing.Checks;

namespace BuildLog.Tui.Hunting;

/// <summary>What is hunted for a vehicle, each part followed by its offers.</summary>
internal sealed record WantedModel(IReadOnlyList<WantedRow> Rows);

/// <summary>A wanted part; or an offer, or a count from the yard, for the one above it.</summary>
/// <param name="WantedId">The wanted part it belongs to.</param>
/// <param name="OfferId">Null for the wanted part itself and for a count.</param>
/// <param name="What">Its name.</param>
/// <param name="Says">Its window, or what is claimed.</param>
/// <param name="Price">What it may cost, or costs; empty where nobody said.</param>
/// <param name="Verdict">Of an offer or a count; null for a wanted part.</param>
/// <param name="State">How the hunt stands, or the verdict, in a word.</param>
/// <param name="Lines">Everything else, a line each.</param>
internal sealed record WantedRow(long WantedId, long? OfferId, string What, string Says, string Price, Verdict? Verdict, string State, IReadOnlyList<string> Lines)
{
    /// <summary>The part in the record that was counted in the yard and that nobody offers yet; null for a wanted part and an offer.</summary>
    public long? CountedId { get; init; }

    /// <summary>What an offer or a count was judged to be; null for a wanted part, and where it was bought.</summary>
    public JudgedOffer? Judged { get; init; }

    /// <summary>A wanted part that was needed before today.</summary>
    public bool IsOverdue { get; init; }
}
