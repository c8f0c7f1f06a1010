namespace BuildLog.Gearing.Options;

/// <summary>Each candidate alone, beside what is in place, judged by every check; and what follows for the search of combinations.</summary>
/// <remarks>
/// The separable checks do not see that wheels do not go on, so by cost and distance such a set would throw out gears that do, and then clash itself. So the
/// combinations are gone through of all parts, of those that alone bring no clash of which the separable checks know nothing, and of those that bring nothing worse at
/// all. What alone does not go on may go on beside another part, so it stays in the first round.
/// </remarks>
internal sealed class PartsAlone
{
    private static readonly HashSet<string> Separable = [.. SeparableChecks.All.Select(check => check.Id)];

    private readonly CandidateParts parts;
    private readonly Combination inPlace;
    private readonly Dictionary<Combination, (OptionScore Score, VerdictCounts Unseen)> judged;
    private readonly VerdictCounts now;

    /// <param name="parts">What is searched.</param>
    /// <param name="judge">Judges one combination by every check.</param>
    /// <param name="cores">On how many cores.</param>
    /// <param name="cancel">Ends it.</param>
    public PartsAlone(CandidateParts parts, Func<Combination, Option> judge, int cores, CancellationToken cancel)
    {
        this.parts = parts;
        inPlace = Combination.InPlace(parts);
        var each = Enumerable.Range(0, parts.Gearboxes.Count).Select(k => inPlace with { Gearbox = k })
            .Concat(Enumerable.Range(0, parts.Overdrives.Count).Select(k => inPlace with { Overdrive = k }))
            .Concat(Enumerable.Range(0, parts.Axles.Count).Select(k => inPlace with { Axle = k }))
            .Concat(Enumerable.Range(0, parts.Tyres.Count).Select(k => inPlace with { Tyres = k }))
            .Distinct();
        judged = each.AsParallel().WithDegreeOfParallelism(cores).WithCancellation(cancel).Select(at => (at, Verdict: Verdict(judge(at)))).ToDictionary(one => one.at, one => one.Verdict);
        now = judged[inPlace].Unseen;
    }

    /// <summary>What is in place, and every way out of one part.</summary>
    public IEnumerable<(Combination At, OptionScore Score)> Scores => judged.Select(one => (one.Key, one.Value.Score));

    /// <summary>What is in place.</summary>
    public OptionScore AsItIs => judged[inPlace].Score;

    /// <summary>The best way out by each part alone.</summary>
    public IEnumerable<(Combination At, OptionScore Score)> BestOfEachPart
        => Scores.Where(one => one.At != inPlace)
            .GroupBy(one => (one.At.Gearbox != inPlace.Gearbox, one.At.Overdrive != inPlace.Overdrive, one.At.Axle != inPlace.Axle))
            .Select(part => part.OrderBy(one => one.Score).ThenBy(one => one.At).First());

    /// <summary>What to combine, round by round; none twice.</summary>
    public IReadOnlyList<SearchRound> Rounds => [.. ((IEnumerable<SearchRound>)[Of(_ => true), Of(BringsNoClash), Of(BringsNothing)]).DistinctBy(round => round.Parts.Count)];

    private bool BringsNoClash(VerdictCounts counts) => counts.Clash <= now.Clash;

    private bool BringsNothing(VerdictCounts counts) => BringsNoClash(counts) && counts.Open <= now.Open && counts.Watch <= now.Watch;

    // No more is kept of one: a thousand drivelines with all their findings are a burden.
    private static (OptionScore Score, VerdictCounts Unseen) Verdict(Option option)
        => (option.Score, VerdictCounts.Of(option.Findings.Where(finding => !Separable.Contains(finding.Check))));

    private SearchRound Of(Func<VerdictCounts, bool> isIn)
    {
        int[] Kept(int count, Func<int, Combination> alone) => [.. Enumerable.Range(0, count).Where(k => alone(k) == inPlace || isIn(judged[alone(k)].Unseen))];
        return new(
            parts,
            Kept(parts.Gearboxes.Count, k => inPlace with { Gearbox = k }), Kept(parts.Overdrives.Count, k => inPlace with { Overdrive = k }),
            Kept(parts.Axles.Count, k => inPlace with { Axle = k }), Kept(parts.Tyres.Count, k => inPlace with { Tyres = k }));
    }
}

/// <summary>Some of the candidates, by their places in the whole lists.</summary>
internal sealed class SearchRound(CandidateParts all, int[] gearboxes, int[] overdrives, int[] axles, int[] tyres)
{
    /// <summary>The candidates themselves; their costs in the currency of all.</summary>
    public CandidateParts Parts { get; } = new([.. gearboxes.Select(k => all.Gearboxes[k])], [.. overdrives.Select(k => all.Overdrives[k])], [.. axles.Select(k => all.Axles[k])], [.. tyres.Select(k => all.Tyres[k])])
    {
        Currency = all.Currency,
    };

    /// <summary>What comes with each of these.</summary>
    public Brought Brings(Brought all) => all with
    {
        Gearboxes = [.. gearboxes.Select(k => all.Gearboxes[k])],
        Overdrives = [.. overdrives.Select(k => all.Overdrives[k])],
        Axles = [.. axles.Select(k => all.Axles[k])],
        Tyres = [.. tyres.Select(k => all.Tyres[k])],
    };

    /// <summary>A combination of these as one of all.</summary>
    public Combination Of(Combination at) => new(gearboxes[at.Gearbox], overdrives[at.Overdrive], axles[at.Axle], tyres[at.Tyres]);
}
