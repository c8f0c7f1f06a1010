using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.Speeds;

namespace BuildLog.Gearing.Tests.Published.Examples;

/// <summary>Gearboxes, converters, transfer cases, and what they make of the engine's torque.</summary>
internal static class GearboxExamples
{
    public static IEnumerable<Figure> Printed =>
    [
        Figure.ToPlaces("B1 25/21 · 36/17 (a gearbox builder's page)", 2.52, 2, TwoStageGear.Read("25/21 x 36/17").OrRefuse().Ratio),
        Figure.ToPlaces("B6 6.32 · 2.72 · 4.56 (trade press)", 78.39, 2, LowRange.OverallRatio(Truck(6.32, 2.72, 4.56))!.Value),
        Figure.ToPlaces("B7 the same behind another 4:1 box (trade press)", 313.55, 2, LowRange.OverallRatio(Truck(6.32 * 4, 2.72, 4.56))!.Value),
        Figure.ToPlaces("B8 200 lb·ft · 15.32, axle 4.56, at one of four wheels: lb·ft (trade press)", 3493, 0, AtOneWheel(200, 15.32, 4.56)),
    ];

    public static IEnumerable<Figure> WorkedOut =>
    [
        // In print 1.41: there 15/21 was rounded to 0.71 before it was turned round.
        WorkedExamples.Sheet("B2 15 of 21 output splines to one input turn (trade text)", 1.4, TurnCount.OfGear([TurnReading.ReadGear("15/21:1").OrRefuse()], new CountPrecision()).Ratio.Value),
        WorkedExamples.Sheet("B3 ring 62, sun 36, ring held", 2.72222, TransferCaseLow.Of(new Planetary(62, 36))),
        WorkedExamples.Sheet("B4 ring 75, sun 30, overdriving", 0.714286, OverdriveUnit.Of(new Planetary(75, 30))),
        WorkedExamples.Sheet("B5 reverse of two planetary sets, sun over ring 0.52", 1.92308, -new SimpsonTrain(new(50, 26), new(50, 26)).Reverse),

        // In print 2141, which takes an axle of 4.11.
        WorkedExamples.Sheet("B9 2084 lb·ft, axle 3.73, at one of four wheels: lb·ft (trade press)", 1943.33, AtOneWheel(200, 10.42, 3.73)),
        WorkedExamples.Sheet("B10 2257 rev/min locked, slip 5 %: rev/min", 2375.79, Slipping(2257, 0.05)),
    ];

    // The print has no losses; the engine's are taken out again.
    private static double AtOneWheel(double torque, double ratio, double axle)
    {
        const double losses = ShaftTorque.ManualEfficiency * ShaftTorque.TransferEfficiency * ShaftTorque.AxleEfficiency;
        var truck = Truck(ratio / 2.72, 2.72, axle) with { Engine = new("engine") { Torque = TorqueCurve.Of([new(20, torque), new(50, torque)]) } };
        return AxleTorque.InLowGear(truck, truck.RearAxle!)!.Value / losses / 4;
    }

    private static Driveline Truck(double first, double low, double axle) => new()
    {
        Transmission = new("box", [new("1", new(first, Source.MakersData))]),
        TransferCase = new("case", null, new(low, Source.MakersData)),
        RearAxle = new("axle", new(axle, Source.MakersData)),
    };

    private static double Slipping(double locked, double slip)
        => 60 * new SpeedRelation { RoadSpeed = locked / 60, Gear = 1, Axle = 1, Circumference = 1, Slip = slip }.Solved().EngineSpeed!.Value;
}
