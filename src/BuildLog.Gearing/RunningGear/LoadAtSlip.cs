using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.RunningGear;

/// <summary>Which way a vehicle is driven.</summary>
public enum Way
{
    /// <summary>The rear axle trails.</summary>
    Forwards,

    /// <summary>In reverse: the front axle trails.</summary>
    Backwards,
}

/// <summary>What stands on an axle as its tyres begin to slip: what stands there at rest, and what the pull itself moves there.</summary>
/// <remarks>
/// <code>one axle driven: m_axle/(1 ∓ μ h/L);   all wheels driven: m_axle ± μ m h/L;   the upper sign on the axle that trails, the lower on the one that leads</code>
/// <para>
/// μ grip; h height of the centre of gravity, L wheelbase, m; m mass of the vehicle, kg. The pull at slip is μ g times what stands on the driven wheels, so it is
/// in its own answer. A front axle that can be joined counts as driven. At rest: see <see cref="MassOnAxle"/>; that alone where h, L or the whole is not known.
/// </para>
/// <para>Source: statics, see <see cref="WeightTransfer"/>.</para>
/// </remarks>
public static class LoadAtSlip
{
    /// <summary>Kilograms; null where neither the axle nor the whole was weighed.</summary>
    public static Measured? Of(Driveline driveline, Position axle, Way way = Way.Forwards)
    {
        if (MassOnAxle.Of(driveline, axle) is not { } atRest || WeightTransfer.ToTrailing(driveline) is not { } lever) return MassOnAxle.Of(driveline, axle);

        var gained = driveline.Grip.Value * (Trails(axle, way) ? lever : 0 - lever);
        if (!DrivenWheels.JoinsBothAxles(driveline)) return atRest / (1 - gained);

        return Whole(driveline) is { } mass ? atRest + (mass * gained) : atRest;
    }

    /// <summary>Whether the axle gains load when it is driven this way.</summary>
    public static bool Trails(Position axle, Way way) => (axle == Position.RearAxle) == (way == Way.Forwards);

    private static Measured? Whole(Driveline driveline)
        => driveline.AxleMasses is { Front.Value: { } front, Rear.Value: { } rear } ? front + rear : driveline.Load?.Mass?.Value;
}
