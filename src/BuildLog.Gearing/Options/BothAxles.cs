using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Gearing.Options;

/// <summary>The two axles of a four-wheel drive turn together: gears that change one change the other as well.</summary>
internal static class BothAxles
{
    private static readonly FourWheelMatchCheck Match = new();

    /// <summary>The driveline with this driving axle, and with the other one geared alike where they would not match.</summary>
    public static Driveline With(Driveline driveline, Axle? axle)
    {
        var driving = At(driveline, driveline.DrivingPosition, axle);
        return Alike(driveline, axle) is { } other ? At(driving, driveline.OtherPosition, other) : driving;
    }

    /// <summary>The other axle as it has to be geared beside this driving one; null where it stays as it is.</summary>
    public static Axle? Alike(Driveline driveline, Axle? axle)
    {
        if (axle?.Ratio is not { } ratio || axle == driveline.DrivingAxle || !DrivenWheels.JoinsBothAxles(driveline)) return null;

        var alone = At(driveline, driveline.DrivingPosition, axle);
        if (Match.Look(alone, OwnersGoals.None).All(finding => finding.Verdict == Verdict.Fits)) return null;

        var other = (driveline.OtherPosition == Position.FrontAxle ? driveline.FrontAxle : driveline.RearAxle)!;
        return other with { Ratio = ratio, Quoted = null };
    }

    private static Driveline At(Driveline driveline, Position position, Axle? axle)
        => position == Position.FrontAxle ? driveline with { FrontAxle = axle } : driveline with { RearAxle = axle };
}
