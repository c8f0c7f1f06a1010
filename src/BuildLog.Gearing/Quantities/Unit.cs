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
public sealed class Unit(Kind kind, Later symbol, double factor, params string[] spellings)
{
    /// <summary>What it measures.</summary>
    public Kind Kind { get; } = kind;

    /// <summary>How programs and files have it; empty for one.</summary>
    public string Symbol => symbol.Text;

    /// <summary>How a person reads it: some symbols are words.</summary>
    public string InWords => symbol;

    /// <summary>One of it in the base unit of its kind.</summary>
    public double Factor { get; } = factor;

    /// <summary>Other ways it is typed.</summary>
    public IReadOnlyList<string> Spellings { get; } = spellings;

    /// <summary>From this unit to the base unit.</summary>
    public double ToBase(double value) => value * Factor;

    /// <summary>From the base unit to this one.</summary>
    public double FromBase(double value) => value / Factor;

    /// <inheritdoc/>
    public override string ToString() => InWords;
}
