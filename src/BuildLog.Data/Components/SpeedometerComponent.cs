using System.ComponentModel.DataAnnotations.Schema;
using BuildLog.Data.Specs;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Speedometers;

namespace BuildLog.Data.Components;

/// <summary>A speedometer with what drives it.</summary>
public sealed class SpeedometerComponent : Component
{
    private static readonly Unit AMile = new(Gearing.Quantities.Kind.Number, new Later("a mile"), 1);

    private static readonly Unit AKilometre = new(Gearing.Quantities.Kind.Number, new Later("a kilometre"), 1);

    public override Later Kind => new Later("speedometer");

    public override IReadOnlyList<Position> Positions => [Position.Speedometer];

    /// <summary>The small number on the dial: cable turns or pulses over <see cref="Per"/> at which it reads right.</summary>
    [NotMapped]
    public Noted? TurnsWanted { get => Specs.Of(Spec.TurnsWanted); set => Specs.Put(Spec.TurnsWanted, value); }

    /// <summary>What the number on the dial is over: a kilometre or a mile.</summary>
    public OdometerUnit? Per { get; set; }

    /// <summary>What the number on the dial is told in; null where there is none.</summary>
    internal Unit? DialUnit => Per switch
    {
        OdometerUnit.Miles => AMile,
        OdometerUnit.Kilometres => AKilometre,
        _ => null,
    };

    /// <summary>Where the drive sits; null for the propshaft, where most do.</summary>
    public Pickup? Pickup { get; set; }

    public int? DriveTeeth { get; set; }

    public int? DrivenTeeth { get; set; }

    /// <summary>Of an electric sender, instead of gears.</summary>
    [NotMapped]
    public Noted? PulsesPerTurn { get => Specs.Of(Spec.PulsesPerTurn); set => Specs.Put(Spec.PulsesPerTurn, value); }

    /// <summary>Turns out per turn in of a correction box, or the factor of a pulse corrector; null where there is none.</summary>
    [NotMapped]
    public Noted? Correction { get => Specs.Of(Spec.Correction); set => Specs.Put(Spec.Correction, value); }

    /// <summary>What turns or feeds the dial, where somebody looked behind it.</summary>
    [NotMapped]
    public SpeedometerFeed? SpeedometerFeed { get => Traits.Of<SpeedometerFeed>(Trait.SpeedometerFeed); set => Traits.Put(Trait.SpeedometerFeed, value); }

    public override void Check()
    {
        base.Check();
        if (TurnsWanted is { } turns && Per is null) throw new RefusedException("per", Spoken($"{turns} turns over what? Say whether the dial means a kilometre or a mile."), "km");
        if (DriveTeeth is null != DrivenTeeth is null) throw new RefusedException("teeth", Spoken("Speedometer gears come in pairs: give the teeth of the drive gear and of the driven gear, or neither."), "8 and 21");
        if (DriveTeeth is not null && PulsesPerTurn is not null) throw new RefusedException("drive", Spoken("A speedometer is driven by gears or by a sender's pulses, not by both."), "");
        _ = Drive();
    }

    /// <summary>What feeds it; null where nobody knows.</summary>
    /// <exception cref="RefusedException">Gears or pulses that cannot be.</exception>
    internal SpeedometerDrive? Drive()
    {
        var (pickup, correction) = (Pickup ?? Gearing.Speedometers.Pickup.Propshaft, Correction?.Si ?? 1);
        return DriveTeeth is { } drive && DrivenTeeth is { } driven ? SpeedometerDrive.Gears(drive, driven, pickup, correction)
            : PulsesPerTurn is { } pulses ? SpeedometerDrive.Pulses(pulses.Si, pickup, correction)
            : null;
    }
}
