using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Checks;

/// <summary>What can be said, the worst first.</summary>
public enum Verdict
{
    /// <summary>The whole 95 % interval is outside the window.</summary>
    Clash,

    /// <summary>It cannot be said: a number is missing.</summary>
    Open,

    /// <summary>The interval reaches over a limit, or the limit itself is not verified.</summary>
    Watch,

    /// <summary>The whole 95 % interval is inside the window.</summary>
    Fits,
}

/// <summary>Why it says so.</summary>
public enum Because
{
    /// <summary>All of the 95 % interval is inside what is wanted.</summary>
    Inside,
    /// <summary>All of it is outside.</summary>
    Outside,
    /// <summary>The interval reaches over a limit; a better measurement would decide.</summary>
    Uncertainty,

    /// <summary>A limit that may warn, never clash: from memory, or advice short of the limit.</summary>
    UnverifiedLimit,
    /// <summary>A number or a goal is missing.</summary>
    MissingInput,
}

/// <summary>Makes verdicts, and says them.</summary>
public static class Verdicts
{
    /// <summary>Judges a measured value against a window, the limits included.</summary>
    /// <param name="value">In the window's unit.</param>
    /// <param name="wanted">What will do.</param>
    /// <param name="limitIsVerified">False for a limit that is only from memory: it may warn, never clash.</param>
    public static (Verdict Verdict, Because Because) Judge(Measured value, Window wanted, bool limitIsVerified = true)
    {
        var interval = value.Interval95;
        return wanted.Contains(interval) ? (Verdict.Fits, Because.Inside)
            : !wanted.Misses(interval) ? (Verdict.Watch, Because.Uncertainty)
            : limitIsVerified ? (Verdict.Clash, Because.Outside)
            : (Verdict.Watch, Because.UnverifiedLimit);
    }

    /// <summary>The word of screens, sheets and JSON, such as <c>clash</c>.</summary>
    public static string InWords(this Verdict verdict) => verdict switch
    {
        Verdict.Clash => Spoken("clash"),
        Verdict.Open => Spoken("open"),
        Verdict.Watch => Spoken("watch"),
        Verdict.Fits => Spoken("fits"),
        _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, "No such verdict."),
    };

    /// <summary>Such as <c>missing input</c>.</summary>
    public static string InWords(this Because because) => because switch
    {
        Because.Inside => Spoken("inside"),
        Because.Outside => Spoken("outside"),
        Because.Uncertainty => Spoken("uncertainty"),
        Because.UnverifiedLimit => Spoken("unverified limit"),
        Because.MissingInput => Spoken("missing input"),
        _ => throw new ArgumentOutOfRangeException(nameof(because), because, "No such reason."),
    };
}
