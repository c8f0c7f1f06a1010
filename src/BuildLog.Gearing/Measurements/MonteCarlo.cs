namespace BuildLog.Gearing.Measurements;

/// <summary>A value computed again and again from inputs that are drawn, each from its own distribution.</summary>
/// <remarks>
/// <code>batches of M = 10 000;   stop when 2 s(z̄) ≤ δ for z = mean, u, low end, high end;   s(z̄)² = Σ (z_h − z̄)²/(h (h − 1))</code>
/// <para>h batches so far; δ numerical tolerance, half a unit in the last figure of u that counts; the interval cuts 2.5 % off each side.</para>
/// <para>The inputs are those that a <see cref="Measured"/> remembers, its formula the operations that made it; a seed makes it repeatable.</para>
/// <para>Not for: what is not computed through <see cref="Measured"/>. A root that was found by search is sought anew for each draw.</para>
/// <para>Source: JCGM 101:2008, 7.9 (adaptive procedure), 7.9.2 (δ), 5.3.4 (shortest interval).</para>
/// </remarks>
public sealed class MonteCarlo
{
    private const int Batch = 10_000;
    private const int MostTrials = 1_000_000;
    private const double Tail = 0.025;

    /// <summary>Of a thousand ends that agree, three are called apart.</summary>
    private const double Sure = 3;

    private readonly double[] sorted;

    private MonteCarlo(double[] sorted, bool settled)
    {
        (this.sorted, Settled) = (sorted, settled);
        (Mean, StandardUncertainty) = Moments(sorted);
        Interval95 = Middle(sorted);
    }

    /// <summary>How often it was drawn.</summary>
    public int Trials => sorted.Length;

    /// <summary>False where the tolerance was not reached in a million trials.</summary>
    public bool Settled { get; }

    /// <summary>Mean of the draws.</summary>
    public double Mean { get; }

    /// <summary>Standard deviation of the draws.</summary>
    public double StandardUncertainty { get; }

    /// <summary>The interval with as many draws below it as above.</summary>
    public Interval Interval95 { get; }

    /// <summary>How far an end of <see cref="Interval95"/> may lie from where endless draws would put it.</summary>
    /// <remarks>The share of draws beyond the true end is binomial: s(rank) = √(p (1 − p) M), and the draws three of these to both sides hold it.</remarks>
    public double EndsWithin
    {
        get
        {
            var cut = (int)Math.Round(Tail * sorted.Length);
            var apart = (int)Math.Ceiling(Sure * Math.Sqrt(Tail * (1 - Tail) * sorted.Length));
            double Width(int rank) => (sorted[rank + apart] - sorted[rank - apart]) / 2;
            return Math.Max(Width(cut), Width(sorted.Length - 1 - cut));
        }
    }

    /// <summary>The shortest interval that holds 95 % of the draws; differs where the distribution is lopsided.</summary>
    public Interval Shortest95
    {
        get
        {
            var held = (int)Math.Round((1 - (2 * Tail)) * sorted.Length);
            var start = Enumerable.Range(0, sorted.Length - held).MinBy(k => sorted[k + held] - sorted[k]);
            return new(sorted[start], sorted[start + held]);
        }
    }

    /// <summary>Draws until the tolerance is reached; null where a draw leaves the formula's domain, such as the root of less than nothing.</summary>
    /// <param name="value">What to compute again.</param>
    /// <param name="seed">The same seed draws the same.</param>
    /// <param name="fineness">By how much finer than δ; five for a validation (JCGM 101:2008, 8.2).</param>
    public static MonteCarlo? Of(Measured value, int seed, double fineness = 1)
    {
        var (replay, random) = (Replay.Of(value), new Random(seed));
        var batches = new List<double[]>();
        var seen = new Seen();
        do
        {
            var batch = Drawn(replay, random, Batch);
            if (batch is null) return null;

            batches.Add(batch);
            seen.Add(batch);
        }
        while (!seen.Settled(fineness) && batches.Count * Batch < MostTrials);

        double[] all = [.. batches.SelectMany(batch => batch)];
        Array.Sort(all);
        return new(all, seen.Settled(fineness));
    }

    /// <summary>A fixed number of draws.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than ten thousand draws, or more than ten million.</exception>
    public static MonteCarlo? OfTrials(Measured value, int seed, int trials)
    {
        if (trials is < Batch or > 10 * MostTrials) throw new ArgumentOutOfRangeException(nameof(trials), trials, "Draw 10 000 to 10 000 000 times.");
        var all = Drawn(Replay.Of(value), new Random(seed), trials);
        return all is null ? null : new(all, settled: true);
    }

    /// <summary>δ: half a unit in the last figure of u that counts; two figures count where it starts with 1, else one.</summary>
    /// <remarks>JCGM 101:2008, 7.9.2; the figures are those that <see cref="Quantities.Rounded"/> shows.</remarks>
    public static double Tolerance(double standardUncertainty)
        => 0.5 * Math.Pow(10, -Quantities.Rounded.Places(standardUncertainty));

    private static double[]? Drawn(Replay replay, Random random, int trials)
    {
        var drawn = new double[trials];
        for (var done = 0; done < trials; done += Replay.Block)
            replay.Draw(random)[..Math.Min(Replay.Block, trials - done)].CopyTo(drawn.AsSpan(done));

        Array.Sort(drawn);
        return double.IsFinite(drawn[0]) && double.IsFinite(drawn[^1]) ? drawn : null;
    }

    private static Interval Middle(double[] sorted)
    {
        var cut = (int)Math.Round(Tail * sorted.Length);
        return new(sorted[cut], sorted[^(cut + 1)]);
    }

    private static (double Mean, double StandardUncertainty) Moments(double[] values)
    {
        double mean = values.Average(), squares = 0;
        foreach (var value in values) squares += (value - mean) * (value - mean);
        return (mean, Math.Sqrt(squares / (values.Length - 1)));
    }

    /// <summary>What the batches said so far.</summary>
    private sealed class Seen
    {
        private readonly List<double[]> answers = [];

        public void Add(double[] sortedBatch)
        {
            var (mean, u) = Moments(sortedBatch);
            var middle = Middle(sortedBatch);
            answers.Add([mean, u, middle.Low, middle.High]);
        }

        public bool Settled(double fineness)
        {
            if (answers.Count < 2) return false;

            var u = answers.Average(answer => answer[1]);
            return u == 0 || Enumerable.Range(0, 4).All(k => 2 * Moments([.. answers.Select(answer => answer[k])]).StandardUncertainty / Math.Sqrt(answers.Count) <= Tolerance(u) / fineness);
        }
    }
}
