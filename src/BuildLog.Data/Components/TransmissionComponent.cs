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
    public override string Kind => "gearbox";

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

    internal List<GearRow> Rows { get; } = [];

    /// <summary>Gears named 1, 2, 3 … from their ratios as typed, the lowest gear first.</summary>
    /// <exception cref="RefusedException">A text is no gear ratio.</exception>
    public static IReadOnlyList<StatedGear> GearsFrom(Source source, params IEnumerable<string> ratios)
        => [.. ratios.Select((text, k) => new StatedGear(FormattableString.Invariant($"{k + 1}"), Noted.Ratio(text, RatioRange.Gear, source)))];

    public override void Check()
    {
        base.Check();
        if (ConverterLocksUp is null && (StallSpeed ?? StallTorqueRatio) is { } stall)
            throw new RefusedException("converter", $"A stall ('{stall}') is a torque converter's: say whether the converter locks up, or leave the stall out.", "");

        StatedGear? lower = null;
        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var gear in Gears)
        {
            if (gear.Name.Length is 0 or > 20) throw new RefusedException("gear", "A gear's name has 1 to 20 characters.", "3");
            if (!names.Add(gear.Name)) throw new RefusedException("gear", $"Two gears are called '{gear.Name}'.", "1, 2, 3, 4");
            _ = RatioRange.Gear.Read(gear.Ratio.Text).OrRefuse();
            if (lower is not null && gear.Ratio.Si >= lower.Ratio.Si)
                throw new RefusedException("gear", $"Gears stand from the lowest to the top: '{gear.Name}' ({gear.Ratio}) cannot follow '{lower.Name}' ({lower.Ratio}).", "3.20, 1.90, 1.30, 1.00");
            lower = gear;
        }
    }
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
