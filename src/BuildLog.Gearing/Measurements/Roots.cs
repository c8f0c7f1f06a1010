namespace BuildLog.Gearing.Measurements;

/// <summary>The roots of one equation for a whole block of trials, each with its own inputs.</summary>
/// <remarks>
/// <code>x ← x − F(x) Δx/ΔF,   halved between two signs where that steps out of them</code>
/// <para>
/// From the best value, along the branch it lies on: F keeps the sign of its slope there. A trial without such a root has none: NaN.
/// </para>
/// <para>Source: secant method, kept within a bracket once there is one.</para>
/// </remarks>
internal static class Roots
{
    private const int MostSteps = 100;
    private const double FirstStep = 1e-5;

    /// <summary>Of the value, what a root may be off.</summary>
    private const double Fine = 1e-10;

    /// <param name="roots">To be filled.</param>
    /// <param name="best">Where the root lies for the best inputs; not zero.</param>
    /// <param name="unknown">Where the equation reads its unknown from.</param>
    /// <param name="equation">Computes its left side for all trials, at what stands in the unknown.</param>
    public static void Solve(double[] roots, double best, double[] unknown, Func<double[]> equation)
    {
        Array.Fill(unknown, best);
        var ways = Array.ConvertAll(equation(), at => new Way(best, at));
        for (var step = 0; step < MostSteps && Array.Exists(ways, way => !way.Ended); step++)
        {
            for (var k = 0; k < unknown.Length; k++) unknown[k] = ways[k].Next;
            var left = equation();
            for (var k = 0; k < unknown.Length; k++) ways[k].Go(left[k]);
        }

        for (var k = 0; k < roots.Length; k++) unknown[k] = roots[k] = ways[k].Root;
    }

    // One trial's way to its root.
    private struct Way(double best, double atBest)
    {
        private double before = best;
        private double atBefore = atBest;
        private double slope;
        private double low = double.NegativeInfinity;
        private double high = double.PositiveInfinity;

        public double Next { get; private set; } = best * (1 + FirstStep);

        public double Root { get; private set; } = atBest == 0 ? best : double.NaN;

        public bool Ended { get; private set; } = atBest == 0 || !double.IsFinite(atBest);

        public void Go(double atNext)
        {
            if (Ended) return;

            var (x, secant) = (Next, (atNext - atBefore) / (Next - before));
            if (slope == 0)
            {
                slope = secant;
                Bound(before, atBefore);
            }

            Bound(x, atNext);
            var to = atNext == 0 ? x : x - (atNext / (secant * slope > 0 ? secant : slope));
            if (low > high) to = double.NaN;
            else if (!(to >= low && to <= high)) to = (low + high) / 2;

            (before, atBefore, Next) = (x, atNext, to);
            if (!double.IsFinite(to) || !double.IsFinite(atNext)) Ended = true;
            else if (Math.Abs(to - x) <= Fine * Math.Abs(x)) (Root, Ended) = (to, true);
        }

        // Below the root the left side has the sign that rises or falls to zero there.
        private void Bound(double x, double at)
        {
            if (at * slope <= 0) low = Math.Max(low, x);
            if (at * slope >= 0) high = Math.Min(high, x);
        }
    }
}
