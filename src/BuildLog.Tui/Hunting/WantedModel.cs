using BuildLog.Data.Costs;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;

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

    /// <summary>Between which values it will do, as numbers: what is kept with the hunt, and what would do today.</summary>
    public IReadOnlyList<HuntedWindow> Windows { get; init; } = [];

    /// <summary>What it may cost, or costs; null where nobody said.</summary>
    public Money? Money { get; init; }

    /// <summary>By when a part is needed, or until when an offer holds; null where nobody said.</summary>
    public DateOnly? Until { get; init; }

    /// <summary>When an offer was seen or a part was counted; null for a wanted part.</summary>
    public DateOnly? Seen { get; init; }

    /// <summary>The plan that a part is hunted for; null for none.</summary>
    public string? Plan { get; init; }

    /// <summary>A wanted part that was needed before today.</summary>
    public bool IsOverdue { get; init; }
}

/// <summary>Between which values a wanted part will do.</summary>
/// <param name="Quantity">Of what.</param>
/// <param name="Unit">In which unit it is told.</param>
/// <param name="Window">The values, in base units.</param>
/// <param name="IsKept">It was kept with the hunt; else it is what would do today.</param>
internal sealed record HuntedWindow(string Quantity, Unit Unit, Window Window, bool IsKept);
