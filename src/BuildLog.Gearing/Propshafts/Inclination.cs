using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Propshafts;

/// <summary>How one member of the shaft line lies: the gearbox's output, a piece of the shaft, the pinion.</summary>
/// <param name="Side">Seen from the side, radians, positive where the front end is the higher one; null where nobody has measured it.</param>
/// <param name="Plan">Seen from above, radians, positive where the front end is further to the right; null where it lies along the vehicle.</param>
/// <remarks>Source of the sign: a drive-axle maker's maintenance manual.</remarks>
public sealed record Inclination(Known? Side, Known? Plan = null)
{
    /// <summary>Plan angle from two offsets: <c>atan((front − rear) / length)</c>, all in metres; positive to the right.</summary>
    public static Measured PlanFromOffsets(Measured front, Measured rear, Measured length)
    {
        var slope = (front - rear) / length;
        return slope.Map(Math.Atan, 1 / (1 + (slope.Value * slope.Value)));
    }
}
