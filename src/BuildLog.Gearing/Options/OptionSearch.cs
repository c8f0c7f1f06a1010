using System.Diagnostics;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Options;

/// <summary>One way out, judged in full.</summary>
public sealed record Option(
    Candidate<Transmission> Gearbox, Candidate<Overdrive> Overdrive, Candidate<Axle> Axle, Candidate<TyreSet> Tyres, Driveline Driveline, OptionScore Score)
{
    /// <summary>What all checks say of it, the worst first.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>The engine speed at the first cruise goal, rev/s; null where it cannot be said.</summary>
    public Measured? CruiseEngineSpeed { get; init; }

    /// <summary>What is changed at the speedometer with it, so that it reads right; null for nothing.</summary>
    public DialChange? Dial { get; init; }

    /// <summary>In what share of the uncertainty it still fits.</summary>
    public double? Robustness => Options.Robustness.Of(Findings);

    /// <summary>One of its parts lies outside what its own hunt was limited to.</summary>
    public bool IsOutsideTheHunt => this is { Gearbox.IsOutsideTheHunt: true } or { Overdrive.IsOutsideTheHunt: true } or { Axle.IsOutsideTheHunt: true } or { Tyres.IsOutsideTheHunt: true };

    /// <summary>One of its parts was taken off or noted as damaged, or is somebody else's: it comes after what uses sound parts.</summary>
    public bool IsDoubtful => this is { Gearbox.IsDoubtful: true } or { Overdrive.IsDoubtful: true } or { Axle.IsDoubtful: true } or { Tyres.IsDoubtful: true };

    /// <summary>It helps, but something clashes with it too: it comes after all that leaves no clash.</summary>
    public bool StillClashes => Score.Clash > 0;

    /// <summary>Nothing clashes for sure, and yet it rather misses than fits: it comes after what rather fits.</summary>
    public bool IsUnlikely => !StillClashes && Robustness < 0.5;

    /// <summary>How many parts are not those in place.</summary>
    public int Changes => (int)Score.Changes;

    /// <summary>What its parts cost in the smallest coin, the speedometer's gear and any mending apart; null where a price is not known.</summary>
    public long? PartsCostMinor => double.IsFinite(Score.Cost) ? (long)Score.Cost : null;

    /// <summary>The whole cost in the smallest coin; null where a price, or what mending takes, is not known.</summary>
    public long? CostMinor => Dial is null && !IsDoubtful ? PartsCostMinor : null;
}

/// <summary>What a search came to.</summary>
/// <param name="Options">Best first; what is in place is not one of them.</param>
/// <param name="Tried">Combinations judged by the separable checks.</param>
/// <param name="JudgedFully">Options judged by every check.</param>
/// <param name="Exclusions">What was thrown out before it was combined.</param>
/// <param name="Elapsed">How long it took.</param>
public sealed record SearchAnswer(IReadOnlyList<Option> Options, long Tried, int JudgedFully, IReadOnlyList<Exclusion> Exclusions, TimeSpan Elapsed)
{
    /// <summary>
    /// Combinations of which not every check was asked, and which might have better verdicts than any here; zero where surely nothing clashes less, and of that nothing is open or to
    /// watch less.
    /// </summary>
    public long MightBeBetter { get; init; }

    /// <summary>Combinations thrown out before any was tried.</summary>
    public long ThrownOut => Exclusions.Sum(exclusion => exclusion.Combinations);

    /// <summary>The options as they are told: what leaves no clash, then what only helps; each by number of parts changed, the fewest first.</summary>
    public IEnumerable<IGrouping<(bool StillClashes, int Changes), Option>> Groups => Options.GroupBy(option => (option.StillClashes, option.Changes)).OrderBy(group => group.Key);
}

/// <summary>Searches gearbox × overdrive × axle × tyres for what would work.</summary>
/// <remarks>
/// <para>
/// Every combination is judged by <see cref="SeparableChecks"/>; the survivors of their front, and every part alone (<see cref="PartsAlone"/>), by
/// <see cref="AllChecks"/>, and ranked anew. The best way out by each part alone is told too where it clashes no more than any other, and something is better with it than as it is: that other tyres dominate other
/// gears is no answer for one who has the gears.
/// </para>
/// <para>
/// A speedometer is set right with each of them (<see cref="DialChange"/>), and alone. What still clashes comes last; of what does alike, what its own hunt was
/// not meant for, what rather misses, and what has to be inspected or mended first, each after the rest.
/// </para>
/// <para>
/// Then every check is asked of what may yet have better verdicts than the best: what the separable checks and <see cref="OwnFindings"/> come to is the least. Where that is
/// too much, the answer says of how many it was not asked.
/// </para>
/// </remarks>
public static class OptionSearch
{
    // At half a millisecond each a twentieth of the second that an answer may take; beyond that it says that there are more.
    private const int MostSettled = 96;

    // The same on any number of cores, so that they end alike.
    private const int SettledAtOnce = 16;

    /// <param name="driveline">What is fitted.</param>
    /// <param name="goals">The wishes.</param>
    /// <param name="parts">What could be fitted, with what is.</param>
    /// <param name="progress">The share done, now and then.</param>
    /// <param name="cores">On how many cores; all for none named.</param>
    /// <param name="cancel">Ends the search.</param>
    public static SearchAnswer Run(
        Driveline driveline, OwnersGoals goals, CandidateParts parts, IProgress<double>? progress = null, int? cores = null, CancellationToken cancel = default)
    {
        var watch = Stopwatch.StartNew();
        var (left, exclusions) = Sorting.Of(driveline, goals, parts with { Axles = [.. parts.Axles.Select(axle => axle with { Beside = BothAxles.Alike(driveline, axle.Part) })] });
        var most = cores ?? Environment.ProcessorCount;
        var currency = left.Currency;
        var inPlace = Combination.InPlace(left);

        // A gear on the cable sets it right beside any of them, so it keeps none from being combined.
        var combined = DialChange.IsPossible(driveline) ? driveline.Without(Position.Speedometer) : driveline;
        Option Full(Combination at) => Judged(driveline, goals, left, currency, at, withDial: at != inPlace);
        var own = new OwnFindings(combined, goals, left);
        Option Heard(Combination at)
        {
            var option = Full(at);
            own.Hear(at, option.Findings);
            return option;
        }

        var alone = new PartsAlone(left, Heard, most, cancel);
        var scores = alone.Scores.ToDictionary(one => one.At, one => one.Score);
        var rounds = alone.Rounds;
        var brought = own.Sum;
        SeparableSearch? whole = null;
        for (var k = 0; k < rounds.Count; k++)
        {
            var share = progress is null ? null : new ShareOf(progress, k, rounds.Count);
            var search = new SeparableSearch(combined, goals, rounds[k].Parts, rounds[k].Brings(brought), most, share, cancel);
            whole ??= search;
            foreach (var (_, at) in search.Run(share, most, cancel).Members)
            {
                cancel.ThrowIfCancellationRequested();
                if (rounds[k].Of(at) is var one && !scores.ContainsKey(one)) scores.Add(one, Full(one).Score);
            }
        }

        Option[] dial = Judged(driveline, goals, left, currency, inPlace, withDial: true) is { Dial: not null } alike ? [alike] : [];
        var best = scores.Values.Concat(dial.Select(one => one.Score)).Min(score => score.Verdicts);
        var unsettled = Settle(whole!, scores, best, at => Full(at).Score, most, cancel);
        var front = new Front<Combination>();
        foreach (var (at, score) in scores) front.Add(score, at);
        bool IsWorth(OptionScore score) => !dial.Any(one => one.Score.Dominates(score));
        var cured = front.Members.Select(member => member.Score.Clash).Concat(dial.Select(one => one.Score.Clash)).Min();
        var options = alone.BestOfEachPart.Where(one => one.Score.Clash <= cured && !alone.AsItIs.Dominates(one.Score)).Union(front.Members.Select(member => (At: member.What, member.Score)))
            .Where(one => IsWorth(one.Score)).OrderBy(one => one.At).Select(one => Full(one.At)).Concat(dial.Where(one => !front.Beats(one.Score)));

        // Where less clashes as it is, what clashes more is no way out.
        var asItIs = alone.AsItIs.Clash;
        return new(
            [
                .. options.Where(option => option.Changes > 0 && option.Score.Clash <= asItIs)
                    .OrderBy(option => option.StillClashes).ThenBy(option => option.IsOutsideTheHunt).ThenBy(option => option.IsUnlikely).ThenBy(option => option.IsDoubtful).ThenBy(option => option.Score),
            ],
            left.Count, scores.Count + dial.Length, exclusions, watch.Elapsed)
        {
            MightBeBetter = unsettled,
        };
    }

    // Asks every check of what may have better verdicts than the best, the most promising first, until nothing has; what is left then.
    private static long Settle(
        SeparableSearch search, Dictionary<Combination, OptionScore> scores, double best, Func<Combination, OptionScore> ask, int cores, CancellationToken cancel)
    {
        for (var asked = 0; ;)
        {
            var may = search.BetterThan(best, scores.ContainsKey, Math.Max(1, MostSettled - asked), cores, cancel);
            if (may.Count == 0 || asked >= MostSettled) return may.Count;

            foreach (var some in may.Named.Chunk(SettledAtOnce))
            {
                if (some[0].AtBest.Verdicts >= best) break;

                foreach (var (at, score) in some.AsParallel().WithDegreeOfParallelism(cores).WithCancellation(cancel).Select(each => (each.At, ask(each.At))).ToList())
                {
                    scores.Add(at, score);
                    best = Math.Min(best, score.Verdicts);
                    asked++;
                }
            }
        }
    }

    private static Option Judged(Driveline driveline, OwnersGoals goals, CandidateParts parts, string? currency, Combination at, bool withDial)
    {
        var whole = driveline.With(parts, at);
        var dial = withDial ? DialChange.For(whole) : null;
        if (dial is not null) whole = dial.On(whole);
        var findings = AllChecks.Look(whole, goals);
        var score = OptionScore.Of(parts, currency, at, VerdictCounts.Of(findings), SeparableChecks.Distance(whole, goals));
        return new(
            parts.Gearboxes[at.Gearbox], parts.Overdrives[at.Overdrive], parts.Axles[at.Axle], parts.Tyres[at.Tyres], whole,
            dial is null ? score : score with { Changes = score.Changes + 1 })
        {
            Dial = dial,
            Findings = findings,
            CruiseEngineSpeed = goals.Cruise is [var first, ..] ? CruiseCheck.EngineSpeed(whole, first) : null,
        };
    }

    // One round's part of the whole.
    private sealed class ShareOf(IProgress<double> whole, int round, int rounds) : IProgress<double>
    {
        public void Report(double value) => whole.Report((round + value) / rounds);
    }
}
