namespace BuildLog.Gearing.Engines;

/// <summary>How the engine gets its air.</summary>
public enum Induction
{
    NaturallyAspirated,

    /// <summary>A turbocharger or a supercharger that keeps the pressure up.</summary>
    Charged,
}

/// <summary>What is left of an engine's torque at an altitude.</summary>
/// <remarks>
/// <code>naturally aspirated: T/T₀ = σ − (1 − σ)/7.55;   charged: 1</code>
/// <para>σ density against sea level; the second term is the engine's own friction, which thin air does not spare.</para>
/// <para>
/// Error: some per cent. A certified aero engine gives 71 hp of 100 at 10 000 ft (second-hand), the formula 70; the trade's rule of 3 % for
/// each 1000 ft above 500 ft agrees within 2 % up to there. Charged is right up to the charger's critical altitude, which this does not know.
/// </para>
/// <para>Source: the constant of Gagg and Farrar, SAE 1934, from memory.</para>
/// </remarks>
public static class AltitudeLoss
{
    private const double FrictionDivisor = 7.55;

    public static double Factor(Induction induction, Atmosphere air)
        => induction == Induction.Charged ? 1 : air.DensityRatio - ((1 - air.DensityRatio) / FrictionDivisor);
}
