namespace BuildLog.Gearing.Engines;

/// <summary>How the engine gets its air.</summary>
public enum Induction
{
    /// <summary>No charger: it breathes what air there is.</summary>
    NaturallyAspirated,

    /// <summary>A turbocharger or a supercharger that keeps the pressure up.</summary>
    Charged,
}

/// <summary>What is left of an engine's torque at an altitude.</summary>
/// <remarks>
/// <code>naturally aspirated: T/T₀ = σ − (1 − σ)/7.55;   charged: 1 up to the critical altitude, above it the same with σ against the density there</code>
/// <para>σ density against sea level; the second term is the engine's own friction, which thin air does not spare.</para>
/// <para>
/// Error: some per cent. A certified aero engine gives 71 hp of 100 at 10 000 ft (second-hand), the formula 70; the trade's rule of 3 % for
/// each 1000 ft above 500 ft agrees within 2 % up to there. Where nobody knows the charger's critical altitude, it is taken to keep up.
/// </para>
/// <para>Source: the constant of Gagg and Farrar, SAE 1934, from memory.</para>
/// </remarks>
public static class AltitudeLoss
{
    private const double FrictionDivisor = 7.55;

    /// <param name="induction">How it gets its air.</param>
    /// <param name="air">Where it is driven.</param>
    /// <param name="criticalAltitude">Of the charger, metres; null where nobody knows.</param>
    public static double Factor(Induction induction, Atmosphere air, double? criticalAltitude = null)
        => (induction, criticalAltitude) switch
        {
            (Induction.NaturallyAspirated, _) => Left(air.DensityRatio),
            (_, { } critical) => Left(Math.Min(1, air.Density / Atmosphere.At(critical).Density)),
            _ => 1,
        };

    private static double Left(double density) => density - ((1 - density) / FrictionDivisor);
}
