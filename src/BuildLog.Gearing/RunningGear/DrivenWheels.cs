using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.RunningGear;

/// <summary>What part of the mass stands on driven wheels, by whether a part-time front axle is engaged.</summary>
/// <remarks>
/// <code>all wheels driven: 1;   one axle, and part-time on the road: the driving axle's mass / both;   part-time in the low range: 1</code>
/// <para>
/// Axles that were weighed tell it; what somebody typed holds where they were not. Of a part-time drive it is the road's, unless it says all of the mass. The low
/// range is for where the front axle is engaged, whatever joins it.
/// </para>
/// <para>Source: definition.</para>
/// </remarks>
public static class DrivenWheels
{
    private const double All = 0.99;

    /// <summary>On a hard road; null where nobody weighed the axles or told.</summary>
    public static Measured? ShareOnTheRoad(Driveline driveline)
        => IsPartTime(driveline) ? Weighed(driveline) ?? OfOneAxle(driveline) : Always(driveline);

    /// <summary>In the lowest gear and range; null where nobody weighed the axles or told.</summary>
    public static Measured? ShareInLowRange(Driveline driveline) => IsPartTime(driveline) ? 1 : Always(driveline);

    /// <summary>What was told, where it speaks of one axle; null where it says that all wheels are driven.</summary>
    internal static Measured? OfOneAxle(Driveline driveline) => driveline.Load?.DrivenShare?.Value is { Value: < All } share ? share : null;

    /// <summary>Whether a share that was told means all wheels, and they can be driven.</summary>
    internal static bool IsOfAllWheels(Driveline driveline, Measured told) => told.Value >= All && JoinsBothAxles(driveline);

    private static bool IsPartTime(Driveline driveline) => JoinsBothAxles(driveline) && driveline.TransferCase!.FrontDrive == FrontDrive.Declutch;

    /// <summary>A four-wheel drive, both axles fitted.</summary>
    public static bool JoinsBothAxles(Driveline driveline) => driveline is { TransferCase: not null, FrontAxle: not null, RearAxle: not null };

    private static Measured? Always(Driveline driveline)
        => JoinsBothAxles(driveline) ? driveline.Load?.DrivenShare?.Value ?? 1 : Weighed(driveline) ?? driveline.Load?.DrivenShare?.Value;

    /// <summary>The driving axle's part of both axle masses; null where one is not known.</summary>
    internal static Measured? Weighed(Driveline driveline)
    {
        if (driveline.AxleMasses is not { Front.Value: { } front, Rear.Value: { } rear }) return null;

        return (driveline.DrivingPosition == Position.FrontAxle ? front : rear) / (front + rear);
    }
}
