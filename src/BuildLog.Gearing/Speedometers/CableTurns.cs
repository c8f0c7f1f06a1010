using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Speedometers;

/// <summary>Cable turns, or pulses, over a distance.</summary>
/// <remarks>
/// <code>N = k · i / C,   i = i_axle (propshaft), i_axle · i_transfer (gearbox output), 1 (wheel)</code>
/// <para>N per metre; k cable turns (drive / driven teeth · correction) or pulses per turn of the shaft; C rolling circumference, m.</para>
/// <para>Per kilometre it is the dial's W, per mile its turns per mile: 1000 N and 1609.344 N. Say which, and whether at the wheel or the shaft.</para>
/// <para>Uncertainty: teeth are counted; C gives nearly all of it. Source: a club engineer's article (867 · 3.7 · 5/12 = 1336.6 a mile).</para>
/// </remarks>
public static class CableTurns
{
    /// <summary>Per metre.</summary>
    public static Measured PerMetre(SpeedometerDrive drive, Measured axle, Measured transfer, Measured circumference)
        => drive.PerTurn * ShaftTurns(drive.Pickup, axle, transfer) / circumference;

    /// <summary>Per metre, from a push along the floor: turns counted at the cable's end over a distance.</summary>
    /// <remarks>Not with one wheel jacked up and turned: that gives half (the differential).</remarks>
    public static Measured Pushed(Measured turns, Measured distance) => turns / distance;

    /// <summary>Turns of the shaft the drive sits on, per wheel turn.</summary>
    internal static Measured ShaftTurns(Pickup pickup, Measured axle, Measured transfer) => pickup switch
    {
        Pickup.Propshaft => axle,
        Pickup.GearboxOutput => axle * transfer,
        Pickup.Wheel => 1,
        _ => throw new ArgumentOutOfRangeException(nameof(pickup), pickup, "No such pickup."),
    };
}
