namespace BuildLog.Gearing.Measurements;

/// <summary>A two-sided interval, both ends belonging to it.</summary>
public readonly record struct Interval(double Low, double High)
{
    /// <summary>What stands behind the ±.</summary>
    public double HalfWidth => (High - Low) / 2;

    /// <summary>Whether a value is in it, the ends included.</summary>
    public bool Contains(double value) => Low <= value && value <= High;

    /// <summary>The interval of the value times an exact factor.</summary>
    public Interval Times(double factor) => factor >= 0 ? new(Low * factor, High * factor) : new(High * factor, Low * factor);
}
