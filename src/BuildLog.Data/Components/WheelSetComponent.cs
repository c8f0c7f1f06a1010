using System.ComponentModel.DataAnnotations.Schema;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Data.Components;

/// <summary>A set of wheels with their tyres. Its roll-outs are kept as sessions.</summary>
/// <remarks>One set is on both axles, unless the front one has a set of its own.</remarks>
public sealed class WheelSetComponent : BoltedComponent
{
    public override Later Kind => new Later("wheel-and-tyre set");

    public override IReadOnlyList<Position> Positions => [Position.Tyres, Position.FrontTyres];

    /// <summary>The marking as typed; empty if it was not read.</summary>
    public string SizeText
    {
        get;
        set => field = value.Trim();
    } = "";

    /// <summary>Tread worn off.</summary>
    public Noted? Worn { get; set; }

    /// <summary>Rolling circumference as somebody states it.</summary>
    public Noted? StatedCircumference { get; set; }

    /// <summary>Needed where the marking does not say it.</summary>
    public Construction Construction { get; set; }

    /// <summary>Axle to ground, the vehicle standing on it.</summary>
    [NotMapped]
    public Noted? LoadedRadius { get => Specs.Of(Spec.LoadedRadius); set => Specs.Put(Spec.LoadedRadius, value); }

    /// <summary>Between the bead seats.</summary>
    [NotMapped]
    public Noted? RimWidth { get => Specs.Of(Spec.RimWidth); set => Specs.Put(Spec.RimWidth, value); }

    /// <summary>Mounting face to the middle of the rim; positive where the face is outboard of it.</summary>
    [NotMapped]
    public Noted? Offset { get => Specs.Of(Spec.Offset); set => Specs.Put(Spec.Offset, value); }

    /// <summary>Passenger tyres on a truck or a multi-purpose vehicle carry less.</summary>
    [NotMapped]
    public bool PassengerOnTruck { get => StoredPassengerOnTruck ?? false; set => StoredPassengerOnTruck = value; }

    /// <summary>Two tyres on each side of the rear axle.</summary>
    [NotMapped]
    public bool TwinRear { get => StoredTwinRear ?? false; set => StoredTwinRear = value; }

    // A record of the first schema has nothing there.
    internal bool? StoredPassengerOnTruck { get; set; }

    internal bool? StoredTwinRear { get; set; }

    /// <summary>The marking understood, with the wear taken off; null if none was read.</summary>
    /// <exception cref="RefusedException">The marking or the wear is not one.</exception>
    public TyreSize? Size
    {
        get
        {
            if (SizeText.Length == 0) return null;
            var size = TyreSizeText.Read(SizeText).OrRefuse();
            return Worn is null ? size : size with { Worn = ReadWorn(Worn).Value };
        }
    }

    public override void Check()
    {
        base.Check();
        if (Worn is not null && Size is { } worn) _ = worn.WornBy(ReadWorn(Worn)).OrRefuse();
        if (Size is { } size && size.Construction != Construction)
            throw new RefusedException("construction", Spoken($"'{SizeText}' marks a {InWords(size.Construction)} tyre, not a {InWords(Construction)} one."), "");
        if (StatedCircumference is { Si: not (>= RollReading.Smallest and <= RollReading.Largest) })
            throw new RefusedException("circumference", Spoken($"'{StatedCircumference}' is no rolling circumference: road tyres cover {RollReading.Smallest} to {RollReading.Largest} m a turn."), "2.04 m");
    }

    private static Typed ReadWorn(Noted worn) => QuantityText.Read(worn.Text, Gearing.Quantities.Kind.Length, Units.Millimetre).OrRefuse();

    private static string InWords(Construction construction) => construction == Construction.Radial ? Spoken("radial") : Spoken("bias");
}
