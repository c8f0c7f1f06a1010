using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Speedometers;

/// <summary>What a speedometer shows against the truth.</summary>
/// <remarks>
/// <code>q = N / W,   V₁ = q · V₂,   odometer error = q − 1</code>
/// <para>N cable turns or pulses per metre that it gets; W those it wants; V₁ shown and V₂ true speed.</para>
/// <para>
/// Pointer and odometer share q as long as the pointer's magnet and spring are right; an old head can be off by itself, so drive gears are chosen
/// by the odometer and the pointer is set in the head. Source: definition; a trade forum's rule for the order of setting.
/// </para>
/// </remarks>
public sealed record Reading(Measured Share)
{
    /// <summary>From its drive: N gets over W wants, cable turns or pulses a metre.</summary>
    public static Reading Of(Measured perMetre, Measured wanted) => new(perMetre / wanted);

    /// <summary>From a drive past a satellite receiver or a measured mile, both speeds in one unit.</summary>
    public static Reading Observed(Measured shown, Measured real) => new(shown / real);

    /// <summary>From distances, better over ten kilometres or more.</summary>
    public static Reading OdometerObserved(Measured shown, Measured real) => new(shown / real);

    /// <summary>q − 1; positive where it counts too much.</summary>
    public Measured OdometerError => Share - 1;

    /// <summary>What is shown at a true speed, in its unit.</summary>
    public Measured Shown(Measured real) => Share * real;

    /// <summary>The truth at a shown speed.</summary>
    public Measured Real(Measured shown) => shown / Share;

    /// <summary>The factor a correction box, or a pulse corrector, must have for it to read right.</summary>
    public Measured Correction => 1 / Share;

    /// <summary>The same speedometer after the axle or the tyres were changed.</summary>
    /// <remarks><c>q' = q · (i' / i) · (C / C')</c>: taller tyres make it read low, a taller axle too.</remarks>
    public Reading After(Measured oldAxle, Measured newAxle, Measured oldCircumference, Measured newCircumference)
        => new(Share * newAxle / oldAxle * oldCircumference / newCircumference);
}
