using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Checks;

/// <summary>A value that is best within one window and must stay within a wider one.</summary>
/// <param name="Good">Fits.</param>
/// <param name="Allowed">Beyond it is a clash; in between a watch.</param>
public sealed record TwoLimits(Window Good, Window Allowed)
{
    /// <param name="value">In the windows' unit.</param>
    /// <param name="limitIsVerified">False where the wider window is only from memory: it may warn, never clash.</param>
    public (Verdict Verdict, Because Because) Judge(Measured value, bool limitIsVerified = true)
    {
        var interval = value.Interval95;
        return Good.Contains(interval) ? (Verdict.Fits, Because.Inside)
            : Allowed.Misses(interval) ? (limitIsVerified ? (Verdict.Clash, Because.Outside) : (Verdict.Watch, Because.UnverifiedLimit))
            : Good.Misses(interval) && Allowed.Contains(interval) ? (Verdict.Watch, Because.UnverifiedLimit)
            : (Verdict.Watch, Because.Uncertainty);
    }

    /// <summary>The window that the value's interval reaches over.</summary>
    public Window Straddled(Measured value) => Good.Misses(value.Interval95) ? Allowed : Good;
}
