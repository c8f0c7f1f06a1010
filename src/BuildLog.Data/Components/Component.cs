using BuildLog.Data.Costs;
using BuildLog.Data.Days;
using BuildLog.Data.Donors;
using BuildLog.Data.Specs;
using BuildLog.Data.Suppliers;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Components;

/// <summary>One physical thing with a history: on the shelf or fitted to a vehicle.</summary>
public abstract class Component : Entered
{
    /// <summary>What the shop calls it, such as <c>Harrow 4.10 axle</c>.</summary>
    public string Name
    {
        get;
        set => field = value.Trim();
    } = "";

    public string SerialNumber { get; set; } = "";

    /// <summary>Where it came from: vehicle, yard, seller.</summary>
    public string Donor { get; set; } = "";

    /// <summary>Where it lies when it is not fitted.</summary>
    public string Shelf { get; set; } = "";

    /// <summary>The donor it was taken off, where that one is in the record.</summary>
    public long? TakenFromId { get; set; }

    /// <summary>Loaded with the part.</summary>
    public Donor? TakenFrom { get; internal set; }

    /// <summary>Whom it was bought from.</summary>
    public long? SupplierId { get; set; }

    /// <summary>Loaded with the part.</summary>
    public Supplier? Supplier { get; internal set; }

    public Money? Price { get; set; }

    public LooseDay? Bought { get; set; }

    /// <summary>Such as <c>rebuilt, new bearings</c>; null where nobody looked.</summary>
    public string? Condition { get; set; }

    /// <summary>Whose it is; null for the shop's own, which most are.</summary>
    public Ownership? Ownership { get; set; }

    public string Notes { get; set; } = "";

    /// <summary>The trade's word for what it is.</summary>
    public abstract Later Kind { get; }

    /// <summary>Where on a vehicle it may be fitted; the first is the usual place.</summary>
    public abstract IReadOnlyList<Position> Positions { get; }

    /// <summary>Numbers noted of it beyond those every such part has.</summary>
    internal List<SpecRow> Specs { get; } = [];

    /// <summary>How the first of those is known; null where there is none.</summary>
    public Source? OtherNumbersKnownFrom => Specs.Select(row => (Source?)row.Number.Source).FirstOrDefault();

    /// <summary>The same in words.</summary>
    internal List<TraitRow> Traits { get; } = [];

    internal override Later KindInWords => Kind;

    public override void Check()
    {
        Specs.Check();
        Traits.Check();
        TextRules.CheckLine(Condition, new Later("condition"), "rebuilt, new bearings");
        if (Price is { Minor: < 0 }) throw new RefusedException("money", Spoken("A price is zero or more."), "180 EUR");
        if (Name.Length == 0) throw new RefusedException("component", Spoken($"The {Kind} needs a name."), "Harrow 4.10 axle");
        if (Name.Length > 80 || Name.Any(char.IsControl))
            throw new RefusedException("component", Spoken($"The name of the {Kind} is one line of at most 80 characters."), "Harrow 4.10 axle");
    }

    public override string ToString() => Name;
}
