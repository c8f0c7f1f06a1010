using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.RunningGear;

/// <summary>What stands on an axle when its tyres begin to slip, by one rule for everything that asks.</summary>
/// <remarks>
/// <code>weighed: the axle's own mass;   else mass · share on driven wheels, the rest on the other axle;   all wheels driven: half, ± 15 % of the whole</code>
/// <para>
/// A part-time four-wheel drive whose driven share was typed drives one axle on the road: the share is that axle's. The ± of an axle nobody weighed is common
/// practice, from memory.
/// </para>
/// </remarks>
public static class MassOnAxle
{
    /// <summary>Kilograms; null where neither the axle nor the whole was weighed.</summary>
    public static Measured? Of(Driveline driveline, Position axle)
    {
        if ((axle == Position.FrontAxle ? driveline.AxleMasses?.Front : driveline.AxleMasses?.Rear) is { } weighed) return weighed.Value;

        return driveline.Load?.Mass is { } mass && Share(driveline, axle) is { } share ? mass.Value * share : null;
    }

    private static Measured? Share(Driveline driveline, Position axle)
    {
        var driven = driveline.Load?.DrivenShare?.Value;
        var oneAxle = driveline.TransferCase is null or { FrontDrive: FrontDrive.Declutch };
        if (oneAxle && DrivenWheels.OfOneAxle(driveline) is { } share) return axle == driveline.DrivingPosition ? share : 1 - share;

        return driveline.TransferCase is null
            ? axle == driveline.DrivingPosition ? driven : null
            : Measured.From(0.5, Input.Rectangular(Spoken("axle's share of the mass"), 0.15, new Evidence(Spoken("axle load"), _ => Spoken("weigh the axles one by one"))));
    }
}
