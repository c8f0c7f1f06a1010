using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Gearing.Checks;

/// <summary>What is asked of a part that low gear turns and slipping tyres protect: the lesser of the two torques.</summary>
/// <param name="LowGear">What the engine makes in the lowest gear that way, N·m; null where it is not known.</param>
/// <param name="Slip">What the tyres hold that way, N·m; null where it is not known.</param>
/// <param name="Rating">What the part may carry. Each of the two bounds what is asked, so the greater one counts where it surely fits and the lesser one, known less well, does not.</param>
/// <param name="Way">In first gear, or in reverse.</param>
internal sealed record TorqueAsked(Measured? LowGear, Measured? Slip, Measured? Rating, Way Way)
{
    /// <summary>N·m; null where neither is known.</summary>
    public Measured? Torque
    {
        get
        {
            if (LowGear is null || Slip is null) return LowGear ?? Slip;

            var (lesser, greater) = LowGear.Value < Slip.Value ? (LowGear, Slip) : (Slip, LowGear);
            return Rating is not null && Fits(greater) && !Fits(lesser) ? greater : lesser;
        }
    }

    /// <summary>It is the tyres that end it.</summary>
    public bool BySlip => Slip is not null && Torque == Slip;

    /// <summary>One of the two alone is an upper bound: it may pass, not fail.</summary>
    public bool IsOnlyABound => LowGear is null || Slip is null;

    /// <summary>It surely fits.</summary>
    public bool Holds => Torque is { } torque && Fits(torque);

    /// <summary>Of the two ways the one that asks more; reverse is seldom taller than first. Forwards alone where nobody said reverse.</summary>
    public static TorqueAsked EitherWay(Driveline driveline, Known? rating, Func<Way, Measured?> lowGear, Func<Way, Measured?> slip)
    {
        TorqueAsked Asked(Way way) => new(lowGear(way), slip(way), rating?.Value, way);

        return driveline.Transmission?.Reverse is null
            ? Asked(Way.Forwards)
            : ((TorqueAsked[])[Asked(Way.Forwards), Asked(Way.Backwards)]).OrderBy(asked => asked.Verdict).ThenByDescending(asked => asked.Torque?.Value).First();
    }

    /// <summary>What makes it so much, as it stands before the number.</summary>
    public string InWords => (Way, BySlip) switch
    {
        (Way.Forwards, true) => Spoken("the tyres hold"),
        (Way.Forwards, false) => Spoken("low gear makes"),
        (_, true) => Spoken("in reverse the tyres hold"),
        _ => Spoken("reverse makes"),
    };

    private Verdict? Verdict => Torque is { } torque && Rating is { } rating ? Verdicts.Judge(torque - rating, Window.AtMost(0)).Verdict : null;

    private bool Fits(Measured torque) => Rating is { } rating && (rating - torque).Interval95.Low >= 0;
}
