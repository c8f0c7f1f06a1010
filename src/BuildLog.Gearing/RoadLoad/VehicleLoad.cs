using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.RoadLoad;

/// <summary>What the driveline has to move; null where nobody knows.</summary>
/// <exception cref="RefusedException">A number that is not above zero, a share above one, or an altitude where no road lies.</exception>
public sealed record VehicleLoad
{
    /// <summary>Kilograms, as it is driven: people and luggage in.</summary>
    public Known? Mass { get; init => field = value.AboveZero(Spoken("A mass"), "1450 kg"); }

    /// <summary>Drag coefficient times frontal area, m²; <see cref="BodyClass"/> has usual ones.</summary>
    public Known? DragArea { get; init => field = value.AboveZero(Spoken("A drag area"), "0.85 m²"); }

    /// <summary>Rolling resistance over weight; <see cref="RollingClass"/> has usual ones.</summary>
    public Known? RollingResistance { get; init => field = value.AboveZero(Spoken("A rolling resistance"), "0.014"); }

    /// <summary>Part of the mass on driven wheels; one with all wheels driven.</summary>
    public Known? DrivenShare { get; init => field = value.AboveZero(Spoken("A share on driven wheels"), "0.52", 1); }

    /// <summary>Of the centre of gravity above the road, metres.</summary>
    public Known? GravityHeight { get; init => field = value.AboveZero(Spoken("A height of the centre of gravity"), "620 mm"); }

    /// <summary>Metres.</summary>
    public Known? Wheelbase { get; init => field = value.AboveZero(Spoken("A wheelbase"), "2650 mm"); }

    /// <summary>Grip of the driven tyres: the largest driving force over the load on them.</summary>
    public Known Grip { get; init => field = value.AboveZero(Spoken("A grip"), "0.80"); } = DryRoad.Grip;

    /// <summary>Metres above sea level where it is driven.</summary>
    public double Altitude { get; init => field = Atmosphere.Checked(value); }

    /// <summary>The standard air at that altitude.</summary>
    public Atmosphere Air => Atmosphere.At(Altitude);

    /// <summary>Reads a mass, kg: 100 kg to 60 t.</summary>
    public static Parsed<Typed> ReadMass(string text)
        => Within(QuantityText.Read(text, Kind.Mass), 100, 60_000, Spoken("a road vehicle weighs 100 kg to 60 t"), "1450 kg");

    /// <summary>Reads Cd·A, a bare number as m²: 0.2 to 12 m².</summary>
    public static Parsed<Typed> ReadDragArea(string text)
        => Within(QuantityText.Read(text, Kind.Area, Units.SquareMetre), 0.2, 12, Spoken("a road vehicle's drag area is 0.2 to 12 m²"), "0.85 m²");

    /// <summary>Reads Crr: 0.003 to 0.4.</summary>
    public static Parsed<Typed> ReadRollingResistance(string text)
        => Within(QuantityText.Read(text, Kind.Number), 0.003, 0.4, Spoken("rolling resistance is 0.003 (steel-hard tyre) to 0.4 (deep sand) of the weight"), "0.014");

    /// <summary>Reads the share of the mass on driven wheels, a bare number as per cent: 5 to 100 %.</summary>
    public static Parsed<Typed> ReadDrivenShare(string text)
        => Within(QuantityText.Read(text, Kind.Share, Units.PercentUnit), 0.05, 1, Spoken("driven wheels carry 5 to 100 % of the mass"), "52 %");

    /// <summary>Reads metres above sea level, a bare number as metres: −500 to 6000 m.</summary>
    public static Parsed<Typed> ReadAltitude(string text)
        => Within(QuantityText.ReadPlain(text, Kind.Length, Units.Metre), -500, 6000, Spoken("roads lie between −500 and 6000 m"), "1500 m");

    private static Parsed<Typed> Within(Parsed<Typed> read, double low, double high, string range, string example)
        => read.Refusal is { } refusal
            ? refusal with { Example = example }
            : read.Then<Typed>(typed => typed.Value >= low && typed.Value <= high
                ? typed
                : new Refusal("out-of-range", Spoken($"{Shown.Quoted(typed.Text)} cannot be: {range}."), example));
}
