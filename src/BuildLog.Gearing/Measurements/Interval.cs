namespace BuildLog.Gearing.Measurements;

/// <summary>A two-sided interval, both ends belonging to it.</summary>
public readonly record struct Interval(double Low, double High)
{
    public double HalfWidth => (High - Low) / 2;

    public bool Contains(double value) => Low <= value && value <= High;

    public Interval Times(double factor) => factor >= 0 ? new(Low * factor, High * factor) : new(High * factor, Low * factor);
}
