using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Engines;

/// <summary>A torque converter as the driveline sees it.</summary>
/// <param name="LocksUp">Whether it locks in the gear it cruises in.</param>
/// <param name="StallSpeed">Engine speed at full throttle with the car held, rev/s; null where nobody knows.</param>
/// <param name="StallTorqueRatio">Turbine torque over engine torque at stall; null for the usual one.</param>
/// <remarks>
/// <code>engine speed = locked speed/(1 − s);   stall: n₂ = n₁ √(T₂/T₁)</code>
/// <para>
/// s slip, 0 when locked, else 3 to 8 % at a steady cruise (from memory: 5.5 ± 2.5 %). The stall torque ratio is 1.5 to 2.8 (a truck engine maker's
/// converter guide): 2.1 ± 0.6 where not known. Stall speed follows the square root of the engine's torque (a pump takes torque by the square of its speed).
/// </para>
/// </remarks>
/// <exception cref="Quantities.RefusedException">A stall speed or a torque ratio that is not above zero, or a slip that is none.</exception>
public sealed record Converter(bool LocksUp, Known? StallSpeed = null, Known? StallTorqueRatio = null)
{
    private const double MostSlip = 0.5;

    private static readonly Evidence Data = new(new Later("converter"), _ => Spoken("compare engine speed and road speed at a steady cruise"));

    private static readonly Measured UsualSlip = Measured.From(0.055, Input.Rectangular(new Later("converter slip at cruise"), 0.025, Data));

    private static readonly Measured UsualTorqueRatio = Measured.From(2.1, Input.Rectangular(new Later("converter torque ratio"), 0.6, new Evidence(new Later("converter torque ratio"))));

    /// <summary>n₁, rev/s, at full throttle with the car held; above zero, null where nobody knows.</summary>
    public Known? StallSpeed { get; init => field = value.AboveZero(Spoken("A stall speed"), "2100 rev/min"); } = StallSpeed.AboveZero(Spoken("A stall speed"), "2100 rev/min");

    /// <summary>Turbine torque over engine torque at stall; above zero, null for the usual one.</summary>
    public Known? StallTorqueRatio { get; init => field = value.AboveZero(Spoken("A stall torque ratio"), "2.1"); } = StallTorqueRatio.AboveZero(Spoken("A stall torque ratio"), "2.1");

    /// <summary>s at a steady cruise, where somebody compared engine speed and road speed: from 0 to below 0.5; null for the usual one.</summary>
    public Known? Slip
    {
        get;
        init => field = value is null or { Value.Value: >= 0 and < MostSlip }
            ? value
            : throw new Quantities.RefusedException("out-of-range", Spoken($"A converter slips by 0 to {MostSlip * 100} % at a cruise, not {value.Value.Value * 100:0.##} %."), "3 %");
    }

    /// <summary>Slip at a steady cruise, as a share of engine speed.</summary>
    public Measured CruiseSlip => Slip?.Value ?? (LocksUp ? 0 : UsualSlip);

    /// <summary>Nobody compared engine speed and road speed: what it slips by is what is usual.</summary>
    public bool SlipIsAssumed => Slip is null && !LocksUp;

    /// <summary>Turbine torque over engine torque at stall: the known one, or 2.1 ± 0.6.</summary>
    public Measured TorqueRatio => StallTorqueRatio?.Value ?? UsualTorqueRatio;

    /// <summary>The stall speed behind another engine, rev/s.</summary>
    public static Measured StallBehind(Measured stall, Measured torqueThen, Measured torqueNow) => stall * (torqueNow / torqueThen).SquareRoot();
}
