using System.Globalization;
using BuildLog.Gearing.Checks;

namespace BuildLog.Benchmarks.Coverage;

/// <summary><c>-- coverage 10000</c>: so many shops of which the truth is known, measured with the stated errors, and how often the program was right. No clock in it.</summary>
internal static class CoverageRun
{
    private const int Seed = 20_260_503;

    public static int Of(int shops)
    {
        var tally = CoverageTally.Of(shops, Seed);
        foreach (var (what, (held, all)) in tally.Intervals.OrderBy(group => group.Key, StringComparer.Ordinal))
            Say($"95 % interval of {what}: holds the truth in {Share(held, all)} of {all:N0}");

        Say($"first named: said {Mean(tally.Best)}, true {Share(tally.Best.True, tally.Best.All)}");
        Say($"not listed: said {Mean(tally.NotListed)}, true {Share(tally.NotListed.True, tally.NotListed.All)}");
        for (var bin = 0; bin < tally.Candidates.Count; bin++)
            Say($"candidates said at {bin * 10} to {(bin + 1) * 10} %: {tally.Candidates[bin].All:N0}, said {Mean(tally.Candidates[bin])}, true {Share(tally.Candidates[bin].True, tally.Candidates[bin].All)}");

        foreach (var verdict in (Verdict[])[Verdict.Fits, Verdict.Watch, Verdict.Clash])
        {
            var (inside, outside) = (tally.Verdicts.GetValueOrDefault((verdict, true)), tally.Verdicts.GetValueOrDefault((verdict, false)));
            Say($"verdict {verdict.InWords()}: {inside + outside:N0}, truly inside the goal {Share(inside, inside + outside)}");
        }

        return 0;
    }

    private static string Share(int part, int all) => all == 0 ? "none" : string.Create(CultureInfo.InvariantCulture, $"{100.0 * part / all:0.0} %");

    private static string Mean((int All, double Said, int True) bin) => bin.All == 0 ? "none" : string.Create(CultureInfo.InvariantCulture, $"{100 * bin.Said / bin.All:0.0} %");

    private static void Say(FormattableString line) => Console.WriteLine(FormattableString.Invariant(line));
}
