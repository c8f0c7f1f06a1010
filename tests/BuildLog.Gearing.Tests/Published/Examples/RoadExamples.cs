using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.Speeds;
using BuildLog.Gearing.Tests.Drivelines;

namespace BuildLog.Gearing.Tests.Published.Examples;

/// <summary>Speeds, what the road takes, and what a hill leaves.</summary>
internal static class RoadExamples
{
    // 1800 kg, Cd·A 1.17 m², 0.015, air of 1.2 kg/m³, at 100 km/h; the sheet's g is 9.81, 0.034 % more than the standard one.
    private const double V = 100 / 3.6;
    private const double SheetEfficiency = 0.9;
    private static readonly DrivingResistance Road = new(1800, 0.015, 1.17, 1.2);

    public static IEnumerable<Figure> Printed =>
    [
        Figure.ToPlaces("D1 2800 rev/min, 3.278, 1.727 m: km/h (trade text)", 88.5, 1, Units.KilometrePerHour.FromBase(Going(2800, 3.278, 1.727).RoadSpeed!.Value)),

        // With 336 instead of 336.135 the prints are 0.04 % low, up to 1.4 rev/min.
        new("D2 70 mph, 4.11, 28 in: rev/min (trade text)", 3452, Turning(70, 1, 4.11, 28), 2),
        new("D3 70 mph, 2.41, 28 in: rev/min (trade text)", 2024, Turning(70, 1, 2.41, 28), 2),
        new("D5 70 mph, 2.73, 26 in: rev/min (trade text)", 2469, Turning(70, 1, 2.73, 26), 2),
        new("D6 70 mph, 3.00, overdrive 0.73, 30 in: rev/min (trade text)", 1717, Turning(70, 0.73, 3.00, 30), 2),

        // 10.1286, cut off.
        new("D7 first gear 3.06, axle 3.31 (trade text)", 10.128, new SpeedRelation { Gear = 3.06, Axle = 3.31 }.OverallRatio.Value, 0.001),
    ];

    public static IEnumerable<Figure> WorkedOut =>
    [
        // In print 2528, which takes an axle of 3.01.
        new("D4 70 mph, 3.07, 28 in: rev/min (trade text)", 2578.8, Turning(70, 1, 3.07, 28), 2),

        // Its ratios are rounded to 3.50, 2.42, 1.67, 1.157, 0.80.
        new("D8 five gears in equal steps from 3.50 to 0.80: the drop of a shift (lecture slides)", 1.44625, Drop(3.50, 2.42, 1.67, 1.157, 0.80), 0.001),
        new("D9 power on the level, efficiency 0.9: kW", 24.8931, Road.At(V).Value * V / SheetEfficiency / 1000, 0.005),

        // The sheet also leaves the cosine off the rolling resistance.
        new("D10 power up 6 %, efficiency 0.9: kW", 57.5344, Road.At(V, 0.06).Value * V / SheetEfficiency / 1000, 0.05),
        WorkedExamples.Sheet("D11 180 lb·ft, 13.055, 800 turns a mile, 4400 lb: startability, % (equipment maker's handbook)", 39.9303, 100 * Startability.Gradient(180, 13.055, 800, 4400)),

        // A rule of thumb, 3 % for each 1000 ft above 500 ft: 2 % of the whole.
        new("D12 225 hp at 500 ft taken to 4500 ft: hp (trade text)", 198, 225 * Left(4500) / Left(500), 4),
        WorkedExamples.Sheet("D13 300 N·m, 13.055, efficiency 0.85, 2.05 m: force at the wheels, N", 10203.4, AtWheels(300, 3.5, 0.85).Value),
        new("D14 200 N·m, 3.73 · 0.70, efficiency 0.9: hill held at 100 km/h, %", 3.5924,
            100 * Hills.Held((AtWheels(200, 0.70, SheetEfficiency) - Road.Drag(V)) / Road.Weight, Road.RollingResistance)!.Value, 0.003),
    ];

    private static SpeedRelation Going(double rpm, double axle, double circumference)
        => new SpeedRelation { EngineSpeed = rpm / 60, Gear = 1, Axle = axle, Circumference = circumference }.Solved();

    private static double Turning(double mph, double overdrive, double axle, double inches)
        => 60 * new SpeedRelation { RoadSpeed = mph * Units.MilePerHour.Factor, Gear = 1, Overdrive = overdrive, Axle = axle, Circumference = Math.PI * inches * 0.0254 }.Solved().EngineSpeed!.Value;

    // By the mean of the four drops of engine speed.
    private static double Drop(params double[] ratios)
    {
        var car = InventedCar.Plain with { Transmission = new("box", [.. ratios.Select((ratio, k) => InventedCar.Gear($"{k + 1}", ratio))]) };
        return GearSpeeds.Of(car)!.Upshifts(5000 / 60.0).Average(shift => 5000 / 60.0 / shift.EngineSpeed.Value);
    }

    // Axle 3.73 on 2.05 m; the engine's own losses are exchanged for the sheet's.
    private static Measured AtWheels(double torque, double gear, double efficiency)
    {
        var car = new Driveline
        {
            Engine = new("engine") { Torque = TorqueCurve.Of([new(5, torque), new(100, torque)], spread: 0) },
            Transmission = new("box", [InventedCar.Gear("1", gear)]),
            RearAxle = InventedCar.Axle(3.73),
            Tyres = InventedCar.Rolling(2.05),
            Load = new() { Mass = InventedCar.Exactly(1800), DragArea = InventedCar.Exactly(1.17), RollingResistance = InventedCar.Exactly(0.015) },
        };
        var step = car.Step(null)!;
        return Pull.Of(car)!.Force(step, 10)! * (efficiency / DrivelineEfficiency.Of(car, step).Value);
    }

    private static double Left(double feet) => AltitudeLoss.Factor(Induction.NaturallyAspirated, Atmosphere.At(feet * 0.3048));
}
