namespace BuildLog.Gearing.Measurements;

/// <summary>One independent cause of uncertainty: a reading's resolution, a tape, a tag's last digit.</summary>
/// <remarks>
/// Two values that share an <see cref="Input"/> are correlated through it; two inputs never are. Equality is identity on purpose:
/// two tapes of the same quality are still two tapes.
/// </remarks>
public sealed class Input
{
    private static long made;

    /// <summary>A cause with its standard uncertainty u, taken as normal; for a half-width see <see cref="Rectangular"/>.</summary>
    /// <param name="name">What it is, as a budget line says it.</param>
    /// <param name="standardUncertainty">Its standard uncertainty, in the unit of the quantity it belongs to; zero or more.</param>
    /// <param name="evidence">The measurement it is part of.</param>
    /// <param name="degreesOfFreedom">Infinite for stated limits (JCGM 100:2008, G.4.3); n − 1 for a scatter seen in n readings; above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">u below zero or infinite, or no degrees of freedom: a fault of the caller, never of what was typed.</exception>
    public Input(Later name, double standardUncertainty, Evidence evidence, double degreesOfFreedom = double.PositiveInfinity)
    {
        if (!(standardUncertainty >= 0) || double.IsInfinity(standardUncertainty))
            throw new ArgumentOutOfRangeException(nameof(standardUncertainty), standardUncertainty, "A standard uncertainty is zero or more, and finite.");
        if (!(degreesOfFreedom > 0))
            throw new ArgumentOutOfRangeException(nameof(degreesOfFreedom), degreesOfFreedom, "Degrees of freedom are above zero.");

        Name = name;
        StandardUncertainty = standardUncertainty;
        Evidence = evidence;
        DegreesOfFreedom = degreesOfFreedom;
        Order = Interlocked.Increment(ref made);
    }

    /// <summary>What it is, as a budget line says it.</summary>
    public Later Name { get; }

    /// <summary>u, in the unit of its quantity.</summary>
    public double StandardUncertainty { get; }

    /// <summary>ν; infinite for stated limits.</summary>
    public double DegreesOfFreedom { get; }

    /// <summary>The measurement it is part of.</summary>
    public Evidence Evidence { get; }

    /// <summary>What a Monte Carlo draws it from.</summary>
    public Spread Spread { get; private init; }

    /// <summary>Order of making; keeps the sums of sensitivities in one order, so that equal work gives equal bits.</summary>
    internal long Order { get; }

    /// <summary>Standard uncertainty of a rectangular distribution: half-width / √3 (JCGM 100:2008, 4.3.7).</summary>
    public static Input Rectangular(Later name, double halfWidth, Evidence evidence)
        => new(name, halfWidth / Math.Sqrt(3), evidence) { Spread = Spread.Rectangular };

    /// <inheritdoc/>
    public override string ToString() => Name;
}
