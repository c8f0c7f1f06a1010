using MathNet.Numerics.Integration;

namespace BuildLog.Gearing.RoadLoad;

/// <summary>Road load as a test sheet states it: three coefficients of road speed.</summary>
/// <param name="F0">Newtons.</param>
/// <param name="F1">Newtons per m/s.</param>
/// <param name="F2">Newtons per (m/s)².</param>
/// <remarks>
/// <code>F = f0 + f1 v + f2 v²;   P = F v;   t = ∫ m/F dv from the slower to the faster speed</code>
/// <para>m effective mass: the vehicle's and that of its turning wheels, 1.5 to 4 % more.</para>
/// <para>Source: form of UNECE GTR 15 and of the US EPA's test car lists (A, B, C in lbf and mph).</para>
/// </remarks>
public sealed record RoadLoadCurve(double F0, double F1, double F2)
{
    // The integrand is smooth and far from zero: twenty nodes leave rounding only.
    private const int Nodes = 20;

    /// <summary>Newtons.</summary>
    public double Force(double speed) => F0 + (F1 * speed) + (F2 * speed * speed);

    /// <summary>Watts.</summary>
    public double Power(double speed) => Force(speed) * speed;

    /// <summary>Seconds to roll from one speed down to another, out of gear on the level.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not slowing down, or no force on the way.</exception>
    public double CoastDown(double effectiveMass, double from, double to)
    {
        if (!(from > to)) throw new ArgumentOutOfRangeException(nameof(to), to, "A coast-down goes from the faster to the slower speed.");
        if (!(Math.Min(Force(from), Force(to)) > 0)) throw new ArgumentOutOfRangeException(nameof(from), from, "Without resistance nothing slows down.");
        return GaussLegendreRule.Integrate(v => effectiveMass / Force(v), to, from, Nodes);
    }
}
