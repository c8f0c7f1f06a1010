using BuildLog.Gearing.Checks;

namespace BuildLog.Gearing.Options;

/// <summary>How many findings of each verdict.</summary>
public readonly record struct VerdictCounts(int Clash, int Open, int Watch, int Fits)
{
    /// <summary>Counts them.</summary>
    public static VerdictCounts Of(IEnumerable<Finding> findings)
    {
        var counts = default(VerdictCounts);
        foreach (var finding in findings)
        {
            counts = finding.Verdict switch
            {
                Verdict.Clash => counts with { Clash = counts.Clash + 1 },
                Verdict.Open => counts with { Open = counts.Open + 1 },
                Verdict.Watch => counts with { Watch = counts.Watch + 1 },
                _ => counts with { Fits = counts.Fits + 1 },
            };
        }

        return counts;
    }

    /// <summary>Both together.</summary>
    public static VerdictCounts operator +(VerdictCounts left, VerdictCounts right)
        => new(left.Clash + right.Clash, left.Open + right.Open, left.Watch + right.Watch, left.Fits + right.Fits);
}
