using System.ComponentModel.DataAnnotations.Schema;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Data.Components;

/// <summary>A gearbox.</summary>
public sealed class TransmissionComponent : Component
{
    public override Later Kind => new Later("gearbox");

    public override IReadOnlyList<Position> Positions => [Position.Transmission];

    /// <summary>Forward gears from the lowest to the top; may be empty while nobody knows them.</summary>
    public IReadOnlyList<StatedGear> Gears
    {
        get => [.. Rows.OrderBy(row => row.Ordinal).Select(row => new StatedGear(row.Name, row.Ratio))];
        set
        {
            Rows.Clear();
            Rows.AddRange(value.Select((gear, k) => new GearRow { Ordinal = k + 1, Name = gear.Name.Trim(), Ratio = gear.Ratio }));
        }
    }

    /// <summary>Whether its converter locks in the gear it cruises in; null for a clutch.</summary>
    public bool? ConverterLocksUp { get; set; }

    /// <summary>Engine speed at full throttle with the car held.</summary>
    [NotMapped]
    public Noted? StallSpeed { get => Specs.Of(Spec.StallSpeed); set => Specs.Put(Spec.StallSpeed, value); }

    [NotMapped]
    public Noted? StallTorqueRatio { get => Specs.Of(Spec.StallTorqueRatio); set => Specs.Put(Spec.StallTorqueRatio, value); }

    /// <summary>The engine torque its maker allows at the input.</summary>
    [NotMapped]
    public Noted? TorqueRating { get => Specs.Of(Spec.TorqueRating); set => Specs.Put(Spec.TorqueRating, value); }

    /// <summary>What is said of reverse, as a plain number.</summary>
    [NotMapped]
    public Noted? Reverse { get => Specs.Of(Spec.Reverse); set => Specs.Put(Spec.Reverse, value); }

    /// <summary>The teeth of all its gears as typed, as <see cref="GearTrain"/> reads them; null while nobody has counted them.</summary>
    public string? GearTeeth { get; set; }

    /// <summary>The teeth, understood.</summary>
    /// <exception cref="RefusedException">They make no gearbox.</exception>
    public GearTrain? Train => GearTeeth is null ? null : GearTrain.Read(GearTeeth).OrRefuse();

    /// <summary>From the lowest to the top; numbered where only the teeth are known, empty while nobody knows them.</summary>
    public IReadOnlyList<string> GearNames => Rows.Count > 0 ? [.. Gears.Select(gear => gear.Name)] : [.. Train?.Gears.Select((_, k) => Numbered(k)) ?? []];

    /// <summary>Of its bell housing, with the adapter plate on where there is one; in the shop's words.</summary>
    [NotMapped]
    public string? BellHousing { get => Traits.Of(Trait.BellHousing); set => Traits.Put(Trait.BellHousing, value); }

    /// <summary>Of the input shaft, or of the converter.</summary>
    [NotMapped]
    public Noted? Spigot { get => Specs.Of(Spec.Spigot); set => Specs.Put(Spec.Spigot, value); }

    [NotMapped]
    public string? InputSpline { get => Traits.Of(Trait.InputSpline); set => Traits.Put(Trait.InputSpline, value); }

    /// <summary>Of the clutch disc, or of the converter's turbine.</summary>
    [NotMapped]
    public string? DiscSpline { get => Traits.Of(Trait.DiscSpline); set => Traits.Put(Trait.DiscSpline, value); }

    /// <summary>What its clutch or flexplate passes on.</summary>
    [NotMapped]
    public Noted? ClutchRating { get => Specs.Of(Spec.ClutchRating); set => Specs.Put(Spec.ClutchRating, value); }

    /// <summary>Where the bell housing is open for the starter.</summary>
    [NotMapped]
    public StarterSide? Starter { get => Traits.Of<StarterSide>(Trait.Starter); set => Traits.Put(Trait.Starter, value); }

    /// <summary>The way its input was made to turn, seen from in front of the vehicle.</summary>
    [NotMapped]
    public Sense? Turns { get => Traits.Of<Sense>(Trait.Turns); set => Traits.Put(Trait.Turns, value); }

    /// <summary>Flange or spline behind it, in the shop's words.</summary>
    [NotMapped]
    public string? Output { get => Traits.Of(Trait.Output); set => Traits.Put(Trait.Output, value); }

    [NotMapped]
    public SpeedometerFeed? SpeedometerFeed { get => Traits.Of<SpeedometerFeed>(Trait.SpeedometerFeed); set => Traits.Put(Trait.SpeedometerFeed, value); }

    /// <summary>On its output.</summary>
    [NotMapped]
    public Presence? ParkingBrake { get => Traits.Of<Presence>(Trait.ParkingBrake); set => Traits.Put(Trait.ParkingBrake, value); }

    [NotMapped]
    public Presence? ShiftLinkage { get => Traits.Of<Presence>(Trait.ShiftLinkage); set => Traits.Put(Trait.ShiftLinkage, value); }

    internal List<GearRow> Rows { get; } = [];

    /// <summary>Gears named 1, 2, 3 … from their ratios as typed, the lowest gear first.</summary>
    /// <exception cref="RefusedException">A text is no gear ratio.</exception>
    public static IReadOnlyList<StatedGear> GearsFrom(Source source, params IEnumerable<string> ratios)
        => [.. ratios.Select((text, k) => new StatedGear(Numbered(k), Noted.Ratio(text, RatioRange.Gear, source)))];

    public override void Check()
    {
        base.Check();
        if (ConverterLocksUp is null && (StallSpeed ?? StallTorqueRatio) is { } stall)
            throw new RefusedException("converter", Spoken($"A stall ('{stall}') is a torque converter's: say whether the converter locks up, or leave the stall out."), "");

        StatedGear? lower = null;
        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var gear in Gears)
        {
            CheckGearName(gear.Name);
            if (!names.Add(gear.Name)) throw new RefusedException("gear", Spoken($"Two gears are called '{gear.Name}'."), "1, 2, 3, 4");
            _ = RatioRange.Gear.Read(gear.Ratio.Text).OrRefuse();
            if (lower is not null && gear.Ratio.Si >= lower.Ratio.Si)
                throw new RefusedException("gear", Spoken($"Gears stand from the lowest to the top: '{gear.Name}' ({gear.Ratio}) cannot follow '{lower.Name}' ({lower.Ratio})."), "3.20, 1.90, 1.30, 1.00");
            lower = gear;
        }

        if (Train is { } train && Rows.Count > 0 && Rows.Count != train.Gears.Count)
            throw new RefusedException("teeth", Spoken($"The teeth are of {train.Gears.Count} gears, the ratios of {Rows.Count}: both name every forward gear, or one is left out."), "29/19 31/14 25/18 1");
    }

    /// <exception cref="RefusedException">No gear is called so.</exception>
    internal static void CheckGearName(string name)
    {
        if (name.Length is 0 or > 20 || name.Any(char.IsControl)) throw new RefusedException("gear", Spoken("A gear's name has 1 to 20 characters."), "3");
    }

    private static string Numbered(int k) => FormattableString.Invariant($"{k + 1}");
}

/// <summary>One forward gear: its name on the knob and its ratio.</summary>
public sealed record StatedGear(string Name, Noted Ratio);

/// <summary>A gear as it is stored.</summary>
internal sealed class GearRow
{
    public long Id { get; set; }

    public long TransmissionId { get; set; }

    public int Ordinal { get; set; }

    public string Name { get; set; } = "";

    public required Noted Ratio { get; set; }
}
