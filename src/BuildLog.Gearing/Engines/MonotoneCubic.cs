namespace BuildLog.Gearing.Engines;

/// <summary>A smooth curve through points that never swings past them: between two points it rises or falls as they do.</summary>
/// <remarks>
/// <code>y = h00 y_k + h10 h m_k + h01 y_k+1 + h11 h m_k+1   on each piece, h = x_k+1 − x_k   (cubic Hermite)</code>
/// <para>
/// Inner slopes m start as the mean of the two neighbouring secants Δ, end slopes as the one secant; where Δ changes sign m is zero; where
/// α² + β² &gt; 9 (α = m_k/Δ_k, β = m_k+1/Δ_k) both are shortened to that circle.
/// </para>
/// <para>The highest and the lowest value are therefore those of points. Not defined outside the points.</para>
/// <para>Source: F. N. Fritsch and R. E. Carlson, Monotone piecewise cubic interpolation, SIAM J. Numer. Anal. 17 (1980) 238–246.</para>
/// </remarks>
internal sealed class MonotoneCubic
{
    private readonly double[] x;
    private readonly double[] y;
    private readonly double[] slopes;

    /// <exception cref="ArgumentException">Fewer than two points, or x that does not rise.</exception>
    public MonotoneCubic(IReadOnlyList<(double X, double Y)> points)
    {
        if (points.Count < 2) throw new ArgumentException("A curve needs two points.", nameof(points));
        for (var k = 1; k < points.Count; k++)
        {
            if (!(points[k].X > points[k - 1].X)) throw new ArgumentException("The points of a curve go from left to right.", nameof(points));
        }

        x = [.. points.Select(point => point.X)];
        y = [.. points.Select(point => point.Y)];
        slopes = Slopes(x, y);
    }

    public double Low => x[0];

    public double High => x[^1];

    public bool Reaches(double at) => at >= Low && at <= High;

    public double At(double at)
    {
        var (k, h, t) = Piece(at);
        double t2 = t * t, t3 = t2 * t;
        return (((2 * t3) - (3 * t2) + 1) * y[k]) + ((t3 - (2 * t2) + t) * h * slopes[k])
            + (((-2 * t3) + (3 * t2)) * y[k + 1]) + ((t3 - t2) * h * slopes[k + 1]);
    }

    public double SlopeAt(double at)
    {
        var (k, h, t) = Piece(at);
        var secant = (y[k + 1] - y[k]) / h;
        return (6 * t * (1 - t) * secant) + (((3 * t * t) - (4 * t) + 1) * slopes[k]) + (((3 * t * t) - (2 * t)) * slopes[k + 1]);
    }

    private (int Piece, double Length, double Share) Piece(double at)
    {
        if (!Reaches(at)) throw new ArgumentOutOfRangeException(nameof(at), at, "The curve does not reach that far.");
        var found = Array.BinarySearch(x, at);
        var k = Math.Min(found >= 0 ? found : ~found - 1, x.Length - 2);
        var h = x[k + 1] - x[k];
        return (k, h, (at - x[k]) / h);
    }

    private static double[] Slopes(double[] x, double[] y)
    {
        var secants = new double[x.Length - 1];
        for (var k = 0; k < secants.Length; k++) secants[k] = (y[k + 1] - y[k]) / (x[k + 1] - x[k]);

        var slopes = new double[x.Length];
        (slopes[0], slopes[^1]) = (secants[0], secants[^1]);
        for (var k = 1; k < secants.Length; k++) slopes[k] = secants[k - 1] * secants[k] <= 0 ? 0 : (secants[k - 1] + secants[k]) / 2;

        for (var k = 0; k < secants.Length; k++)
        {
            if (secants[k] == 0)
            {
                slopes[k] = slopes[k + 1] = 0;
                continue;
            }

            double alpha = slopes[k] / secants[k], beta = slopes[k + 1] / secants[k];
            var length = Math.Sqrt((alpha * alpha) + (beta * beta));
            if (length > 3) (slopes[k], slopes[k + 1]) = (3 / length * slopes[k], 3 / length * slopes[k + 1]);
        }

        return slopes;
    }
}
