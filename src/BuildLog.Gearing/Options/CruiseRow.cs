using System.Numerics;
using System.Runtime.InteropServices;
using BuildLog.Gearing.Goals;

namespace BuildLog.Gearing.Options;

/// <summary>One goal for one gearbox, overdrive and axle: engine turns a second for each tyre turn a metre; or what a speedometer shows for each.</summary>
/// <param name="Pace">v · i, rev/s times metres; of a speedometer its share of the truth times metres.</param>
/// <param name="Spread">Its relative variance.</param>
/// <param name="Wanted">Engine speeds that will do.</param>
/// <param name="Target">The engine speed that distance is counted from; infinite where there is no distance.</param>
/// <param name="Below">One where an engine speed below the target is a distance too, else zero.</param>
internal readonly record struct CruiseTerm(double Pace, double Spread, Window Wanted, double Target, double Below);

/// <summary>Judges one gearbox, overdrive and axle with all tyres.</summary>
/// <remarks>
/// <code>n = pace/C;   n ± t n √(spread + spread of C)</code>
/// <para>
/// The effective degrees of freedom are at least the least of any input's, so t lies between the normal factor and that input's. Where the two disagree,
/// or an edge is within rounding, the lane is unsure: it counts as if it fitted, and is handed to the public checks unless even so it is beaten.
/// </para>
/// </remarks>
internal readonly ref struct CruiseRow(TyreColumns tyres, ReadOnlySpan<CruiseTerm> terms, OptionScore row, double leastFactor, double mostFactor, bool isUnlooked = false, PullRow pull = default)
{
    private const double Rounding = 1e-12;

    private readonly ReadOnlySpan<CruiseTerm> terms = terms;
    private readonly PullRow pull = pull;

    /// <summary>The scores of one vector of tyres from <paramref name="start"/> on.</summary>
    public Lanes Judge(int start)
    {
        var (clash, watch) = (At(tyres.Clash, start) + new Vector<double>(row.Clash), At(tyres.Watch, start) + new Vector<double>(row.Watch));
        var (turns, spread) = (At(tyres.Turns, start), At(tyres.Spread, start));
        var distance = Vector<double>.Zero;
        var unsure = Vector<long>.Zero;
        foreach (ref readonly var term in terms)
        {
            var n = turns * term.Pace;
            var share = Vector.SquareRoot(spread + new Vector<double>(term.Spread));
            var least = n * ((share * leastFactor) - new Vector<double>(Rounding));
            var most = n * ((share * mostFactor) + new Vector<double>(Rounding));
            var (low, high) = (new Vector<double>(term.Wanted.Low), new Vector<double>(term.Wanted.High));

            var misses = Misses(n, most, low, high);
            var fits = Within(n, most, low, high);
            var either = (misses ^ Misses(n, least, low, high)) | (fits ^ Within(n, least, low, high));
            unsure |= either;
            clash += Vector.ConditionalSelect(Vector.AndNot(misses, either), Vector<double>.One, Vector<double>.Zero);
            watch += Vector.ConditionalSelect(misses | fits | either, Vector<double>.Zero, Vector<double>.One);

            var over = (n / new Vector<double>(term.Target)) - Vector<double>.One;
            distance = Vector.Max(distance, Vector.Max(over, -over * term.Below));
        }

        var open = At(isUnlooked ? tyres.OpenLooksApart : tyres.Open, start) + new Vector<double>(row.Open);
        pull.AddTo(At(tyres.PullSteps, start), ref clash, ref open, ref watch, ref unsure);
        return new(
            clash, open, watch, At(tyres.Cost, start) + new Vector<double>(row.Cost),
            At(tyres.Changes, start) + new Vector<double>(row.Changes), Vector.Max(distance, new Vector<double>(row.Distance)), unsure);
    }

    private static Vector<long> Misses(Vector<double> n, Vector<double> half, Vector<double> low, Vector<double> high)
        => Vector.LessThan(n + half, low) | Vector.GreaterThan(n - half, high);

    private static Vector<long> Within(Vector<double> n, Vector<double> half, Vector<double> low, Vector<double> high)
        => Vector.LessThanOrEqual(low, n - half) & Vector.LessThanOrEqual(n + half, high);

    private static Vector<double> At(double[] column, int start) => Vector.LoadUnsafe(ref MemoryMarshal.GetArrayDataReference(column), (nuint)start);
}

/// <summary>The scores of as many options as a vector has lanes.</summary>
internal readonly record struct Lanes(
    Vector<double> Clash, Vector<double> Open, Vector<double> Watch, Vector<double> Cost, Vector<double> Changes, Vector<double> Distance, Vector<long> Unsure)
{
    /// <summary><see cref="OptionScore.Verdicts"/>.</summary>
    public Vector<double> Verdicts => (((Clash * 1000) + Open) * 1000) + Watch;

    public OptionScore this[int lane] => new(Clash[lane], Open[lane], Watch[lane], Cost[lane], Changes[lane], Distance[lane]);

    /// <summary>The same with one lane unsure, whatever its speedometer is.</summary>
    public Lanes AtBest(int lane)
    {
        var one = Vector.Equals(Vector<double>.Indices, new Vector<double>(lane));
        Vector<double> Less(Vector<double> counts) => Vector.ConditionalSelect(one, Vector.Max(Vector<double>.Zero, counts - Vector<double>.One), counts);
        return this with { Clash = Less(Clash), Open = Less(Open), Watch = Less(Watch), Unsure = Unsure | one };
    }

    /// <summary>Which lanes this score dominates; a lane equal in all is not one of them.</summary>
    public Vector<long> DominatedBy(in OptionScore score)
    {
        var noBetter = NoBetter(Clash, score.Clash) & NoBetter(Open, score.Open) & NoBetter(Watch, score.Watch)
            & NoBetter(Cost, score.Cost) & NoBetter(Changes, score.Changes) & NoBetter(Distance, score.Distance);
        var worse = Worse(Clash, score.Clash) | Worse(Open, score.Open) | Worse(Watch, score.Watch)
            | Worse(Cost, score.Cost) | Worse(Changes, score.Changes) | Worse(Distance, score.Distance);
        return noBetter & worse;
    }

    private static Vector<long> NoBetter(Vector<double> lanes, double score) => Vector.GreaterThanOrEqual(lanes, new Vector<double>(score));

    private static Vector<long> Worse(Vector<double> lanes, double score) => Vector.GreaterThan(lanes, new Vector<double>(score));
}
