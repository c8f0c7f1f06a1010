using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Gearing.Propshafts;

/// <summary>The largest steady torque a propshaft sees: what the engine can make in low gear, or what the tyres can hold.</summary>
/// <remarks>
/// <code>
/// low gear:    T = T_engine · i_1 · η · R · i_transfer · η_transfer
/// wheel slip:  T = μ · m · g · r / (η_axle · i_axle);   at the wheels μ · m · g · r
/// </code>
/// <para>
/// T_engine net peak torque, N·m (or 0.95 of gross); i_1 lowest gear, first or reverse; η 0.85 manual, 0.80 automatic; R converter's stall torque ratio, 1 with a clutch;
/// η_transfer 0.95; μ grip, 0.71 in print, see <see cref="RoadLoad.DryRoad"/>; m mass on the axle as it slips, kg, see <see cref="RunningGear.LoadAtSlip"/>; r rolling radius, m; η_axle 0.95.
/// </para>
/// <para>On the road the lesser of the two counts; off the road the low-gear torque alone, because a wheel can be wedged.</para>
/// <para>Not for: shock from dropping the clutch or landing with spinning wheels. Source: a shaft maker's installation manual, page 2.</para>
/// </remarks>
public static class ShaftTorque
{
    /// <summary>η of a manual gearbox in low gear.</summary>
    public const double ManualEfficiency = 0.85;

    /// <summary>η of an automatic in low gear.</summary>
    public const double AutomaticEfficiency = 0.80;

    /// <summary>η of a transfer case in low.</summary>
    public const double TransferEfficiency = 0.95;

    /// <summary>η of an axle.</summary>
    public const double AxleEfficiency = 0.95;

    /// <summary>What of the engine's torque a gearbox passes on in low gear.</summary>
    public static double Efficiency(bool automatic) => automatic ? AutomaticEfficiency : ManualEfficiency;

    /// <summary>T in low gear, N·m.</summary>
    /// <param name="engine">Net peak torque, N·m.</param>
    /// <param name="lowestGear">Ratio of the lowest gear.</param>
    /// <param name="efficiency"><see cref="ManualEfficiency"/> or <see cref="AutomaticEfficiency"/>.</param>
    /// <param name="stallTorqueRatio">Of the converter; one with a clutch.</param>
    /// <param name="transferLow">The transfer case's low ratio; null where there is none.</param>
    public static Measured LowGear(Measured engine, Measured lowestGear, double efficiency, Measured stallTorqueRatio, Measured? transferLow)
        => engine * lowestGear * efficiency * stallTorqueRatio * (transferLow is null ? 1 : transferLow * TransferEfficiency);

    /// <summary>The same for a gear and range of a driveline; null where engine torque or gearbox is not known.</summary>
    public static Measured? InGear(Driveline driveline, DriveStep step)
        => driveline is { Engine.PeakTorque: { } torque, Transmission: { } box }
            ? LowGear(torque, step.Gear, Efficiency(box.Converter is not null), box.Converter?.TorqueRatio ?? 1, driveline.TransferCase is null ? null : step.Transfer)
            : null;

    /// <summary>T in the shaft as the tyres begin to slip, N·m.</summary>
    /// <param name="grip">μ.</param>
    /// <param name="axleMass">What the axle carries at most, kg.</param>
    /// <param name="rollingRadius">Metres.</param>
    /// <param name="axle">Shaft turns per wheel turn.</param>
    public static Measured WheelSlip(Measured grip, Measured axleMass, Measured rollingRadius, Measured axle)
        => AtWheels(grip, axleMass, rollingRadius) / (AxleEfficiency * axle);

    /// <summary>T of the shaft to an axle of a driveline as that axle's tyres begin to slip, N·m; null where its load, its ratio or the circumference of its tyres is not known.</summary>
    /// <remarks>μ see <see cref="Driveline.Grip"/>; m with what the pull moves onto the axle or off it, see <see cref="LoadAtSlip"/>; r = C/2π.</remarks>
    /// <param name="driveline">The driveline.</param>
    /// <param name="axle">Front or rear.</param>
    /// <param name="way">Forwards or in reverse: which axle the pull loads.</param>
    public static Measured? AtWheelSlip(Driveline driveline, Position axle, Way way)
        => LoadAtSlip.Of(driveline, axle, way) is { } mass && driveline.AxleAt(axle)?.Ratio is { } ratio && driveline.Tyres?.On(axle).RollingCircumference is { } tyre
            ? WheelSlip(driveline.Grip.Value, mass, tyre.Value * (0.5 / Math.PI), ratio.Value)
            : null;

    /// <summary>Newton metres at the wheels of an axle, both together, when its tyres begin to slip.</summary>
    /// <param name="grip">μ.</param>
    /// <param name="axleMass">What the axle carries, kg.</param>
    /// <param name="rollingRadius">Metres.</param>
    public static Measured AtWheels(Measured grip, Measured axleMass, Measured rollingRadius) => grip * Units.Gravity * axleMass * rollingRadius;
}
