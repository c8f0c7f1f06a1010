using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Checks;

/// <summary>What is asked of a part that low gear turns and slipping tyres protect: the lesser of the two torques.</summary>
internal static class TorqueAsked
{
    /// <summary>N·m; null where neither is known.</summary>
    /// <param name="lowGear">What the engine makes in low gear.</param>
    /// <param name="slip">What the tyres hold.</param>
    /// <param name="rating">What the part may carry. Each of the two bounds what is asked, so the greater one counts where it surely fits and the lesser one, known less well, does not.</param>
    public static Measured? Of(Measured? lowGear, Measured? slip, Measured? rating)
    {
        if (lowGear is null || slip is null) return lowGear ?? slip;

        var (lesser, greater) = lowGear.Value < slip.Value ? (lowGear, slip) : (slip, lowGear);
        return rating is not null && Fits(greater) && !Fits(lesser) ? greater : lesser;

        bool Fits(Measured torque) => (rating - torque).Interval95.Low >= 0;
    }
}
