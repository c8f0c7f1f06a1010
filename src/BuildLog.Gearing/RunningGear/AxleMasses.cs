using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.RunningGear;

/// <summary>What each axle carries, laden as heavily as it will be; kilograms, null where it was not weighed.</summary>
/// <exception cref="RefusedException">A mass that is not above zero.</exception>
public sealed record AxleMasses(Known? Front = null, Known? Rear = null)
{
    /// <summary>Kilograms; above zero.</summary>
    public Known? Front { get; init => field = value.AboveZero(Spoken("An axle's mass"), "700 kg"); } = Front.AboveZero(Spoken("An axle's mass"), "700 kg");

    /// <summary>Kilograms; above zero.</summary>
    public Known? Rear { get; init => field = value.AboveZero(Spoken("An axle's mass"), "750 kg"); } = Rear.AboveZero(Spoken("An axle's mass"), "750 kg");

    /// <summary>The weighing they come from; null where they were only told.</summary>
    public Weighing? Weighed { get; init; }
}

/// <summary>Load that moves from one axle to the other.</summary>
/// <remarks>
/// <code>Δm = m · (a / g) · h / L on the flat;   m · sin θ · h / L more on the rear standing on a grade</code>
/// <para>m mass of the vehicle, kg; a acceleration, m/s², braking negative; h height of the centre of gravity, L wheelbase, m; θ grade.</para>
/// <para>Both axles together keep m. Stiff-bodied and slow: no pitch, no air forces. Source: statics.</para>
/// </remarks>
public static class WeightTransfer
{
    /// <summary>Kilograms moved to the rear axle; negative when braking.</summary>
    public static Measured ToRear(Measured mass, Measured acceleration, Measured heightOfGravity, Measured wheelbase, double gradeRadians = 0)
        => mass * ((acceleration / Units.Gravity) + Math.Sin(gradeRadians)) * heightOfGravity / wheelbase;

    /// <summary>Part of a pull that moves onto the axle that trails, h/L; null where height and wheelbase are not known, or the one is no less than the other, which is a typing error.</summary>
    public static Measured? ToTrailing(Driveline driveline)
        => driveline.Load is { GravityHeight.Value: { } height, Wheelbase.Value: { } wheelbase } && height.Value < wheelbase.Value ? ToRear(1, Units.Gravity, height, wheelbase) : null;
}
