using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.RoadLoad;

namespace BuildLog.Data.Specs;

/// <summary>What is noted under one heading.</summary>
/// <param name="Words">What it is called, in sentences and lists.</param>
/// <param name="Unit">How to show it.</param>
/// <param name="Low">Smallest value that only nonsense is below, in base units.</param>
/// <param name="High">Largest value that only nonsense is above.</param>
/// <param name="Read">What a text means.</param>
/// <param name="IsNominal">It is stated, not measured: unless somebody did measure it, it is meant as it stands.</param>
public sealed record SpecLine(Later Words, Unit Unit, double Low, double High, Func<string, Parsed<Typed>> Read, bool IsNominal)
{
    /// <summary>What it is measured with, however coarsely it is written down; null where the last digit says it.</summary>
    public Tool? MeasuredBy { get; init; }

    /// <summary>Reading it says how sure it is: teeth are exact, whoever counted them.</summary>
    public bool SaysHowSure { get; init; }

    /// <summary>A number of this heading with how sure it is.</summary>
    /// <param name="typed">As <see cref="Read"/> understood it.</param>
    /// <param name="source">Who says so.</param>
    /// <param name="name">What it is called in a budget.</param>
    /// <remarks>
    /// A measured number is as sure as half its last digit, or as the ± typed with it; a rating or another stated one is meant as it stands. A mass is no
    /// surer than ± 10 kg without its ±, whatever its last digit: public weighbridges read in steps of 20 kg (from memory). A rim measured as 6 in is no less sure
    /// than a rule across its bead seats, ± 3 mm (common practice, no source).
    /// </remarks>
    public Known Known(Typed typed, Source source, string name)
    {
        var meantAsItStands = IsNominal && source != Source.Measured;
        return new(SaysHowSure || meantAsItStands ? typed.ToMeasured(name) : ToolOf(typed) is { } tool ? tool.Reads(typed, name) : typed.ToItsLastDigit(name), source, typed.InWords);
    }

    /// <summary>A number that is only tried: its owner's word, and as sure as if it stood on the spec sheet.</summary>
    /// <exception cref="RefusedException">The text means nothing.</exception>
    public Known Told(string text) => Known(Read(text).OrRefuse(), Source.OwnersWord, Words);

    private Tool? ToolOf(Typed typed)
        => typed.StandardUncertainty > 0 ? null
            : typed.Unit.Kind == Kind.Mass ? (typed.LastDigit / 2 < Weighbridge.GoodTo ? Weighbridge : null)
            : MeasuredBy is { } tool && tool.GoodTo < typed.LastDigit / 2 ? tool : null;

    private static Tool Weighbridge { get; } = new(10, new Later("as closely as a weighbridge reads"), null);
}

/// <summary>What a number is measured with.</summary>
/// <param name="GoodTo">Half-width of its error, base units.</param>
/// <param name="Says">Behind the number's name, in a budget.</param>
/// <param name="Better">What settles it; null for measuring it more closely.</param>
public sealed record Tool(double GoodTo, Later Says, Later? Better)
{
    internal Measured Reads(Typed typed, string name)
        => Measured.From(typed.Value, Input.Rectangular(
            $"{name}, {Says}", GoodTo, new Evidence(name, _ => Better?.ToString() ?? Spoken($"measure the {name} more closely than it is noted ({typed.InWords})"))));
}

/// <summary>What the numbers are called and what they can be.</summary>
/// <remarks>Ranges are wide on purpose: outside is a slip of the pen. Where one is widened, a migration has to follow, and a test says so.</remarks>
public static class SpecSheet
{
    private const double Degree = Math.PI / 180;

    private static readonly Dictionary<Spec, SpecLine> Lines = new()
    {
        [Spec.TorquePoints] = new(new Later("strongest torque point"), Units.NewtonMetre, 0, 5000, TorqueText.Read, IsNominal: true),
        [Spec.PeakTorque] = Plain(new Later("peak torque"), Units.NewtonMetre, 1, 5000, "210 N·m"),
        [Spec.PeakTorqueAt] = EngineSpeed(new Later("engine speed of peak torque")),
        [Spec.PeakPower] = Plain(new Later("peak power"), Units.Kilowatt, 500, 2_000_000, "77 kW"),
        [Spec.PeakPowerAt] = EngineSpeed(new Later("engine speed of peak power")),
        [Spec.LowestPull] = EngineSpeed(new Later("lowest clean pull")),
        [Spec.CriticalAltitude] = new(new Later("charger's critical altitude"), Units.Metre, -500, 11_000, text => Within(QuantityText.ReadPlain(text, Kind.Length, Units.Metre), new Later("charger's critical altitude"), Units.Metre, (-500, 11_000), "2500 m"), IsNominal: true),
        [Spec.PilotBore] = Measured(new Later("pilot bore"), Units.Millimetre, 0.005, 0.1, "15.05 mm"),

        [Spec.StallSpeed] = EngineSpeed(new Later("stall speed")),
        [Spec.StallTorqueRatio] = Nominal(new Later("stall torque ratio"), Units.One, 1, 5, "2.1"),
        [Spec.TorqueRating] = Nominal(new Later("torque rating"), Units.NewtonMetre, 10, 100_000, "300 N·m"),
        [Spec.Spigot] = Measured(new Later("spigot"), Units.Millimetre, 0.005, 0.1, "15.00 mm"),
        [Spec.ClutchRating] = Nominal(new Later("clutch rating"), Units.NewtonMetre, 10, 10_000, "320 N·m"),

        [Spec.Reverse] = Measured(new Later("reverse ratio"), Units.One, 0.3, 20, "2.20"),

        [Spec.LowStep] = new(new Later("low over high of a two-speed axle"), Units.One, 1.05, 2.5, TwoSpeedAxle.ReadStep, IsNominal: true) { SaysHowSure = true },
        [Spec.PitchCircle] = Nominal(new Later("bolt circle"), Units.Millimetre, 0.05, 0.4, "114.3 mm"),
        [Spec.Bore] = Measured(new Later("centre bore"), Units.Millimetre, 0.03, 0.4, "66.1 mm"),
        [Spec.HubFaces] = Measured(new Later("hub face to hub face"), Units.Millimetre, 0.6, 3, "1480 mm"),
        [Spec.Droop] = Measured(new Later("droop"), Units.Millimetre, 0, 1, "90 mm"),
        [Spec.Bump] = Measured(new Later("bump"), Units.Millimetre, 0, 1, "80 mm"),
        [Spec.Perches] = Measured(new Later("perches apart"), Units.Millimetre, 0.3, 2, "1020 mm"),
        [Spec.PinionToPerch] = Angle(new Later("pinion against the perches")),
        [Spec.LoadedRadius] = Measured(new Later("loaded radius"), Units.Millimetre, 0.1, 1, "312 mm"),
        [Spec.RimWidth] = Nominal(new Later("rim width"), Units.Inch, 0.05, 0.6, "6 in") with { MeasuredBy = new(0.003, new Later("as closely as a rule across the bead seats reads"), new Later("read the width stamped on the wheel, such as 6J")) },
        [Spec.Offset] = Measured(new Later("wheel offset"), Units.Millimetre, -0.2, 0.2, "25 mm"),

        [Spec.JointRating] = Nominal(new Later("joint rating"), Units.NewtonMetre, 10, 100_000, "900 N·m"),
        [Spec.SlipStroke] = Measured(new Later("slip stroke"), Units.Millimetre, 0, 1, "90 mm"),
        [Spec.SlipOut] = Measured(new Later("slip stands out"), Units.Millimetre, 0, 1, "35 mm"),
        [Spec.OutputSide] = Angle(new Later("output angle from the side")),
        [Spec.OutputPlan] = Angle(new Later("output angle from above")),
        [Spec.PinionSide] = Angle(new Later("pinion angle from the side")),
        [Spec.PinionPlan] = Angle(new Later("pinion angle from above")),

        [Spec.TurnsWanted] = Nominal(new Later("turns the dial wants"), Units.One, 50, 1_000_000, "1000"),
        [Spec.PulsesPerTurn] = Nominal(new Later("pulses a turn"), Units.One, 0.01, 1000, "16"),
        [Spec.Correction] = Nominal(new Later("speedometer correction"), Units.One, 0.01, 100, "0.917"),

        [Spec.Mass] = new(new Later("mass as driven"), Units.Kilogram, 100, 60_000, VehicleLoad.ReadMass, IsNominal: false),
        [Spec.FrontAxleMass] = Measured(new Later("front axle mass"), Units.Kilogram, 20, 40_000, "700 kg"),
        [Spec.RearAxleMass] = Measured(new Later("rear axle mass"), Units.Kilogram, 20, 40_000, "750 kg"),
        [Spec.DragArea] = new(new Later("drag area"), Units.SquareMetre, 0.2, 12, VehicleLoad.ReadDragArea, IsNominal: false),
        [Spec.RollingResistance] = new(new Later("rolling resistance"), Units.One, 0.003, 0.4, VehicleLoad.ReadRollingResistance, IsNominal: false),
        [Spec.DrivenShare] = new(new Later("share on driven wheels"), Units.PercentUnit, 0.05, 1, VehicleLoad.ReadDrivenShare, IsNominal: false),
        [Spec.Altitude] = new(new Later("altitude"), Units.Metre, -500, 6000, VehicleLoad.ReadAltitude, IsNominal: true),
        [Spec.GravityHeight] = Measured(new Later("height of the centre of gravity"), Units.Millimetre, 0.1, 3, "620 mm"),
        [Spec.Wheelbase] = Measured(new Later("wheelbase"), Units.Millimetre, 1, 10, "2650 mm"),
        [Spec.FrontSprings] = Measured(new Later("front springs apart"), Units.Millimetre, 0.3, 2, "760 mm"),
        [Spec.RearSprings] = Measured(new Later("rear springs apart"), Units.Millimetre, 0.3, 2, "1020 mm"),
        [Spec.FrontPad] = Angle(new Later("front springs' angle")),
        [Spec.RearPad] = Angle(new Later("rear springs' angle")),
    };

    public static SpecLine Line(this Spec spec) => Lines[spec];

    public static string InWords(this Spec spec) => spec.Line().Words;

    public static SpecLine ShaftOuter { get; } = Measured(new Later("tube diameter"), Units.Millimetre, 0.005, 0.3, "76 mm");

    public static SpecLine ShaftWall { get; } = Measured(new Later("tube wall"), Units.Millimetre, 0.0002, 0.15, "2.1 mm");

    public static SpecLine ShaftLength { get; } = Measured(new Later("length between joints"), Units.Metre, 0.05, 4, "1.30 m");

    public static SpecLine ShaftSide { get; } = Angle(new Later("shaft angle from the side"));

    public static SpecLine ShaftPlan { get; } = Angle(new Later("shaft angle from above"));

    private static SpecLine Measured(Later words, Unit unit, double low, double high, string example)
        => new(words, unit, low, high, text => Within(QuantityText.Read(text, unit.Kind), words, unit, (low, high), example), IsNominal: false);

    private static SpecLine Nominal(Later words, Unit unit, double low, double high, string example)
        => Measured(words, unit, low, high, example) with { IsNominal = true };

    // A curve has an uncertainty of its own, so a ± typed here would be lost.
    private static SpecLine Plain(Later words, Unit unit, double low, double high, string example)
        => new(words, unit, low, high, text => Within(QuantityText.ReadPlain(text, unit.Kind), words, unit, (low, high), example), IsNominal: true);

    private static SpecLine Angle(Later words)
        => new(words, Units.Degree, -45 * Degree, 45 * Degree, text => Within(QuantityText.Read(text, Kind.Angle, Units.Degree), words, Units.Degree, (-45 * Degree, 45 * Degree), "3.5 deg"), IsNominal: false);

    private static SpecLine EngineSpeed(Later words) => new(words, Units.RevolutionPerMinute, 0, 1000, CruiseGoal.ReadEngineSpeed, IsNominal: true);

    private static Parsed<Typed> Within(Parsed<Typed> read, Later words, Unit unit, (double Low, double High) range, string example)
        => read.Showing(example).Then<Typed>(typed => typed.Value >= range.Low && typed.Value <= range.High
            ? typed
            : new Refusal("out-of-range", Spoken($"'{typed.Text}' cannot be the {words}: it lies between {unit.FromBase(range.Low):0.####} and {unit.FromBase(range.High):0.####} {unit.Symbol}").TrimEnd() + ".", example));
}
