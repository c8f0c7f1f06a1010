using BuildLog.Data.Costs;
using BuildLog.Data.Days;
using BuildLog.Data.Suppliers;

namespace BuildLog.Data.Donors;

/// <summary>What becomes of what is left of a donor.</summary>
public enum DonorFate
{
    Undecided,
    Keep,
    Sell,
    Scrap,
    Gone,
}

public static class DonorFateWords
{
    public static string InWords(this DonorFate fate) => fate switch
    {
        DonorFate.Undecided => Spoken("undecided"),
        DonorFate.Keep => Spoken("keep"),
        DonorFate.Sell => Spoken("sell"),
        DonorFate.Scrap => Spoken("scrap"),
        DonorFate.Gone => Spoken("gone"),
        _ => throw new ArgumentOutOfRangeException(nameof(fate), fate, "No such fate."),
    };
}

/// <summary>A vehicle that gives its parts: what it was, where it came from, what becomes of the rest.</summary>
public sealed class Donor : Entered
{
    public string Name
    {
        get;
        set => field = value.Trim();
    } = "";

    /// <summary>Chassis or vehicle identity number, as stamped: the proof of origin of everything that comes off it.</summary>
    public string ChassisNumber { get; set; } = "";

    /// <summary>Whom it was bought from.</summary>
    public long? SellerId { get; set; }

    /// <summary>Loaded with the donor.</summary>
    public Supplier? Seller { get; internal set; }

    public LooseDay? Bought { get; set; }

    public Money? Price { get; set; }

    public DonorFate Fate { get; set; }

    /// <summary>Where it stands.</summary>
    public string Place { get; set; } = "";

    public string Notes { get; set; } = "";

    public override void Check()
    {
        TextRules.CheckTitle(Name, new Later("name of the donor"), "Wexcombe delivery van");
        TextRules.CheckLine(ChassisNumber, new Later("chassis number"), "WX-DV-11853");
        TextRules.CheckLine(Place, new Later("place of the donor"), "behind the shed");
        TextRules.CheckText(Notes, new Later("notes"));
    }

    public override string ToString() => Name;
}
