using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Ratios;

/// <summary>A further reduction between half-shaft and wheel: planetary hubs, portal axles.</summary>
/// <remarks>
/// <code>i_axle = i_diff · i_hub;   planetary, ring held: i_hub = 1 + R/S;   portal: i_hub = driven / driver</code>
/// <para>
/// Counted at the wheel the axle's ratio has the hub inside; teeth of ring gear and pinion have not. The hub alone: turns of the half-shaft per turn
/// of its wheel.
/// </para>
/// <para>Uncertainty: through <see cref="Measured"/>; teeth are exact. Source: definition; worked: 3.90 through 2.00 makes 7.80.</para>
/// </remarks>
public static class HubReduction
{
    /// <exception cref="Quantities.RefusedException">More reduction than hubs have.</exception>
    public static double Of(Planetary hub) => RatioRange.Hub.Checked(hub.RingHeld);

    /// <exception cref="Quantities.RefusedException">A portal that speeds up, or reduces more than hubs do.</exception>
    public static double Of(GearMesh portal) => RatioRange.Hub.Checked(portal.Ratio);

    /// <summary>Propshaft turns per wheel turn.</summary>
    public static Measured AxleRatio(Measured differential, Measured hub) => differential * hub;

    /// <summary>The hub's part of a count, where the differential's teeth are known; 1.00 if there is none.</summary>
    public static Measured Behind(Measured counted, Teeth differential) => counted / differential.ToMeasured();
}
