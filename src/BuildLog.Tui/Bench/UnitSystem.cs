using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Bench;

/// <summary>The units a person wants to read.</summary>
public sealed record UnitSystem(Unit Length, Unit Speed)
{
    public static readonly UnitSystem Metric = new(Units.Metre, Units.KilometrePerHour);

    public static readonly UnitSystem Imperial = new(Units.Inch, Units.MilePerHour);

    /// <summary>A way that was driven.</summary>
    public Unit Distance => IsImperial ? Units.Mile : Units.Kilometre;

    public Unit Mass => IsImperial ? Units.Pound : Units.Kilogram;

    public Unit Torque => IsImperial ? Units.PoundFoot : Units.NewtonMetre;

    public Unit Power => IsImperial ? Units.Horsepower : Units.Kilowatt;

    /// <summary>What pulls at the wheels.</summary>
    public Unit Force => Units.Spelt(IsImperial ? "lbf" : "kN")!;

    /// <summary>A round road speed to speak of.</summary>
    public double RoundSpeed => IsImperial ? 60 : 100;

    private bool IsImperial => Speed == Units.MilePerHour;

    /// <summary>The unit to show for one that a result is worded in. In the metric one, what is measured with a caliper stays in millimetres; rims are sold in inches in both.</summary>
    public Unit Shown(Unit unit) => unit.Kind switch
    {
        Kind.Length when unit == Units.Kilometre || unit == Units.Mile => Distance,
        Kind.Length when unit != Units.Inch => !IsImperial && unit == Units.Millimetre ? unit : Length,
        Kind.Speed => Speed,
        Kind.Mass => Mass,
        Kind.Torque => Torque,
        Kind.Power => Power,
        Kind.Force => Force,
        _ => unit,
    };

    /// <summary>A quantity as it was typed where its unit is of this system, else what it is in this one: <c>70 mph</c> is told as <c>112.7 km/h</c>.</summary>
    public string InWords(Typed typed)
        => Has(typed.Unit) ? typed.InWords
            : Shown(typed.Unit) is var shown && shown != typed.Unit ? OtherUnits.In(typed, shown)
            : OtherUnits.Converted(typed) ?? typed.InWords;

    /// <summary>The same of a text of the record; one that cannot be read is told as it was written.</summary>
    public string InWords(string text, Kind kind, Unit? unitIfNone = null)
        => QuantityText.Read(text, kind, unitIfNone).Understood(out var typed) ? InWords(typed) : AsWritten.Numbers(text);

    /// <summary>What is known of a number, with its interval. What is exact as it was typed has four figures in another unit, as nobody typed its decimals.</summary>
    public string InWords(Known known, Unit worded)
        => Rounded.Converted(known.Value, QuantityText.Read(known.Says, worded.Kind, worded).Understood(out var typed) ? typed.Unit : worded, Shown(worded));

    /// <summary>A road speed with its unit, as it goes into the record: of a bare number it is the one of this system.</summary>
    public string WithUnit(string speed) => QuantityText.WithUnit(speed, Kind.Speed, Speed);

    /// <summary>A short length to the millimetre, or to a tenth of an inch.</summary>
    public string ToACaliper(double metres)
    {
        var unit = Shown(Units.Millimetre);
        return Rounded.WithUnit(Rounded.Fixed(unit.FromBase(metres), unit == Units.Millimetre ? 0 : 1), unit);
    }

    private bool Has(Unit unit) => OtherUnits.IsImperial(unit) is not { } imperial || imperial == IsImperial;
}
