using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.RoadLoad;

/// <summary>What part of the engine's torque arrives at the wheels.</summary>
/// <remarks>
/// <code>η = η_gearbox · η_transfer · η_axle;   direct 0.99, through gears 0.96, right-angle drive 0.96;   u(η) = 0.02</code>
/// <para>A gear is direct where its ratio is 1.00; a vehicle without a transfer case has no loss there. A direct top gives 0.95, any other gear 0.92.</para>
/// <para>
/// Source: standard losses of Regulation (EU) 2017/2400. Oil drag is not in them, and makes more of a light load: hence u. Common practice has 0.88 to 0.92
/// for the whole chain at a cruise.
/// </para>
/// </remarks>
public static class DrivelineEfficiency
{
    private const double Direct = 0.99;
    private const double ThroughGears = 0.96;
    private const double RightAngle = 0.96;

    private static readonly Measured Spread = Measured.From(0, new Input(new Later("driveline efficiency"), 0.02, new Evidence(new Later("driveline efficiency"))));

    /// <summary>η from the engine to the driven wheels in a gear, 0 to 1, ± 0.02 standard uncertainty.</summary>
    public static Measured Of(Driveline driveline, DriveStep step)
        => Stage(step.Gear) * (driveline.TransferCase is null ? 1 : Stage(step.Transfer)) * RightAngle + Spread;

    private static double Stage(Measured ratio) => Math.Abs(ratio.Value - 1) < 0.005 ? Direct : ThroughGears;
}
