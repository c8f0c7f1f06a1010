namespace BuildLog.Gearing.Quantities;

/// <summary>The units the bench speaks. Every factor is exact by definition.</summary>
/// <remarks>
/// A horsepower is 550 foot-pounds a second, a metric one (PS) 75 kilogram-force metres a second.
/// Source: the inch (25.4 mm), pound (0.45359237 kg) and standard gravity are defined values (NIST SP 811, appendix B).
/// The test project holds each factor against UnitsNet.
/// </remarks>
public static class Units
{
    /// <summary>Standard gravity, m/s².</summary>
    public const double Gravity = 9.80665;

    /// <summary>One pound-force in newtons.</summary>
    public const double PoundForce = 0.45359237 * Gravity;

    /// <summary>A plain number, such as a ratio.</summary>
    public static readonly Unit One = new(Kind.Number, "", 1, ":1");

    /// <summary>The base unit of length.</summary>
    public static readonly Unit Metre = new(Kind.Length, "m", 1, "metre", "metres", "meter", "meters");
    /// <summary>10⁻³ m.</summary>
    public static readonly Unit Millimetre = new(Kind.Length, "mm", 1e-3, "millimetre", "millimetres", "millimeter", "millimeters");
    /// <summary>25.4 mm.</summary>
    public static readonly Unit Inch = new(Kind.Length, "in", 0.0254, "\"", "inch", "inches");
    /// <summary>12 in, 0.3048 m.</summary>
    public static readonly Unit Foot = new(Kind.Length, "ft", 0.3048, "'", "foot", "feet");
    /// <summary>5280 ft, 1609.344 m.</summary>
    public static readonly Unit Mile = new(Kind.Length, "mi", 1609.344, "mile", "miles");
    /// <summary>1000 m.</summary>
    public static readonly Unit Kilometre = new(Kind.Length, "km", 1000, "kilometre", "kilometres", "kilometer", "kilometers");

    /// <summary>1/3.6 m/s; m/s is the base unit.</summary>
    public static readonly Unit KilometrePerHour = new(Kind.Speed, "km/h", 1 / 3.6, "kph", "kmh", "kmph");
    /// <summary>0.44704 m/s.</summary>
    public static readonly Unit MilePerHour = new(Kind.Speed, "mph", 0.44704, "mi/h");

    /// <summary>1/60 rev/s; rev/s is the base unit, never rad/s.</summary>
    public static readonly Unit RevolutionPerMinute = new(Kind.Rotation, new Later("rev/min"), 1 / 60.0, "rpm", "r/min", "1/min", "omw/min");

    /// <summary>The base unit of mass.</summary>
    public static readonly Unit Kilogram = new(Kind.Mass, "kg", 1);
    /// <summary>0.45359237 kg.</summary>
    public static readonly Unit Pound = new(Kind.Mass, "lb", 0.45359237, "lbs");
    /// <summary>100 kPa; the pascal is the base unit.</summary>
    public static readonly Unit Bar = new(Kind.Pressure, "bar", 1e5);
    /// <summary>One hundredth: shares and gradients.</summary>
    public static readonly Unit PercentUnit = new(Kind.Share, "%", 0.01, "percent", "per cent");

    /// <summary>The base unit of torque.</summary>
    public static readonly Unit NewtonMetre = new(Kind.Torque, "N·m", 1, "Nm", "N m", "N-m");
    /// <summary>A pound-force a foot out, 1.3558 N·m.</summary>
    public static readonly Unit PoundFoot = new(Kind.Torque, "lb·ft", PoundForce * 0.3048, "lb-ft", "lb ft", "lbft", "lbf-ft", "ft-lb", "ft lb", "ftlb");
    /// <summary>1000 W; the watt is the base unit.</summary>
    public static readonly Unit Kilowatt = new(Kind.Power, "kW", 1e3);
    /// <summary>550 foot-pounds a second, 745.70 W.</summary>
    public static readonly Unit Horsepower = new(Kind.Power, "hp", 550 * PoundForce * 0.3048, "bhp");
    /// <summary>PS, 75 kilogram-force metres a second, 735.50 W.</summary>
    public static readonly Unit MetricHorsepower = new(Kind.Power, "PS", 75 * Gravity);
    /// <summary>The base unit of area.</summary>
    public static readonly Unit SquareMetre = new(Kind.Area, "m²", 1, "m2", "sq m");
    /// <summary>The base unit of force.</summary>
    public static readonly Unit Newton = new(Kind.Force, "N", 1);

    /// <summary>π/180 rad; the radian is the base unit.</summary>
    public static readonly Unit Degree = new(Kind.Angle, "°", Math.PI / 180, "deg", "degree", "degrees");
    /// <summary>The base unit of angular acceleration.</summary>
    public static readonly Unit RadianPerSecondSquared = new(Kind.AngularAcceleration, "rad/s²", 1);

    /// <summary>All units, the one to show as an example first within each kind.</summary>
    public static readonly IReadOnlyList<Unit> All =
    [
        One,
        Metre, Millimetre, new(Kind.Length, "cm", 1e-2, "centimetre", "centimetres", "centimeter", "centimeters"), Inch, Foot, Mile, Kilometre,
        KilometrePerHour, MilePerHour, new(Kind.Speed, "m/s", 1),
        RevolutionPerMinute, new(Kind.Rotation, new Later("rev/s"), 1, "rps", "omw/s"),
        Kilogram, Pound, new(Kind.Mass, "t", 1000, "tonne", "tonnes"),
        Bar, new(Kind.Pressure, "kPa", 1e3), new(Kind.Pressure, "psi", PoundForce / (0.0254 * 0.0254)),
        PercentUnit,
        NewtonMetre, PoundFoot, Kilowatt, Horsepower, MetricHorsepower, SquareMetre, new(Kind.Area, new Later("sq ft"), 0.3048 * 0.3048, "ft²"),
        Newton, new(Kind.Force, "kN", 1e3), new(Kind.Force, "lbf", PoundForce),
        Degree, new(Kind.Angle, "rad", 1), RadianPerSecondSquared,
    ];

    /// <summary>The units of a kind, the one to show as an example first.</summary>
    public static IEnumerable<Unit> Of(Kind kind) => All.Where(unit => unit.Kind == kind);

    /// <summary>The unit of this spelling, whatever its kind; letters may be large or small.</summary>
    public static Unit? Spelt(string text)
    {
        foreach (var unit in All)
        {
            if (Same(unit.Symbol, text)) return unit;
            foreach (var spelling in unit.Spellings)
            {
                if (Same(spelling, text)) return unit;
            }
        }

        return null;
    }

    /// <summary>What a person calls the kind: <c>length</c>, <c>engine speed</c>.</summary>
    public static string InWords(this Kind kind) => kind switch
    {
        Kind.Number => Spoken("number"),
        Kind.Length => Spoken("length"),
        Kind.Speed => Spoken("speed"),
        Kind.Rotation => Spoken("engine speed"),
        Kind.Mass => Spoken("mass"),
        Kind.Pressure => Spoken("pressure"),
        Kind.Share => Spoken("share"),
        Kind.Torque => Spoken("torque"),
        Kind.Power => Spoken("power"),
        Kind.Area => Spoken("area"),
        Kind.Force => Spoken("force"),
        Kind.Angle => Spoken("angle"),
        Kind.AngularAcceleration => Spoken("angular acceleration"),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such kind."),
    };

    /// <summary>The unit of a bare number: where a bench has one that is usual. Lengths, road speeds and powers have several, so theirs is typed.</summary>
    public static Unit? Usual(this Kind kind) => kind switch
    {
        Kind.Number => One,
        Kind.Rotation => RevolutionPerMinute,
        Kind.Mass => Kilogram,
        Kind.Torque => NewtonMetre,
        _ => null,
    };

    /// <summary><c>a length</c>, <c>an engine speed</c>.</summary>
    public static string WithArticle(this Kind kind)
        => $"{(kind is Kind.Rotation or Kind.Area or Kind.Angle or Kind.AngularAcceleration ? Spoken("an") : Spoken("a"))} {kind.InWords()}";

    /// <summary>Something of this kind, written right.</summary>
    public static string Example(this Kind kind) => kind switch
    {
        Kind.Number => "4.10",
        Kind.Length => "2.04 m",
        Kind.Speed => "110 km/h",
        Kind.Rotation => "2400 rev/min",
        Kind.Mass => "1450 kg",
        Kind.Pressure => "2.2 bar",
        Kind.Share => "3 %",
        Kind.Torque => "180 N·m",
        Kind.Power => "66 kW",
        Kind.Area => "0.85 m²",
        Kind.Force => "540 N",
        Kind.Angle => "3.5 deg",
        Kind.AngularAcceleration => "300 rad/s²",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such kind."),
    };

    private static bool Same(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);
}
