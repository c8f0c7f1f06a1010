using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Gearing.RoadLoad;

/// <summary>The steepest gradient it can pull away on, in its lowest gear.</summary>
/// <param name="Gradient">Rise over run.</param>
/// <param name="EndedByGrip">The driven wheels spin before the engine gives up.</param>
/// <param name="Step">The gear and range.</param>
/// <remarks>
/// <code>F = T · R · i · η · 2π/C;   by torque: see <see cref="Hills"/> with F/(m g);   by grip: see <see cref="Hills"/>;   the lower of the two</code>
/// <para>
/// T torque where the engine pulls away: at the lowest clean pull (else the first point of the curve) with a clutch, at the stall speed with a
/// converter, whose torque ratio is R.
/// </para>
/// <para>Statics only: a clutch that may slip for long, or a run-up, gets further. Source: statics; cross-checked by <see cref="Startability"/>.</para>
/// </remarks>
public sealed record HillStart(Measured Gradient, bool EndedByGrip, DriveStep Step)
{
    /// <summary>What was computed with.</summary>
    public required Pull Pull { get; init; }

    /// <summary>Newtons at the wheels as it pulls away.</summary>
    public Measured Force => ForceOf(Pull, Step);

    /// <summary>Part of the weight that a grade moves onto the driven wheels for each sine of it: positive behind, negative in front, none with all wheels driven or where height and wheelbase are not known.</summary>
    public static Measured Shift(Driveline driveline)
    {
        if (driveline.TransferCase is not null || WeightTransfer.ToTrailing(driveline) is not { } toRear) return 0;

        return driveline.DrivingPosition == Position.FrontAxle ? 0 - toRear : toRear;
    }

    /// <summary>The gradient on which the wheels that are driven on the road begin to spin; null where their share of the load is not known.</summary>
    public static Measured? ByGripOnTheRoad(Pull pull)
        => DrivenWheels.ShareOnTheRoad(pull.Driveline) is { } share
            ? Hills.ByGrip(pull.Driveline.Load!.Grip.Value, share, pull.Resistance.RollingResistance, Shift(pull.Driveline))
            : null;

    /// <summary>Null where a number is not known: torque, ratios, tyres, load or the share of it on driven wheels.</summary>
    public static HillStart? Of(Driveline driveline)
    {
        if (LowRange.LowestStep(driveline) is not { } step || Pull.Of(driveline) is not { } pull || DrivenWheels.ShareInLowRange(driveline) is not { } share) return null;

        var grip = Hills.ByGrip(driveline.Load!.Grip.Value, share, pull.Resistance.RollingResistance, Shift(driveline));
        return Hills.Held(ForceOf(pull, step) / pull.Resistance.Weight, pull.Resistance.RollingResistance) is { } torque && torque.Value < grip.Value
            ? new(torque, false, step) { Pull = pull }
            : new(grip, true, step) { Pull = pull };
    }

    private static Measured ForceOf(Pull pull, DriveStep step) => pull.PullAwayForce(step) * LowRange.AxleStep(pull.Driveline.DrivingAxle);
}
