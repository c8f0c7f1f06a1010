using System.Numerics;

namespace BuildLog.Gearing.Options;

/// <summary>Takes what a row of combinations comes to, vector by vector.</summary>
internal interface ILanesTaken
{
    /// <param name="lanes">Their scores; what is unsure as if it fitted.</param>
    /// <param name="first">The first of them; the others have the tyres that follow.</param>
    /// <param name="count">How many of the lanes are combinations.</param>
    void Take(in Lanes lanes, Combination first, int count);
}

/// <summary>The combinations that may yet have better verdicts than the best that is known: how many, and the most promising of them.</summary>
/// <param name="best">The verdicts of the best, <see cref="OptionScore.Verdicts"/>.</param>
/// <param name="isKnown">Which were judged by every check.</param>
/// <param name="most">How many are named.</param>
internal sealed class Shortlist(double best, Func<Combination, bool> isKnown, int most) : ILanesTaken
{
    private readonly List<(OptionScore AtBest, Combination At)> named = [];
    private (OptionScore AtBest, Combination At)? last;

    /// <summary>How many there are.</summary>
    public long Count { get; private set; }

    /// <summary>The most promising first.</summary>
    public IReadOnlyList<(OptionScore AtBest, Combination At)> Named
    {
        get
        {
            Trim();
            return named;
        }
    }

    /// <inheritdoc/>
    public void Take(in Lanes lanes, Combination first, int count)
    {
        var better = Vector.LessThan(lanes.Verdicts, new Vector<double>(best));
        if (better == Vector<long>.Zero) return;

        for (var lane = 0; lane < count; lane++)
        {
            if (better[lane] != 0 && first with { Tyres = first.Tyres + lane } is var at && !isKnown(at)) Add((lanes[lane], at));
        }
    }

    /// <summary>Takes over what another core came to.</summary>
    public void Add(Shortlist other)
    {
        Count += other.Count - other.named.Count;
        foreach (var each in other.named) Add(each);
    }

    private void Add((OptionScore AtBest, Combination At) each)
    {
        Count++;
        if (last is { } worst && each.CompareTo(worst) > 0) return;

        named.Add(each);
        if (named.Count >= 2 * most) Trim();
    }

    private void Trim()
    {
        named.Sort();
        if (named.Count <= most) return;

        named.RemoveRange(most, named.Count - most);
        last = named[^1];
    }
}
