namespace BuildLog.Gearing.Measurements;

/// <summary>Whether first order was good enough for a value: its interval against a Monte Carlo's.</summary>
/// <remarks>
/// <code>agree if |low − low_drawn| ≤ δ + s and |high − high_drawn| ≤ δ + s</code>
/// <para>
/// δ see <see cref="MonteCarlo.Tolerance"/>, of the first-order u; s what the draws cannot tell themselves, see <see cref="MonteCarlo.EndsWithin"/>. The Monte Carlo is
/// settled to δ/5, and s small beside δ, unless a million draws were not enough: then chance is no disagreement.
/// </para>
/// <para>Source: JCGM 101:2008, 8.1. A rectangular input that dominates makes them differ too: its interval is narrower than a normal one's.</para>
/// </remarks>
/// <param name="FirstOrder">The interval that a finding is judged by.</param>
/// <param name="Drawn">The Monte Carlo; null where a draw left the formula's domain.</param>
/// <param name="Tolerance">δ.</param>
public sealed record Validation(Interval FirstOrder, MonteCarlo? Drawn, double Tolerance)
{
    private const double Fineness = 5;

    /// <summary>Whether both ends of the two intervals lie within the tolerance, as far as the draws can tell; false where a draw left the formula's domain.</summary>
    public bool Agrees => Drawn is { } drawn
        && Math.Abs(FirstOrder.Low - drawn.Interval95.Low) <= Tolerance + drawn.EndsWithin
        && Math.Abs(FirstOrder.High - drawn.Interval95.High) <= Tolerance + drawn.EndsWithin;

    /// <summary>Null for a value without uncertainty: there is nothing to draw.</summary>
    public static Validation? Of(Measured value, int seed)
        => value.IsExact ? null : new(value.Interval95, MonteCarlo.Of(value, seed, Fineness), MonteCarlo.Tolerance(value.StandardUncertainty));
}
