using BuildLog.Gearing.Checks;
using MathNet.Numerics.Distributions;

namespace BuildLog.Gearing.Options;

/// <summary>In what share of the uncertainty an option still fits.</summary>
/// <remarks>
/// <code>share = Π (Φ((high − y)/u) − Φ((low − y)/u))</code>
/// <para>Over the findings that judge a number against a verified limit, as if independent; cruises that share a tyre are not, so it errs to the low side.</para>
/// </remarks>
public static class Robustness
{
    public static double Of(IEnumerable<Finding> findings)
        => findings.Where(finding => finding is { LimitIsVerified: true, Value: not null, Wanted: not null }).Aggregate(1.0, (share, finding) => share * Inside(finding));

    private static double Inside(Finding finding)
    {
        var (value, wanted) = (finding.Value!, finding.Wanted!.Value);
        if (value.IsExact) return wanted.Contains(value.Value) ? 1 : 0;

        var u = value.StandardUncertainty;
        return Normal.CDF(value.Value, u, wanted.High) - Normal.CDF(value.Value, u, wanted.Low);
    }
}
