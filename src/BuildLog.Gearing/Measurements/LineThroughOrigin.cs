namespace BuildLog.Gearing.Measurements;

/// <summary>The slope of a straight line through the origin: repeats of one ratio, marks of one roll-out.</summary>
/// <remarks>
/// <code>b = Σ w x y / Σ w x²,  w = 1/σ²,  σ² = u(y − b x)²</code>
/// <para>x, y readings (exact or with stated errors); b slope; σ the stated error of one point seen along y.</para>
/// <para>
/// The stated errors give u_internal, with errors that points share counted as shared. From three points on, scatter is looked at:
/// R = √(χ²/(n−1)); where R &gt; 1 the slope gets one more input, u_internal·√(R²−1) with n−1 degrees of freedom, so that u = u_internal·R.
/// Points without any stated error weigh alike and scatter gives all of u.
/// </para>
/// <para>
/// Two points have no scatter to speak of. But where they lie further apart than four standard errors, one of them is wrong and nobody knows which:
/// either slope is as likely, b gets an input of standard uncertainty √(((b₁−b)² + (b₂−b)²)/2), and the 95 % interval holds both.
/// </para>
/// <para>Needs at least one point with x ≠ 0. Source: weighted least squares, e.g. NIST StRD NoInt1; JCGM GUM-5 example 9; of two, the standard deviation of a
/// two-point distribution, JCGM 100:2008, 4.3.</para>
/// </remarks>
public sealed class LineThroughOrigin
{
    /// <summary>Beyond so many standard errors a reading is no accident: it is a suspect.</summary>
    internal const double Excluding = 4;

    private static readonly Later Scatter = new Later("scatter of the repeats");
    private static readonly Later Excluded = new Later("two readings that exclude each other");

    private LineThroughOrigin(Measured slope, double birgeRatio) => (Slope, BirgeRatio) = (slope, birgeRatio);

    /// <summary>b with its uncertainty, in the unit of y over that of x.</summary>
    public Measured Slope { get; }

    /// <summary>R = √(χ²/(n−1)): scatter seen over scatter stated; NaN with fewer than two points or no stated error.</summary>
    public double BirgeRatio { get; }

    /// <summary>Whether more of a slope's ± comes from how its readings lie apart than from how finely they were read.</summary>
    public static bool IsFromTheReadingsApart(Measured slope) => slope.Budget().Where(line => line.Input.Name == Scatter || line.Input.Name == Excluded).Sum(line => line.Share) > 0.5;

    /// <summary>Two readings of one number lie so far apart that one of them is wrong.</summary>
    public static bool Exclude(Measured one, Measured other)
        => Math.Abs(one.Value - other.Value) > Excluding * double.Hypot(one.StandardUncertainty, other.StandardUncertainty);

    /// <exception cref="ArgumentException">No points, or all x are zero.</exception>
    public static LineThroughOrigin Fit(IReadOnlyList<(Measured X, Measured Y)> points, Evidence evidence)
    {
        if (points.Count == 0 || points.All(point => point.X.Value == 0))
            throw new ArgumentException("A line through the origin needs a point away from it.", nameof(points));

        // The weights need the slope where x has an error; two rounds settle it far below the errors themselves.
        var (slope, errors) = (Unweighted(points), Array.Empty<Measured>());
        var weights = new double[points.Count];
        for (var round = 0; round < 3; round++)
        {
            errors = [.. points.Select(point => point.Y - (slope * (point.X - point.X.Value)))];
            for (var k = 0; k < weights.Length; k++) weights[k] = 1 / (errors[k].StandardUncertainty * errors[k].StandardUncertainty);
            if (!weights.All(double.IsFinite)) Array.Fill(weights, 1);
            slope = Slant(points, weights);
        }

        var sxx = points.Zip(weights, (point, w) => w * point.X.Value * point.X.Value).Sum();
        var result = errors.Select((y, k) => y * (weights[k] * points[k].X.Value / sxx)).Aggregate((a, b) => a + b);
        result += slope - result.Value;

        var n = points.Count;
        var chiSquared = points.Zip(weights, (point, w) => w * Math.Pow(point.Y.Value - (slope * point.X.Value), 2)).Sum();
        var stated = result.StandardUncertainty;
        var ratio = n < 2 || stated == 0 ? double.NaN : Math.Sqrt(chiSquared / (n - 1));
        if (n == 2) return new(result + EitherOf(points, slope, evidence), ratio);
        if (n < 2) return new(result, ratio);

        var scatter = stated == 0 ? Math.Sqrt(chiSquared / (n - 1) / sxx) : stated * Math.Sqrt(Math.Max(0, (ratio * ratio) - 1));
        if (scatter > 0) result += Measured.From(0, new Input(Scatter, scatter, evidence, n - 1));
        return new(result, ratio);
    }

    // A point at x = 0 has no slope of its own. What the two share is not taken off: two readings may still round apart.
    private static Measured EitherOf(IReadOnlyList<(Measured X, Measured Y)> points, double slope, Evidence evidence)
    {
        if (points.Any(point => point.X.Value == 0)) return 0;
        var (one, other) = (points[0].Y / points[0].X, points[1].Y / points[1].X);
        if (!Exclude(one, other)) return 0;

        var either = double.Hypot(one.Value - slope, other.Value - slope) / Math.Sqrt(2);
        return Measured.From(0, new Input(Excluded, either, evidence));
    }

    private static double Unweighted(IReadOnlyList<(Measured X, Measured Y)> points) => Slant(points, [.. points.Select(_ => 1.0)]);

    private static double Slant(IReadOnlyList<(Measured X, Measured Y)> points, double[] weights)
    {
        double sxy = 0, sxx = 0;
        for (var k = 0; k < points.Count; k++)
        {
            sxy += weights[k] * points[k].X.Value * points[k].Y.Value;
            sxx += weights[k] * points[k].X.Value * points[k].X.Value;
        }

        return sxy / sxx;
    }
}
