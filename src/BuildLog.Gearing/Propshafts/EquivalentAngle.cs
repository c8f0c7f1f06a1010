using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Propshafts;

/// <summary>How the two yokes welded to one piece of the shaft stand to each other.</summary>
public enum Yokes
{
    /// <summary>In one plane, as they should be: the second joint takes back what the first one did.</summary>
    InLine,

    /// <summary>A quarter turn apart: the second joint adds to the first.</summary>
    QuarterTurn,
}

/// <summary>The angle of the one joint that would shake as much as all joints of the line together.</summary>
/// <remarks>
/// <code>β_eq² = | Σ s_k · (side_k + i · plan_k)² |,   s_{k+1} = −s_k with yokes in line, +s_k a quarter turn apart</code>
/// <para>
/// In one plane that is the handbooks' β_eq² = |β₁² − β₂²| in phase, β₁² + β₂² out of phase. A joint makes 2/rev of β²/2 in the direction of its own
/// plane, so joints in different planes add like arrows at twice the angle between the planes.
/// </para>
/// <para>Second order in β: within 2 % up to 10°. Uncertainty: through <see cref="Measured"/>, first order.</para>
/// <para>Source: SAE AE-7 as quoted on an engineering reference page; its table of permitted pairs is reproduced within 0.1°.</para>
/// </remarks>
public static class EquivalentAngle
{
    /// <summary>β_eq², rad², zero or more; where everything cancels, zero with the uncertainty of that in one plane.</summary>
    /// <param name="joints">From the front; one at least.</param>
    /// <param name="pieces">The yokes of the piece behind each joint but the last: one fewer than joints.</param>
    /// <exception cref="ArgumentException">More or fewer pieces than lie between the joints.</exception>
    public static Measured Squared(IReadOnlyList<JointAngle> joints, IReadOnlyList<Yokes> pieces)
    {
        if (pieces.Count != joints.Count - 1) throw new ArgumentException("A piece of the shaft stands between each two joints.", nameof(pieces));

        Measured along = 0, across = 0;
        var sign = 1;
        for (var k = 0; k < joints.Count; k++)
        {
            if (k > 0 && pieces[k - 1] == Yokes.InLine) sign = -sign;
            along += sign * ((joints[k].Side * joints[k].Side) - (joints[k].Plan * joints[k].Plan));
            across += sign * 2 * (joints[k].Side * joints[k].Plan);
        }

        var size = Math.Sqrt((along.Value * along.Value) + (across.Value * across.Value));

        // Where everything cancels the error has no direction; that in one plane stands for it.
        return size == 0 ? along : ((along * along) + (across * across)).SquareRoot();
    }
}
