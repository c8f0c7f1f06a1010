using BuildLog.Data.Components;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Speedometers;

namespace BuildLog.Data.Sessions;

/// <summary>Measured distances driven, and what the odometer made of them. It is of the vehicle: the cable's gears, the axle and the tyres speak in it.</summary>
public sealed class SpeedometerRunSession : Session
{
    public SpeedometerRunSession(Vehicle vehicle) => VehicleId = vehicle.Id;

    internal SpeedometerRunSession() { }

    public override Later Method => new Later("speedometer run");

    /// <summary>How far off the true distance may be, as typed.</summary>
    public string Tape { get; set; } = "10 m";

    /// <summary>The smallest step of the odometer's drum, as typed.</summary>
    public string Step { get; set; } = "0.1 km";

    /// <summary>What the readings give.</summary>
    /// <exception cref="RefusedException">They give nothing.</exception>
    public Reading Result()
        => OdometerRun.Of([.. Readings.Select(text => RunReading.Read(text).OrRefuse())], RunReading.ReadDistance(Tape).OrRefuse().Value, RunReading.ReadDistance(Step).OrRefuse().Value);

    internal Known Share => new(Result().Share, Source.Measured, Says);

    public override void Check() => _ = Result();

    internal override bool Measures(Component? component) => component is null && VehicleId is not null;
}
