using System.Numerics;

namespace BuildLog.Gearing.Options;

/// <summary>What is left of the combinations that one core has judged: the front of those that are sure, and those too near a limit to tell.</summary>
/// <remarks>
/// An unsure one is scored as if it fitted, so whatever dominates that score dominates it. It waits until every sure one is known: of many thousands that an early
/// front lets pass, a whole one leaves a few, and only for those is the slow way gone.
/// </remarks>
internal sealed class Sieve : ILanesTaken
{
    private const int Champions = 6;
    private const int FirstLook = 4096;

    private readonly List<(OptionScore AtBest, Combination At)> unsure = [];
    private int nextLook = FirstLook;

    public Front<Combination> Sure { get; } = new();

    /// <inheritdoc/>
    public void Take(in Lanes lanes, Combination first, int count)
    {
        var kept = Vector.OnesComplement(Dominated(lanes));
        if (kept == Vector<long>.Zero) return;

        for (var lane = 0; lane < count; lane++)
        {
            if (kept[lane] == 0) continue;
            var at = first with { Tyres = first.Tyres + lane };
            if (lanes.Unsure[lane] == 0) Sure.Add(lanes[lane], at);
            else AddUnsure(lanes[lane], at);
        }
    }

    private Vector<long> Dominated(in Lanes lanes)
    {
        var dominated = Vector<long>.Zero;
        for (var k = 0; k < Math.Min(Champions, Sure.Members.Count) && dominated != Vector<long>.AllBitsSet; k++) dominated |= lanes.DominatedBy(Sure.Members[k].Score);
        return dominated;
    }

    /// <param name="atBest">Its score if it fitted.</param>
    /// <param name="at">Which one.</param>
    public void AddUnsure(in OptionScore atBest, Combination at)
    {
        if (Sure.Beats(atBest)) return;

        unsure.Add((atBest, at));
        if (unsure.Count < nextLook) return;

        unsure.RemoveAll(each => Sure.Beats(each.AtBest));
        nextLook = Math.Max(FirstLook, 2 * unsure.Count);
    }

    /// <summary>Takes over what another core was left with.</summary>
    public void Add(Sieve other)
    {
        foreach (var (score, what) in other.Sure.Members) Sure.Add(score, what);
        unsure.AddRange(other.unsure);
    }

    /// <summary>The front with the unsure ones settled, the most promising first.</summary>
    /// <param name="ask">Scores one the slow way.</param>
    /// <param name="cancel">Ends it.</param>
    public Front<Combination> Settled(Func<Combination, OptionScore> ask, CancellationToken cancel)
    {
        foreach (var (atBest, at) in unsure.OrderBy(each => each.AtBest))
        {
            cancel.ThrowIfCancellationRequested();
            if (!Sure.Beats(atBest)) Sure.Add(ask(at) with { Distance = atBest.Distance }, at);
        }

        return Sure;
    }
}
