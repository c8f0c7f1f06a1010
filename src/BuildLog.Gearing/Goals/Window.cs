using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Goals;

/// <summary>What values are wanted, the limits included; a side without a limit is infinite.</summary>
public readonly record struct Window(double Low, double High)
{
    public static Window AtMost(double high) => new(double.NegativeInfinity, high);

    public static Window AtLeast(double low) => new(low, double.PositiveInfinity);

    public bool IsEmpty => !(Low <= High);

    public bool Contains(double value) => Low <= value && value <= High;

    public bool Contains(Interval interval) => Low <= interval.Low && interval.High <= High;

    public bool Overlaps(Window other) => Low <= other.High && other.Low <= High;

    public bool Misses(Interval interval) => interval.High < Low || interval.Low > High;

    /// <summary>The window in a unit, rounded inwards: ratios and lengths to what a part is known by, others to whole numbers.</summary>
    public string InWords(Unit unit) => Rounded.Within(unit.FromBase(Low), unit.FromBase(High), Places(unit), unit);

    /// <summary>The limit that an interval reaches over, or the nearer one.</summary>
    public double NearestLimit(double value) => Math.Abs(value - Low) < Math.Abs(value - High) ? Low : High;

    private static int Places(Unit unit) => unit.Kind switch
    {
        Kind.Number => 2,
        Kind.Share => 1,
        Kind.Length => unit.Factor >= Units.Metre.Factor ? 3 : 1,
        Kind.Angle => 1,
        _ => 0,
    };
}
