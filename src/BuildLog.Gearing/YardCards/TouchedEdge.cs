using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;

namespace BuildLog.Gearing.YardCards;

/// <summary>One edge of a window, and how far from it what is counted or rolled has to lie for an interval of 95 % just to touch it.</summary>
/// <remarks>
/// <code>
/// goal = others · part: (k x − L)² = (ρ k x)² + t² (a² + b² x²)   or   (k² (1 − ρ²) − t² b²) x² − 2 k L x + L² − t² a² = 0,   ρ = |S − L| / S
/// goal = others / part: (k x − L)² = (ρ L)² + t² (a² + b² L² / k²),   ρ = |S − L| / L
/// </code>
/// <para>
/// x counted or rolled, a turn; k what one of x is worth of the part; L the edge with the other parts at their best values, S of what is sure; a and b standard
/// uncertainties of the reading, fixed and for each unit of x; t = <see cref="StudentT.Normal975"/>. The greater root lies above L, the smaller below it.
/// </para>
/// <para>
/// Derivation: the verdict of an exact part at S just touches, so ρ is the relative half width that the others give the goal: S (1 ∓ ρ) = L, or S = L (1 ± ρ). A
/// verdict on a part that was read adds the relative half width of the reading by squares, as errors that have nothing to do with each other add; the second line
/// is k x = L (1 ± √(ρ² + t² (a² + b² x²) / (k x)²)) with the a of x = L / k. Without one of the two errors the other is left: S, or the reading's own edge.
/// </para>
/// <para>
/// Where the others have few degrees of freedom, ρ keeps their t; a verdict's falls towards the normal one as the reading comes in, so it fits a little earlier
/// than this says and never later. So it does where one wish sets L and another S. First order, as the verdict is.
/// Not for: b t of k and more, a reading so short that it says nothing.
/// </para>
/// <para>Source: JCGM 100:2008, 5.1.2 (squares add), G.4.1 (degrees of freedom).</para>
/// </remarks>
/// <param name="Limit">L; infinite where that side is open.</param>
/// <param name="Others">ρ; zero where the others are left at their best values.</param>
/// <param name="IsInverse">The goal is others / part.</param>
internal readonly record struct TouchedEdge(double Limit, double Others = 0, bool IsInverse = false)
{
    /// <param name="side">+1 for what lies above L, −1 for what lies below it.</param>
    /// <param name="a">Standard uncertainty of the reading, in the unit of L.</param>
    /// <param name="b">The same for each unit of x.</param>
    /// <param name="k">What one of x is worth of the part.</param>
    /// <returns>x, infinite where L is.</returns>
    public double Touching(int side, double a, double b, double k = 1)
    {
        if (double.IsInfinity(Limit)) return Limit;

        var (still, growing) = (StudentT.Normal975 * a, StudentT.Normal975 * b);
        if (IsInverse) return (Limit + (side * Math.Sqrt(Squared(Others * Limit) + Squared(still) + Squared(growing * Limit / k)))) / k;

        var lead = Squared(k) - Squared(k * Others) - Squared(growing);
        return ((k * Limit) + (side * Math.Sqrt(Squared(k * Limit) - (lead * (Squared(Limit) - Squared(still)))))) / lead;
    }

    private static double Squared(double value) => value * value;
}

/// <summary>Where yes begins and ends.</summary>
internal readonly record struct EdgesOfYes(TouchedEdge Low, TouchedEdge High)
{
    /// <returns>Null where nothing is sure.</returns>
    public static EdgesOfYes? Of(WindowOfPart wanted) => Of(wanted.Window, wanted.SureWindow, wanted.Lowest?.IsInverse ?? false, wanted.Highest?.IsInverse ?? false);

    /// <summary>The same of bare numbers: goal = others · part, or no goal but the part itself.</summary>
    public static EdgesOfYes? Of(Window window, Window? sure) => Of(window, sure, false, false);

    private static EdgesOfYes? Of(Window window, Window? sure, bool isLowInverse, bool isHighInverse)
        => sure is { } inner ? new(Edge(window.Low, inner.Low, isLowInverse), Edge(window.High, inner.High, isHighInverse)) : null;

    private static TouchedEdge Edge(double limit, double sure, bool isInverse)
        => new(limit, sure == limit ? 0 : Math.Abs((sure - limit) / (isInverse ? limit : sure)), isInverse);
}
