using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using MathNet.Numerics.Distributions;
using StudentT = BuildLog.Gearing.Measurements.StudentT;

namespace BuildLog.Gearing.Options;

/// <summary>In what share of the uncertainty an option still fits.</summary>
/// <remarks>
/// <code>share = P(low_k ≤ y_k ≤ high_k for all k),   y normal with the covariances of the findings' shared inputs</code>
/// <para>y_k the value of a finding, low_k and high_k the window wanted. The standard deviation is U/1.96 of its 95 % interval, so that few degrees of freedom count here as in the verdict.</para>
/// <para>
/// Over the findings that judge a number against a verified limit. Two cruises that hang on one tyre rise and fall together: what one wish leaves may be all
/// that the other forbids, and then nothing is left.
/// </para>
/// <para>What warns and cannot clash is not in it: a limit from memory or practice, or a number that lies surely between what is good and what is allowed.</para>
/// <para>A clash without a number, such as a thread, leaves no share: whatever the readings are worth, it does not fit. What is open is not in it.</para>
/// <para>
/// To about half a per cent, for up to twelve uncertain findings; later ones count as if independent of one another. Source: a coverage probability, JCGM 101:2008, 3.21; of
/// several values by conditioning one after the other on a lattice, A. Genz 1992, from memory.
/// </para>
/// </remarks>
public static class Robustness
{
    private const int Points = 509;

    // Its digits never line up with those of another prime's root.
    private static readonly double[] Roots = [.. ((int[])[2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37]).Select(prime => Math.Sqrt(prime))];

    /// <returns>From 0 to 1; null where no finding has a number to judge.</returns>
    public static double? Of(IReadOnlyList<Finding> findings)
    {
        if (findings.Any(finding => finding is { Verdict: Verdict.Clash, Value: null })) return 0;

        var judged = findings.Where(finding => finding is { LimitIsVerified: true, Because: not Because.UnverifiedLimit, Value: not null, Wanted: not null })
            .Select(finding => new Judged(finding.Value!, finding.Reaches ?? finding.Wanted!.Value)).ToList();
        if (judged.Count == 0) return null;
        if (judged.Any(one => one.Value.IsExact && !one.Wanted.Contains(one.Value.Value))) return 0;

        // The one that leaves the least first: what follows is then drawn where it matters.
        var uncertain = judged.Where(one => !one.Value.IsExact).OrderBy(one => one.Share).ToList();
        return Together([.. uncertain.Take(Roots.Length)]) * uncertain.Skip(Roots.Length).Aggregate(1.0, (share, one) => share * one.Share);
    }

    private static double Together(Judged[] all)
    {
        if (all.Length == 0) return 1;
        if (all.Length == 1) return all[0].Share;

        var root = Root(all);
        var drawn = new double[all.Length];
        var sum = 0.0;
        for (var point = 1; point <= Points; point++) sum += ShareAt(all, root, drawn, point);
        return sum / Points;
    }

    // Each value is drawn where the ones before it and its own window leave room; how much room there is makes the share.
    private static double ShareAt(Judged[] all, double[][] root, double[] drawn, int point)
    {
        var share = 1.0;
        for (var k = 0; k < all.Length && share > 0; k++)
        {
            var moved = 0.0;
            for (var m = 0; m < k; m++) moved += root[k][m] * drawn[m];
            var own = root[k][k];
            if (own == 0)
            {
                drawn[k] = 0;
                if (moved < all[k].Low || moved > all[k].High) share = 0;
                continue;
            }

            var (low, high) = (Normal.CDF(0, 1, (all[k].Low - moved) / own), Normal.CDF(0, 1, (all[k].High - moved) / own));
            share *= Math.Max(0, high - low);
            var at = Math.Abs((2 * (point * Roots[k] % 1)) - 1);
            drawn[k] = Normal.InvCDF(0, 1, Math.Clamp(low + (at * (high - low)), 1e-15, 1 - 1e-15));
        }

        return share;
    }

    // The lower root of the correlations; nothing of its own is left to a value that the ones before it decide.
    private static double[][] Root(Judged[] all)
    {
        const double Decided = 1e-9;
        var root = new double[all.Length][];
        for (var k = 0; k < all.Length; k++)
        {
            root[k] = new double[k + 1];
            var left = 1.0;
            for (var m = 0; m < k; m++)
            {
                var shared = all[k].CorrelationWith(all[m]);
                for (var before = 0; before < m; before++) shared -= root[k][before] * root[m][before];
                root[k][m] = root[m][m] == 0 ? 0 : shared / root[m][m];
                left -= root[k][m] * root[k][m];
            }

            root[k][k] = left > Decided ? Math.Sqrt(left) : 0;
        }

        return root;
    }

    private sealed record Judged(Measured Value, Window Wanted)
    {
        /// <summary>The window's ends, in standard deviations from the value; asked at every point.</summary>
        public double Low { get; } = (Wanted.Low - Value.Value) / Deviation(Value);

        public double High { get; } = (Wanted.High - Value.Value) / Deviation(Value);

        /// <summary>Of this one alone.</summary>
        public double Share => Normal.CDF(0, 1, High) - Normal.CDF(0, 1, Low);

        private static double Deviation(Measured value) => value.Expanded95 / StudentT.Normal975;

        public double CorrelationWith(Judged other) => Measured.Covariance(Value, other.Value) / (Value.StandardUncertainty * other.Value.StandardUncertainty);
    }
}
