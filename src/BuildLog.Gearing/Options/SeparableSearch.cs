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
    private const int Champions = 6;

    // Curves are made first; with an engine and wishes of pull they take about as long as all judging.
    private const double MadeReady = 0.5;

    private readonly Driveline driveline;
    private readonly OwnersGoals goals;
    private readonly CandidateParts parts;
    private readonly TyreColumns tyres;
    private readonly CruiseTerm?[][] boxes;
    private readonly CruiseTerm? dial;
    private readonly VerdictCounts[][] low;
    private readonly PullRange range;
    private readonly PullCurve[] pulls;
    private readonly double mostFactor;
    private readonly string? currency;

    /// <param name="driveline">What stays.</param>
    /// <param name="goals">The wishes.</param>
    /// <param name="parts">Axles and tyres of known numbers.</param>
    /// <param name="cores">On how many cores it is made ready.</param>
    /// <param name="progress">The share done, now and then.</param>
    /// <param name="cancel">Ends that.</param>
    public SeparableSearch(
        Driveline driveline, OwnersGoals goals, CandidateParts parts, int cores = 1, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        (this.driveline, this.goals, this.parts, currency) = (driveline, goals, parts, parts.Currency);
        range = new(parts, driveline.DrivingPosition);
        tyres = new(driveline, goals, parts, Vector<double>.Count, range.PerLog);
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
        var done = 0L;
        Parallel.For(
            0L, Rows, new ParallelOptions { MaxDegreeOfParallelism = cores, CancellationToken = cancel },
            () => new Sieve(),
            (row, _, sieve) =>
            {
                Judge((int)(row / parts.Axles.Count), (int)(row % parts.Axles.Count), sieve);
                var count = Interlocked.Increment(ref done);
                if (count % 256 == 0) progress?.Report(MadeReady + ((1 - MadeReady) * count / Rows));
                return sieve;
            },
            sieve =>
            {
                lock (all) all.Add(sieve);
            });
        return all.Settled(Plain, cancel);
    }

    /// <summary>What the separable checks, asked one by one, say of a combination.</summary>
    public OptionScore Plain(Combination at)
    {
        var whole = driveline.With(parts, at);
        var counts = VerdictCounts.Of(SeparableChecks.Look(whole, goals));
        return Score(at, counts, SeparableChecks.Distance(whole, goals));
    }

    private OptionScore Score(Combination at, VerdictCounts counts, double distance) => OptionScore.Of(parts, currency, at, counts, distance);

    private void Judge(int box, int axle, Sieve sieve)
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
        var row = new OptionScore(
            low[gearbox][axle].Clash + clash, open + unsaid, low[gearbox][axle].Watch + watch,
            parts.Gearboxes[gearbox].Cost(currency) + parts.Overdrives[overdrive].Cost(currency) + parts.Axles[axle].Cost(currency),
            parts.Gearboxes[gearbox].Changes + parts.Overdrives[overdrive].Changes + parts.Axles[axle].Changes,
            said < goals.Cruise.Count ? double.PositiveInfinity : 0);
        var judge = new CruiseRow(tyres, terms[..judged], row, StudentT.Normal975, mostFactor, throughout is null ? new PullRow(pull.Steps, place) : default);
        var asked = Driven(gearbox, axle);
        for (var start = 0; start < tyres.Count; start += Vector<double>.Count)
        {
            var lanes = judge.Judge(start);
            if (asked >= start && asked < start + Vector<double>.Count) sieve.AddUnsure(AtBest(lanes[asked - start]), new(gearbox, overdrive, axle, asked));
            var kept = Vector.OnesComplement(Dominated(lanes, sieve.Sure));
            if (kept == Vector<long>.Zero) continue;

            for (var lane = 0; lane < Vector<double>.Count && start + lane < tyres.Count; lane++)
            {
                if (kept[lane] == 0 || start + lane == asked) continue;
                var at = new Combination(gearbox, overdrive, axle, start + lane);
                if (lanes.Unsure[lane] == 0) sieve.Sure.Add(lanes[lane], at);
                else sieve.AddUnsure(lanes[lane], at);
            }
        }
    }

    private static Vector<long> Dominated(in Lanes lanes, Front<Combination> front)
    {
        var dominated = Vector<long>.Zero;
        for (var k = 0; k < Math.Min(Champions, front.Members.Count) && dominated != Vector<long>.AllBitsSet; k++) dominated |= lanes.DominatedBy(front.Members[k].Score);
        return dominated;
    }

    // By gearbox, then by axle.
    private VerdictCounts[][] Low()
        => [.. parts.Gearboxes.Select(box => parts.Axles.Select(axle =>
            goals.OverallLow is null ? default : VerdictCounts.Of(SeparableChecks.OverallLow.Look(driveline.With(box.Part, null, axle.Part, null), goals))).ToArray())];

    // A distance was driven with these parts: what it found counts there, not what the parts come to. Its place among the tyres; less than none where it was not.
    private int Driven(int gearbox, int axle)
        => driveline.Driven is not null && parts.Gearboxes[gearbox].IsInPlace && parts.Axles[axle].IsInPlace ? Enumerable.Range(0, parts.Tyres.Count).FirstOrDefault(k => parts.Tyres[k].IsInPlace, -1) : -1;

    // Whatever the speedometer is.
    private static OptionScore AtBest(in OptionScore score)
        => score with { Clash = Math.Max(0, score.Clash - 1), Open = Math.Max(0, score.Open - 1), Watch = Math.Max(0, score.Watch - 1) };

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
