using BuildLog.Gearing.Checks;
using MathNet.Numerics.Distributions;

namespace BuildLog.Gearing.Options;

/// <summary>In what share of the uncertainty an option still fits.</summary>
/// <remarks>
/// <code>share = Π (Φ((high − y)/u) − Φ((low − y)/u))</code>
/// <para>y the value of a finding, u its standard uncertainty, low and high the window wanted; Φ the normal distribution.</para>
/// <para>Over the findings that judge a number against a verified limit, as if independent; cruises that share a tyre are not, so it errs to the low side.</para>
/// <para>What warns and cannot clash is not in it: a limit from memory or practice, or a number that lies surely between what is good and what is allowed.</para>
/// <para>A clash without a number, such as a thread, leaves no share: whatever the readings are worth, it does not fit. What is open is not in it.</para>
/// <para>Source: our own reading of a coverage probability, JCGM 101:2008, 3.21.</para>
/// </remarks>
public static class Robustness
{
    /// <returns>From 0 to 1; null where no finding has a number to judge.</returns>
    public static double? Of(IReadOnlyList<Finding> findings)
    {
        if (findings.Any(finding => finding is { Verdict: Verdict.Clash, Value: null })) return 0;

        var judged = findings.Where(finding => finding is { LimitIsVerified: true, Because: not Because.UnverifiedLimit, Value: not null, Wanted: not null }).ToList();
        return judged.Count == 0 ? null : judged.Aggregate(1.0, (share, finding) => share * Inside(finding));
    }

    private static double Inside(Finding finding)
    {
        var (value, wanted) = (finding.Value!, finding.Reaches ?? finding.Wanted!.Value);
        if (value.IsExact) return wanted.Contains(value.Value) ? 1 : 0;

        var u = value.StandardUncertainty;
        return Normal.CDF(value.Value, u, wanted.High) - Normal.CDF(value.Value, u, wanted.Low);
    }
}
