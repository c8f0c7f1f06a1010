using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using Xunit;

namespace BuildLog.Gearing.Tests.Options;

/// <summary>The oracle of the search: every combination through the public checks one by one, and every pair of options compared.</summary>
internal static class PlainLoops
{
    public static void EndAlike(Driveline car, OwnersGoals goals, CandidateParts parts, int cores = 2)
    {
        var search = new SeparableSearch(car, goals, parts);
        var plain = All(parts).Select(search.Plain).ToList();
        var expected = plain.Where(score => !plain.Any(other => other.Dominates(score)));

        Assert.Equal(Words(expected), Words(search.Run(null, cores, CancellationToken.None).Members.Select(member => member.Score)));
    }

    /// <summary>Nothing clashes less, and of that nothing is open or to watch less, than the best that is answered, or than what is in place.</summary>
    public static void HaveNothingBetter(Driveline car, OwnersGoals goals, CandidateParts parts)
    {
        var plain = All(parts).Select(at => VerdictCounts.Of(AllChecks.Look(car.With(parts, at), goals))).Min(Verdicts);
        var answer = OptionSearch.Run(car, goals, parts);
        var answered = answer.Options.Select(option => VerdictCounts.Of(option.Findings)).Append(VerdictCounts.Of(AllChecks.Look(car, goals))).Min(Verdicts);

        Assert.Equal(0, answer.MightBeBetter);
        Assert.Equal(plain, answered);
    }

    private static (int Clash, int Open, int Watch) Verdicts(VerdictCounts counts) => (counts.Clash, counts.Open, counts.Watch);

    private static IEnumerable<Combination> All(CandidateParts parts)
        => from box in Enumerable.Range(0, parts.Gearboxes.Count)
           from overdrive in Enumerable.Range(0, parts.Overdrives.Count)
           from axle in Enumerable.Range(0, parts.Axles.Count)
           from tyres in Enumerable.Range(0, parts.Tyres.Count)
           select new Combination(box, overdrive, axle, tyres);

    // Distances of the two routes differ in the last bits.
    private static List<string> Words(IEnumerable<OptionScore> scores)
        => [.. scores.Select(score => FormattableString.Invariant($"{score.Clash} {score.Open} {score.Watch} {score.Cost} {score.Changes} {score.Distance:0.00000000}")).Distinct().Order(StringComparer.Ordinal)];
}
