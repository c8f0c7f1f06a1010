using BuildLog.Data.Costs;
using BuildLog.Data.Days;
using BuildLog.Data.Suppliers;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Hunting;

/// <summary>A part that somebody offers for one that is wanted. Whether it would do is computed each time.</summary>
public sealed class Offer : Entered
{
    public Offer(WantedPart wanted) => WantedPartId = wanted.Id;

    private Offer() { }

    public long WantedPartId { get; internal set; }

    /// <summary>Loaded with the offer.</summary>
    public WantedPart Wanted { get; internal set; } = null!;

    /// <summary>What it is said to be.</summary>
    public string What
    {
        get;
        set => field = value.Trim();
    } = "";

    /// <summary>Where it was seen: advert, yard, friend.</summary>
    public string Place { get; set; } = "";

    public long? SupplierId { get; set; }

    /// <summary>Loaded with the offer.</summary>
    public Supplier? Supplier { get; internal set; }

    /// <summary>The ratio or size that is claimed, as typed; empty where nothing is.</summary>
    public string Claimed { get; set; } = "";

    public Money? Price { get; set; }

    public string Contact { get; set; } = "";

    public DateOnly Seen
    {
        get;
        set => (field, SeenAsTyped) = (value, null);
    }

    /// <summary>The same as far as it is known: as it was typed.</summary>
    public LooseDay SeenDay
    {
        get => SeenAsTyped ?? LooseDay.On(Seen);
        set => (Seen, SeenAsTyped) = Reckoning.Reckoned(value, Seen);
    }

    internal LooseDay? SeenAsTyped { get; set; }

    public DateOnly? Expires { get; set; }

    public string Notes { get; set; } = "";

    public override void Check()
    {
        TextRules.CheckTitle(What, new Later("offer"), "axle from a Wexcombe van");
        TextRules.CheckLine(Place, new Later("place of the offer"), "Tolland yard, row 6");
        TextRules.CheckLine(Claimed, new Later("claimed ratio or size"), "3.08");
        TextRules.CheckText(Contact, new Later("contact"));
        TextRules.CheckText(Notes, new Later("notes"));
        TextRules.CheckDay(Seen, new Later("day it was seen"));
        TextRules.CheckDay(Expires, new Later("day it expires"));
        if (Expires < Seen) throw new RefusedException("expires", Spoken($"The offer cannot expire on {Expires?.InWords()}, before it was seen on {Seen.InWords()}."), "");
        if (Price is { Minor: < 0 }) throw new RefusedException("money", Spoken("A price is zero or more."), "180 EUR");
    }

    public override string ToString() => What;
}
