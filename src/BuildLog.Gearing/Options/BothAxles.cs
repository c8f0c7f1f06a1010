using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Gearing.Options;

/// <summary>The two axles of a four-wheel drive turn together: gears that change one change the other as well.</summary>
public static class BothAxles
{
    private static readonly FourWheelMatchCheck Matching = new();

    /// <summary>The driveline with this driving axle, and with the other one geared alike where they would not match.</summary>
    public static Driveline With(Driveline driveline, Axle? axle)
    {
        var driving = At(driveline, driveline.DrivingPosition, axle);
        return Alike(driveline, axle) is { } other ? At(driving, driveline.OtherPosition, other) : driving;
    }

    /// <summary>The driveline with another driving axle, and with the other one geared alike where that is left as it was and would not match; all else is as changed.</summary>
    public static Driveline Completed(Driveline before, Driveline changed)
        => before.DrivingAxle is not null && changed.OtherAxle == before.OtherAxle && Alike(before, changed.DrivingAxle) is { } other ? At(changed, changed.OtherPosition, other) : changed;

    /// <summary>The other axle as it has to be geared beside this driving one; null where it stays as it is.</summary>
    public static Axle? Alike(Driveline driveline, Axle? axle)
    {
        if (axle?.Ratio is not { } ratio || axle == driveline.DrivingAxle || !DrivenWheels.JoinsBothAxles(driveline)) return null;

        var alone = At(driveline, driveline.DrivingPosition, axle);
        if (Matching.Look(alone, OwnersGoals.None).All(finding => finding.Verdict == Verdict.Fits)) return null;

        return driveline.OtherAxle! with { Ratio = ratio, Quoted = null };
    }

    /// <summary>One shaft turns both, and nothing says that they quarrel.</summary>
    internal static bool Match(Driveline driveline)
        => DrivenWheels.JoinsBothAxles(driveline) && Matching.Look(driveline, OwnersGoals.None).All(finding => finding.Verdict is Verdict.Fits or Verdict.Watch);

    /// <summary>The driveline with another axle there, and nothing else.</summary>
    public static Driveline At(Driveline driveline, Position position, Axle? axle)
        => position == Position.FrontAxle ? driveline with { FrontAxle = axle } : driveline with { RearAxle = axle };
}
