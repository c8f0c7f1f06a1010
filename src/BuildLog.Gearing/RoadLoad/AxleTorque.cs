using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Gearing.RoadLoad;

/// <summary>The most torque an axle can see at its wheels, both shafts together: what the engine makes in low gear, or what the tyres hold.</summary>
/// <remarks>
/// <code>low gear: T · i_low · η · R · i_transfer low · 0.95 · i_axle · step · 0.95;   wheel slip: μ · G · r</code>
/// <para>
/// T peak torque, N·m; η 0.85 manual, 0.80 automatic; R converter torque ratio at stall; i_low first gear or reverse; first 0.95 the transfer case, where there is one; second the axle; step
/// low over high of a two-speed axle, else one. μ grip, 0.71 in print, see <see cref="DryRoad"/>; G weight on the axle, N, see <see cref="LoadAtSlip"/>; r rolling radius C/2π, m. On a road the smaller of the two; all of the torque is taken to reach this axle.
/// </para>
/// <para>Source: an axle and joint maker's driveline installation manual, p. 2 (there for the propshaft: divided by the axle's ratio and 0.95).</para>
/// </remarks>
public static class AxleTorque
{
    /// <summary>N·m at the wheels of that axle; null where a number is not known.</summary>
    public static Measured? InLowGear(Driveline driveline, Axle axle, Way way = Way.Forwards)
        => axle.Ratio is { } ratio && LowRange.LowestStep(driveline, way) is { } step && ShaftTorque.InGear(driveline, step) is { } atShaft
            ? atShaft * ratio.Value * LowRange.AxleStep(axle) * ShaftTorque.AxleEfficiency
            : null;

    /// <summary>N·m at the wheels when the tyres of an axle begin to slip.</summary>
    /// <param name="grip">μ.</param>
    /// <param name="massOnAxle">Kilograms.</param>
    /// <param name="circumference">Rolling circumference, m.</param>
    public static Measured AtWheelSlip(Measured grip, Measured massOnAxle, Measured circumference)
        => ShaftTorque.AtWheels(grip, massOnAxle, circumference * (0.5 / Math.PI));
}
