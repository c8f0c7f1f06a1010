using System.ComponentModel.DataAnnotations.Schema;
using BuildLog.Data.Moving;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Vehicles;

/// <summary>A project vehicle.</summary>
public sealed class Vehicle : Entered
{
    /// <summary>What the shop calls it; no other vehicle is called so, large and small letters being alike.</summary>
    public string Name
    {
        get;
        set
        {
            field = value.Trim();
            NameKey = KeyOf(field);
        }
    } = "";

    public VehicleState State { get; set; } = VehicleState.Planned;

    /// <summary>What it is: kind, year, maker and model, as its papers or its owner say.</summary>
    public string Description { get; set; } = "";

    public string Owner { get; set; } = "";

    /// <summary>Chassis or vehicle identity number, as stamped.</summary>
    public string ChassisNumber { get; set; } = "";

    public string Registration { get; set; } = "";

    /// <summary>The driveline is computed through the front axle although a rear one is fitted.</summary>
    public bool DrivesInFront { get; set; }

    /// <summary>The unit of an odometer reading that was typed bare.</summary>
    public OdometerUnit OdometerUnit { get; set; }

    public string Notes { get; set; } = "";

    /// <summary>As it is driven: people and luggage in.</summary>
    [NotMapped]
    public Noted? Mass { get => Specs.Of(Spec.Mass); set => Specs.Put(Spec.Mass, value); }

    /// <summary>What the front axle carries, laden as heavily as it will be.</summary>
    [NotMapped]
    public Noted? FrontAxleMass { get => Specs.Of(Spec.FrontAxleMass); set => Specs.Put(Spec.FrontAxleMass, value); }

    [NotMapped]
    public Noted? RearAxleMass { get => Specs.Of(Spec.RearAxleMass); set => Specs.Put(Spec.RearAxleMass, value); }

    /// <summary>Drag coefficient times frontal area, where somebody coasted it down; it counts before the body class.</summary>
    [NotMapped]
    public Noted? DragArea { get => Specs.Of(Spec.DragArea); set => Specs.Put(Spec.DragArea, value); }

    /// <summary>The name of a <see cref="Gearing.RoadLoad.BodyClass"/>; null for none.</summary>
    public string? BodyClass { get; set; }

    /// <summary>Rolling resistance over weight; it counts before the rolling class.</summary>
    [NotMapped]
    public Noted? RollingResistance { get => Specs.Of(Spec.RollingResistance); set => Specs.Put(Spec.RollingResistance, value); }

    /// <summary>The name of a <see cref="Gearing.RoadLoad.RollingClass"/>; null for none.</summary>
    public string? RollingClass { get; set; }

    /// <summary>Part of the mass on driven wheels; where it is not typed, the axle masses tell.</summary>
    [NotMapped]
    public Noted? DrivenShare { get => Specs.Of(Spec.DrivenShare); set => Specs.Put(Spec.DrivenShare, value); }

    /// <summary>Above sea level, where it is driven.</summary>
    [NotMapped]
    public Noted? Altitude { get => Specs.Of(Spec.Altitude); set => Specs.Put(Spec.Altitude, value); }

    /// <summary>Of the centre of gravity above the road.</summary>
    [NotMapped]
    public Noted? GravityHeight { get => Specs.Of(Spec.GravityHeight); set => Specs.Put(Spec.GravityHeight, value); }

    [NotMapped]
    public Noted? Wheelbase { get => Specs.Of(Spec.Wheelbase); set => Specs.Put(Spec.Wheelbase, value); }

    /// <summary>Middle of the left front spring to middle of the right one.</summary>
    [NotMapped]
    public Noted? FrontSprings { get => Specs.Of(Spec.FrontSprings); set => Specs.Put(Spec.FrontSprings, value); }

    [NotMapped]
    public Noted? RearSprings { get => Specs.Of(Spec.RearSprings); set => Specs.Put(Spec.RearSprings, value); }

    /// <summary>How the front springs lie where the axle is held, positive where the front is higher.</summary>
    [NotMapped]
    public Noted? FrontPad { get => Specs.Of(Spec.FrontPad); set => Specs.Put(Spec.FrontPad, value); }

    [NotMapped]
    public Noted? RearPad { get => Specs.Of(Spec.RearPad); set => Specs.Put(Spec.RearPad, value); }

    internal List<SpecRow> Specs { get; } = [];

    /// <summary>The name as it is compared: SQLite folds the case of plain English letters only.</summary>
    [Follows]
    internal string NameKey { get; set; } = "";

    public override void Check()
    {
        if (Name.Length == 0) throw new RefusedException("vehicle", Spoken("A vehicle needs a name."), "Brindle");
        if (Name.Length > 60 || Name.Any(char.IsControl))
            throw new RefusedException("vehicle", Spoken("A vehicle's name is one line of at most 60 characters."), "Brindle");
        TextRules.CheckLine(Description, new Later("what it is"), "pick-up of 1971, long bed");
        Specs.Check();
        CheckClass(BodyClass, new Later("body"), [.. Gearing.RoadLoad.BodyClass.All.Select(body => body.Name)]);
        CheckClass(RollingClass, new Later("rolling"), [.. Gearing.RoadLoad.RollingClass.All.Select(tyre => tyre.Name)]);
    }

    public override string ToString() => Name;

    private static void CheckClass(string? name, Later what, IReadOnlyList<string> known)
    {
        if (name is not null && !known.Contains(name))
            throw new RefusedException($"{what.Text}-class", Spoken($"'{name}' is no {what} class; there are {string.Join("; ", known)}."), known[0]);
    }

    /// <summary>Whether this is its name, large and small letters being alike.</summary>
    public bool IsCalled(string name) => NameKey == KeyOf(name);

    internal static string KeyOf(string name) => name.Trim().Normalize().ToUpperInvariant();
}
