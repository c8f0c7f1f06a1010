using System.Numerics;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Speedometers;

namespace BuildLog.Gearing.Options;

/// <summary>The front of every combination, by the separable checks alone.</summary>
/// <remarks>
/// One row is a gearbox, an overdrive and an axle with all tyres; rows are shared out over the cores. Nothing is allocated while a row is judged; the few
/// options that no kept one dominates leave the vectors. Those among them that are too near a limit to tell wait until all others are known
/// (<see cref="Sieve"/>): few are left then, and those are asked check by check.
/// </remarks>
internal sealed class SeparableSearch
{
    // Curves are made first; with an engine and wishes of pull they take about as long as all judging.
    private const double MadeReady = 0.5;

    private readonly Driveline driveline;
    private readonly OwnersGoals goals;
    private readonly CandidateParts parts;
    private readonly Brought brought;
    private readonly TyreColumns tyres;
    private readonly CruiseTerm?[][] boxes;
    private readonly CruiseTerm? dial;
    private readonly VerdictCounts[] steps;
    private readonly VerdictCounts[][] low;
    private readonly PullRange range;
    private readonly PullCurve[] pulls;
    private readonly double mostFactor;
    private readonly string? currency;

    /// <param name="driveline">What stays.</param>
    /// <param name="goals">The wishes.</param>
    /// <param name="parts">Axles and tyres of known numbers.</param>
    /// <param name="brought">What comes with each part; nothing where it is not given.</param>
    /// <param name="cores">On how many cores it is made ready.</param>
    /// <param name="progress">The share done, now and then.</param>
    /// <param name="cancel">Ends that.</param>
    public SeparableSearch(
        Driveline driveline, OwnersGoals goals, CandidateParts parts, Brought? brought = null, int cores = 1, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        this.brought = brought ?? Brought.Nothing(parts);
        (this.driveline, this.goals, this.parts, currency) = (driveline, goals, parts, parts.Currency);
        range = new(parts, driveline.DrivingPosition);
        tyres = new(driveline, goals, parts, Vector<double>.Count, range.PerLog, this.brought.Tyres);
        var freedom = tyres.LeastFreedom;
        boxes = new CruiseTerm?[parts.Gearboxes.Count * parts.Overdrives.Count][];
        for (var k = 0; k < boxes.Length; k++)
        {
            var bare = Bare(k);
            boxes[k] = [.. goals.Cruise.Select(goal => Term(CruiseCheck.EngineSpeed(bare, goal), goal, ref freedom))];
        }

        dial = Dial(ref freedom);
        foreach (var axle in parts.Axles) freedom = Math.Min(freedom, axle.Part!.Ratio!.Value.DegreesOfFreedom);
        mostFactor = StudentT.Factor95(freedom);
        steps = [.. Enumerable.Range(0, boxes.Length).Select(box => VerdictCounts.Of(SeparableChecks.GearSteps.Look(Bare(box), goals)))];
        low = Low();
        pulls = new PullCurve[boxes.Length];
        var made = 0;
        Parallel.For(
            0, boxes.Length, new ParallelOptions { MaxDegreeOfParallelism = cores, CancellationToken = cancel },
            box =>
            {
                pulls[box] = PullCurve.Of(Bare(box), goals, range);
                progress?.Report(MadeReady * Interlocked.Increment(ref made) / boxes.Length);
            });
    }

    public long Rows => (long)boxes.Length * parts.Axles.Count;

    public Front<Combination> Run(IProgress<double>? progress, int cores, CancellationToken cancel)
    {
        var all = new Sieve();
        Judge(() => new Sieve(), all.Add, progress, cores, cancel);
        return all.Settled(Plain, cancel);
    }

    /// <summary>What may yet be better than the best verdicts that are known.</summary>
    public Shortlist BetterThan(double best, Func<Combination, bool> isKnown, int most, int cores, CancellationToken cancel)
    {
        var all = new Shortlist(best, isKnown, most);
        Judge(() => new Shortlist(best, isKnown, most), all.Add, null, cores, cancel);
        return all;
    }

    /// <summary>What the separable checks, asked one by one, say of a combination, with what its parts bring.</summary>
    public OptionScore Plain(Combination at)
    {
        var whole = driveline.With(parts, at);
        var counts = VerdictCounts.Of(SeparableChecks.Look(whole, goals)) + brought.Of(at);
        return OptionScore.Of(parts, currency, at, counts, SeparableChecks.Distance(whole, goals));
    }

    private void Judge<T>(Func<T> begin, Action<T> end, IProgress<double>? progress, int cores, CancellationToken cancel)
        where T : class, ILanesTaken
    {
        var ended = new Lock();
        var done = 0L;
        Parallel.For(
            0L, Rows, new ParallelOptions { MaxDegreeOfParallelism = cores, CancellationToken = cancel },
            begin,
            (row, _, taken) =>
            {
                Judge((int)(row / parts.Axles.Count), (int)(row % parts.Axles.Count), taken);
                var count = Interlocked.Increment(ref done);
                if (count % 256 == 0) progress?.Report(MadeReady + ((1 - MadeReady) * count / Rows));
                return taken;
            },
            taken =>
            {
                lock (ended) end(taken);
            });
    }

    private void Judge(int box, int axle, ILanesTaken taken)
    {
        var (gearbox, overdrive) = (box / parts.Overdrives.Count, box % parts.Overdrives.Count);
        var ratio = parts.Axles[axle].Part!.Ratio!.Value;
        var axleSpread = ratio.RelativeUncertainty * ratio.RelativeUncertainty;
        Span<CruiseTerm> terms = stackalloc CruiseTerm[boxes[box].Length + 1];
        var said = 0;
        foreach (var known in boxes[box])
        {
            if (known is { } term) terms[said++] = term with { Pace = term.Pace * ratio.Value, Spread = term.Spread + axleSpread };
        }

        var judged = said;
        if (dial is { } driven) terms[judged++] = TurnsWithAxle ? driven with { Pace = driven.Pace * ratio.Value, Spread = driven.Spread + axleSpread } : driven;

        // A cruise that cannot be said is open, and so is the wish for one where there is none; and a speedometer of which too little is known.
        var open = low[gearbox][axle].Open + (goals.Cruise.Count == 0 ? 1 : goals.Cruise.Count - said) + (driveline.Speedometer is not null && dial is null ? 1 : 0);
        // Where all tyres leave the pull as it is, it belongs to the row.
        var (pull, place) = (pulls[box], range.StepOf(ratio.Value));
        var throughout = pull.Throughout(place + tyres.LeastPullSteps, place + tyres.MostPullSteps);
        var (clash, unsaid, watch, _) = throughout ?? default;
        var (own, isUnlooked) = brought.Row(gearbox, overdrive, axle);
        own += steps[box];
        var row = new OptionScore(
            low[gearbox][axle].Clash + own.Clash + clash, open + own.Open + unsaid + (isUnlooked ? 1 : 0), low[gearbox][axle].Watch + own.Watch + watch,
            parts.Gearboxes[gearbox].Cost(currency) + parts.Overdrives[overdrive].Cost(currency) + parts.Axles[axle].Cost(currency),
            parts.Gearboxes[gearbox].Changes + parts.Overdrives[overdrive].Changes + parts.Axles[axle].Changes,
            said < goals.Cruise.Count ? double.PositiveInfinity : 0);
        var judge = new CruiseRow(tyres, terms[..judged], row, StudentT.Normal975, mostFactor, isUnlooked, throughout is null ? new PullRow(pull.Steps, place) : default);
        var asked = Driven(gearbox, axle);
        for (var start = 0; start < tyres.Count; start += Vector<double>.Count)
        {
            var lanes = judge.Judge(start);
            if (asked >= start && asked < start + Vector<double>.Count) lanes = lanes.AtBest(asked - start);
            taken.Take(lanes, new(gearbox, overdrive, axle, start), Math.Min(Vector<double>.Count, tyres.Count - start));
        }
    }

    // By gearbox, then by axle.
    private VerdictCounts[][] Low()
        => [.. parts.Gearboxes.Select(box => parts.Axles.Select(axle =>
            goals.OverallLow is null ? default : VerdictCounts.Of(SeparableChecks.OverallLow.Look(driveline.With(box.Part, null, axle.Part, null), goals))).ToArray())];

    // A distance was driven with these parts: what it found counts there, not what the parts come to. Its place among the tyres; less than none where it was not.
    private int Driven(int gearbox, int axle)
        => driveline.Driven is not null && parts.Gearboxes[gearbox].IsInPlace && parts.Axles[axle].IsInPlace ? Enumerable.Range(0, parts.Tyres.Count).FirstOrDefault(k => parts.Tyres[k].IsInPlace, -1) : -1;

    private bool TurnsWithAxle => driveline.Speedometer?.Drive?.Pickup != Pickup.Wheel;

    // No gearbox or overdrive has a say in it: what it is driven by turns with the propshaft or a wheel. It is right or wrong, and nothing is nearer to a goal for it.
    private CruiseTerm? Dial(ref double freedom)
    {
        if (SpeedometerCheck.Computed(Bare(0))?.Share is not { } share) return null;

        freedom = Math.Min(freedom, share.DegreesOfFreedom);
        return new(share.Value, share.RelativeUncertainty * share.RelativeUncertainty, SpeedometerCheck.Lawful, double.PositiveInfinity, 0);
    }

    private Driveline Bare(int box)
        => driveline.With(parts.Gearboxes[box / parts.Overdrives.Count].Part, parts.Overdrives[box % parts.Overdrives.Count].Part, One, OneMetre);

    private static Axle One => new("", new(1, Source.Measured));

    private static TyreSet OneMetre => new("", new(1, Source.Measured), null);

    private static CruiseTerm? Term(Measured? pace, CruiseGoal goal, ref double freedom)
    {
        if (pace is null) return null;

        freedom = Math.Min(freedom, pace.DegreesOfFreedom);
        return new(pace.Value, pace.RelativeUncertainty * pace.RelativeUncertainty, goal.Wanted, goal.EngineSpeed.Value, double.IsFinite(goal.Wanted.Low) ? 1 : 0);
    }
}
