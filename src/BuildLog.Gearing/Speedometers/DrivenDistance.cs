using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Speedometers;

/// <summary>What a measured distance made of the odometer, and the parts that turned it then.</summary>
/// <param name="Share">q, distance shown per distance driven; unit one.</param>
/// <param name="With">The driveline it was driven with.</param>
/// <remarks>Counts before what is computed from gears, axle and tyres, until one of the parts is changed. Source: common practice.</remarks>
/// <exception cref="RefusedException">A share that is not above zero.</exception>
public sealed record DrivenDistance(Known Share, Driveline With)
{
    /// <summary>q, distance shown per distance driven; above zero.</summary>
    public Known Share { get; init => field = value.AboveZero(Spoken("A distance shown over one driven"), "1.04"); } = Share.AboveZero(Spoken("A distance shown over one driven"), "1.04");

    /// <summary>The parts between the engine and the cable, and the wheels, are still those.</summary>
    public bool HoldsFor(Driveline driveline) => Turning(driveline) == Turning(With);

    private static (Transmission?, TransferCase?, Axle?, TyreSet?, Speedometer?) Turning(Driveline driveline)
        => (driveline.Transmission, driveline.TransferCase, driveline.DrivingAxle, driveline.DrivingTyres, driveline.Speedometer);
}
