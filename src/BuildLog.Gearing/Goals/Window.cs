using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Goals;

/// <summary>What values are wanted, the limits included; a side without a limit is infinite.</summary>
public readonly record struct Window(double Low, double High)
{
    // 1.96 · ½/√3 = 0.566; a quotient bends by as little more.
    private const double LastDigit95 = 0.57;

    // A limit is met where only the rounding of a computation misses it, as 1.2 · 130 does 156.
    private const double LastBits = 1e-9;

    /// <summary>Everything up to a limit.</summary>
    public static Window AtMost(double high) => new(double.NegativeInfinity, high);

    /// <summary>Everything from a limit on.</summary>
    public static Window AtLeast(double low) => new(low, double.PositiveInfinity);

    /// <summary>Whether nothing is in it: the lower limit is above the upper one.</summary>
    public bool IsEmpty => !(Low <= High);

    /// <summary>Whether a value is in it.</summary>
    public bool Contains(double value) => Low <= value && value <= High;

    /// <summary>Whether all of an interval is in it.</summary>
    public bool Contains(Interval interval) => Low - Math.Abs(Low * LastBits) <= interval.Low && interval.High <= High + Math.Abs(High * LastBits);

    /// <summary>Whether some value is in both.</summary>
    public bool Overlaps(Window other) => Low <= other.High && other.Low <= High;

    /// <summary>Whether nothing of an interval is in it.</summary>
    public bool Misses(Interval interval) => interval.High < Low || interval.Low > High;

    /// <summary>The window in a unit, rounded inwards: ratios and lengths to what a part is known by, others to whole numbers.</summary>
    public string InWords(Unit unit) => Rounded.Within(unit.FromBase(Low), unit.FromBase(High), PlacesIn(unit), unit);

    /// <summary>The same, narrowed by what the last digit of a typed end leaves open (95 %, rectangular), with one digit more where that takes all; null where two do.</summary>
    public string? AsTyped(Unit unit) => AsTyped(unit, PlacesIn(unit));

    /// <summary>The same to so many decimals.</summary>
    public string? AsTyped(Unit unit, int places)
        => Narrowed(unit, places) is { } narrowed ? Rounded.Within(narrowed.Low, narrowed.High, narrowed.Places, unit) : null;

    /// <summary>The window that <see cref="AsTyped(Unit)"/> tells of, as it is read there; null where it tells of none.</summary>
    /// <param name="unit">The unit it is told in; the window is in its base unit.</param>
    public Window? Told(Unit unit)
    {
        if (Narrowed(unit, PlacesIn(unit)) is not { } narrowed) return null;

        var (from, to, _) = Rounded.Inwards(narrowed.Low, narrowed.High, narrowed.Places);
        return new(unit.ToBase(from), unit.ToBase(to));
    }

    /// <summary>The values that <see cref="AsTyped(Unit)"/> tells of once they are written to as many places; null where it tells of none.</summary>
    /// <param name="unit">The unit it is told in; the window is in its base unit.</param>
    /// <remarks>All of them lie in the window: what is told is narrowed by more than half a last digit.</remarks>
    public Window? ToldOnceWritten(Unit unit)
    {
        if (Narrowed(unit, PlacesIn(unit)) is not { } narrowed) return null;

        var (from, to, places) = Rounded.Inwards(narrowed.Low, narrowed.High, narrowed.Places);
        var half = Math.Pow(10, -places) / 2;
        return new(unit.ToBase(from - half), unit.ToBase(to + half));
    }

    private (double Low, double High, int Places)? Narrowed(Unit unit, int places)
    {
        var (low, high) = (unit.FromBase(Low), unit.FromBase(High));
        for (var finest = places + 1; places <= finest; places++)
        {
            var half = LastDigit95 * Math.Pow(10, -places);
            var (from, to, used) = Rounded.Inwards(low + half, high - half, places);
            if (used == places && from <= to) return (low + half, high - half, places);
        }

        return null;
    }

    /// <summary>The ends in a unit, rounded as <see cref="InWords"/> does and written as they are typed; an open side is empty.</summary>
    public (string Low, string High) Written(Unit unit)
    {
        var (from, to, places) = Rounded.Inwards(unit.FromBase(Low), unit.FromBase(High), PlacesIn(unit));
        string Text(double side) => double.IsInfinity(side) ? "" : Rounded.Typed(side, places);
        return (Text(from), Text(to));
    }

    /// <summary>Both ends times a factor above zero.</summary>
    internal Window Times(double factor) => new(Low * factor, High * factor);

    /// <summary>What is in both.</summary>
    public Window And(Window other) => new(Math.Max(Low, other.Low), Math.Min(High, other.High));

    /// <summary>The limit that an interval reaches over, or the nearer one.</summary>
    public double NearestLimit(double value) => Math.Abs(value - Low) < Math.Abs(value - High) ? Low : High;

    /// <summary>The decimals its ends are told to.</summary>
    /// <remarks>A limit of 65 % is no more exact for being written 65.0 %.</remarks>
    internal int PlacesIn(Unit unit)
    {
        bool IsWhole(double side) => double.IsInfinity(side) || Math.Abs(side - Math.Round(side)) < 1e-9;
        return Places(unit) == 1 && IsWhole(unit.FromBase(Low)) && IsWhole(unit.FromBase(High)) ? 0 : Places(unit);
    }

    // Plays of less than a millimetre are told to a hundredth.
    private int Places(Unit unit) => unit.Kind switch
    {
        Kind.Number => 2,
        Kind.Share => 1,
        Kind.Length => unit.Factor >= Units.Metre.Factor ? 3 : Math.Abs(High - Low) < 1e-3 ? 2 : 1,
        Kind.Angle => 1,
        _ => 0,
    };
}
