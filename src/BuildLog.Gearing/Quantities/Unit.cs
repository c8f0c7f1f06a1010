namespace BuildLog.Gearing.Quantities;

/// <summary>What a unit measures.</summary>
public enum Kind
{
    /// <summary>Ratios and counts: unit one.</summary>
    Number,

    /// <summary>Metres.</summary>
    Length,

    /// <summary>Metres per second.</summary>
    Speed,

    /// <summary>Revolutions per second.</summary>
    Rotation,

    /// <summary>Kilograms.</summary>
    Mass,

    /// <summary>Pascals.</summary>
    Pressure,

    /// <summary>A part of one; typed as per cent.</summary>
    Share,

    /// <summary>Newton metres.</summary>
    Torque,

    /// <summary>Watts.</summary>
    Power,

    /// <summary>Square metres.</summary>
    Area,

    /// <summary>Newtons.</summary>
    Force,

    /// <summary>Radians.</summary>
    Angle,

    /// <summary>Radians per second squared.</summary>
    AngularAcceleration,
}

/// <summary>A unit as people write it.</summary>
/// <param name="kind">What it measures.</param>
/// <param name="symbol">How we print it.</param>
/// <param name="factor">One of it in the base unit of its kind.</param>
/// <param name="spellings">Other ways it is typed.</param>
public sealed class Unit(Kind kind, string symbol, double factor, params string[] spellings)
{
    public Kind Kind { get; } = kind;

    public string Symbol { get; } = symbol;

    public double Factor { get; } = factor;

    public IReadOnlyList<string> Spellings { get; } = spellings;

    public double ToBase(double value) => value * Factor;

    public double FromBase(double value) => value / Factor;

    public override string ToString() => Symbol;
}
