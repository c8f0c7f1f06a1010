using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.Tests.Drivelines;

namespace BuildLog.Gearing.Tests.RoadLoad;

/// <summary>The invented car with a flat torque curve and a load, everything exact: 1500 kg, Crr 0.014, 0.8 m², half of it on driven wheels, μ 0.8.</summary>
internal static class InventedLoad
{
    public static readonly VehicleLoad Exact = new()
    {
        Mass = InventedCar.Exactly(1500),
        RollingResistance = InventedCar.Exactly(0.014),
        DragArea = InventedCar.Exactly(0.8),
        DrivenShare = InventedCar.Exactly(0.5),
        Grip = InventedCar.Exactly(0.8),
    };

    public static readonly Driveline Car = WithTorque(200);

    /// <summary>The same torque from 1000 rev/min to the redline of 5000.</summary>
    public static Driveline WithTorque(double newtonMetres)
        => InventedCar.Plain with { Engine = new("four", Redline: InventedCar.Exactly(5000 / 60.0)) { Torque = Flat(newtonMetres) }, Load = Exact };

    public static TorqueCurve Flat(double newtonMetres, double from = 1000, double to = 5000)
        => Curve((from, newtonMetres), (to, newtonMetres));

    public static TorqueCurve Curve(params (double Rpm, double Torque)[] points)
        => TorqueCurve.Of([.. points.Select(point => new TorquePoint(point.Rpm / 60, point.Torque))], Source.Measured, 0);

    public static Pull Pull(Driveline car) => BuildLog.Gearing.RoadLoad.Pull.Of(car)!;

    public static DriveStep Step(Driveline car, string? name = null) => car.Step(name)!;
}
