using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Speedometers;
using BuildLog.Gearing.Speeds;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using BuildLog.Gearing.Tyres;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Quantities;

/// <summary>A law keeps its dimension: with every length, time, mass or torque in it stretched alike, its result is stretched by a power of that.</summary>
public sealed class DimensionsTests
{
    private static readonly DrivingResistance Road = new(1500, 0.014, 0.8, 1.2);

    /// <summary>The law with all its lengths, times, masses or torques multiplied, and the power of the factor that its result goes with.</summary>
    private sealed record Law(Func<double, double> Stretched, double Power);

    private static readonly Dictionary<string, Law> Laws = new()
    {
        ["length: track"] = new(k => WheelPlace.Track(1.5 * k, 0.02 * k).Value, 1),
        ["length: move of the outer edge"] = new(k => WheelPlace.OuterEdgeMoves(0.03 * k, 0.01 * k).Value, 1),
        ["length: bolt circle"] = new(k => BoltCircle.FromChord(0.0672 * k, 5, Chord.Adjacent).Value, 1),
        ["length: roll-out"] = new(k => RollOut.Of([new RollReading(3, 6.1 * k, "a roll")], new(Loaded: true)).RollingCircumference.Value, 1),
        ["length: slip travel"] = new(k => SlipTravel.Of(1.2 * k, 0.1, 0.1 * k, 0.08 * k).Total.Value, 1),
        ["length: plan angle of a shaft"] = new(k => Inclination.PlanFromOffsets(0.05 * k, 0.01 * k, 1.3 * k).Value, 0),
        ["length: critical speed"] = new(k => CriticalSpeed.Of(new(0.0762 * k, 0.0021 * k, 1.3 * k)).Value, -1),
        ["length: longest shaft for a speed"] = new(k => CriticalSpeed.LongestFor(new(0.0762 * k, 0.0021 * k, 1.3), 60 / k), 1),
        ["length: front against rear, crawling"] = new(k => FourWheelMatch.LowSpeed(0.36 * k, 0.35 * k, 4.1, 4.11).Value, 0),
        ["length: front against rear, at speed"] = new(k => FourWheelMatch.HighSpeed(2.26 * k, 2.2 * k, 4.1, 4.11).Value, 0),
        ["length: load a grade moves"] = new(k => WeightTransfer.ToRear(1500, 0, 0.6 * k, 2.6 * k, 0.1).Value, 0),
        ["length: cable turns"] = new(k => CableTurns.PerMetre(SpeedometerDrive.Gears(8, 21), 4.1, 1, 2 * k).Value, -1),
        ["length: driven gear"] = new(k => DrivenGear.Exactly(SpeedometerDrive.Gears(8, 21), 4.1, 1, 2 * k, 0.6 / k).Value, 0),
        ["length: axle torque at wheel slip"] = new(k => AxleTorque.AtWheelSlip(0.8, 900, 2 * k).Value, 1),
        ["length: shaft torque at wheel slip"] = new(k => ShaftTorque.WheelSlip(0.8, 900, 0.33 * k, 4.1).Value, 1),
        ["length: drag"] = new(k => (Road with { DragArea = 0.8 * k * k }).Drag(20).Value, 2),
        ["length: shaft speed from the road"] = new(k => ShaftSpeed.FromRoad(25 * k, 4.1, 2 * k).Value, 0),
        ["length: section on another rim"] = new(k => SectionOnRim.Of(TyreSizeText.Read("205/70R15").OrRefuse() with { SectionWidth = 0.205 * k }, 0.14 * k).Value - SectionOnRim.Of(TyreSizeText.Read("205/70R15").OrRefuse() with { SectionWidth = 0.205 * k }, 0.15 * k).Value, 1),
        ["length: crawl"] = new(k => LowRange.CrawlSpeed(InventedCar.Plain with { Engine = new("four", InventedCar.Exactly(13)), Tyres = InventedCar.Rolling(2 * k) })!.Value, 1),
        ["time: crawl"] = new(k => LowRange.CrawlSpeed(InventedCar.Plain with { Engine = new("four", InventedCar.Exactly(13 * k)) })!.Value, 1),
        ["length: backspace"] = new(k => WheelPlace.Backspace(0.15 * k, 0.02 * k).Value - WheelPlace.Backspace(0, 0).Value, 1),
        ["time: road speed"] = new(k => new SpeedRelation { EngineSpeed = 50 * k, Gear = 1.4, Axle = 4.1, Circumference = 2 }.Solved().RoadSpeed!.Value, 1),
        ["time: axle from a road test"] = new(k => new SpeedRelation { RoadSpeed = 25 * k, EngineSpeed = 50 * k, Gear = 1, Circumference = 2 }.Solved().Axle!.Value, 0),
        ["time: shaft speed from the engine"] = new(k => ShaftSpeed.FromEngine(50 * k, 0.8).Value, 1),
        ["time: torsional acceleration"] = new(k => TorsionalAcceleration.Of(0.01, 50 * k).Value, 2),
        ["time: drag"] = new(k => Road.Drag(20 * k).Value, 2),
        ["time: load a braking moves"] = new(k => WeightTransfer.ToRear(1500, -5 * k * k, 0.6, 2.6).Value, 2),
        ["mass: rolling resistance"] = new(k => (Road with { Mass = 1500 * k }).At(0).Value, 1),
        ["mass: load a grade moves"] = new(k => WeightTransfer.ToRear(1500 * k, 0, 0.6, 2.6, 0.1).Value, 1),
        ["mass: axle torque at wheel slip"] = new(k => AxleTorque.AtWheelSlip(0.8, 900 * k, 2).Value, 1),
        ["mass: startability"] = new(k => Startability.Gradient(180 * k, 13, 800, 4400 * k), 0),
        ["torque: low gear at the shaft"] = new(k => ShaftTorque.LowGear(240 * k, 3.5, 0.85, 1, 2.72).Value, 1),
        ["torque: stall speed behind another engine"] = new(k => Converter.StallBehind(30, 200 * k, 250 * k).Value, 0),
        ["length: top speed at the redline"] = new(k => TopSpeed.Of(InventedLoad.Pull(InventedLoad.WithTorque(300 * k) with { Tyres = InventedCar.Rolling(2 * k) }))!.Speed.Value, 1),
        ["mass: top speed where the power ends it"] = new(k => TopSpeed.Of(InventedLoad.Pull(Laden(k, 60)))!.Speed.Value, 0),
        ["mass: hill held"] = new(k => InventedLoad.Pull(Laden(k, 200)).Hill(InventedLoad.Step(Laden(k, 200)), 25)!.Value, 0),
        ["mass: hill started on"] = new(k => HillStart.Of(Laden(k, 60))!.Gradient.Value, 0),
        ["length: hill started on"] = new(k => HillStart.Of(InventedLoad.WithTorque(60 * k) with { Tyres = InventedCar.Rolling(2 * k) })!.Gradient.Value, 0),
        ["mass: load at slip"] = new(k => LoadAtSlip.Of(Slipping(k, 1), Position.RearAxle)!.Value, 1),
        ["length: load at slip"] = new(k => LoadAtSlip.Of(Slipping(1, k), Position.RearAxle)!.Value, 0),
        ["mass: weighing"] = new(k => Weighed(k).Whole!.Value, 1),
        ["mass: a weighing's gap"] = new(k => Weighed(k).Gap!.Value, 1),
        ["mass: how sure a weighing is"] = new(k => Weighed(k).Front!.StandardUncertainty, 1),
        ["pressure: J1349 without its friction"] = new(k => PowerCorrection.J1349(90e3 * k, 25) + 0.18, -1),
        ["temperature: J1349 without its friction"] = new(k => PowerCorrection.J1349(99e3, (280 * k) - 273) + 0.18, 0.5),
        ["torque: power"] = new(k => TorqueCurve.Of([new(20, 180 * k), new(60, 200 * k)]).PeakPower.Value, 1),
    };

    // Mass, drag and torque together are forces together.
    private static Driveline Laden(double k, double torque) => InventedLoad.WithTorque(torque * k) with
    {
        Load = InventedLoad.Exact with { Mass = InventedCar.Exactly(1500 * k), DragArea = InventedCar.Exactly(0.8 * k) },
    };

    private static Driveline Slipping(double masses, double lengths) => InventedLoad.Car with
    {
        AxleMasses = new(InventedCar.Exactly(820 * masses), InventedCar.Exactly(620 * masses)),
        Load = InventedLoad.Exact with { GravityHeight = InventedCar.Exactly(0.55 * lengths), Wheelbase = InventedCar.Exactly(2.6 * lengths) },
    };

    // 100 kg apart, at steps of 20 kg: a contradiction.
    private static Weighing Weighed(double k) => Weighing.Of([Display(OnThePlate.Front, 620 * k), Display(OnThePlate.Rear, 560 * k), Display(OnThePlate.Whole, 1280 * k)], 20 * k);

    private static WeighReading Display(OnThePlate on, double kilograms) => new(on, new Typed(kilograms, Units.Kilogram, ""), "");

    public static TheoryData<string> Names => [.. Laws.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void What_is_stretched_alike_stretches_the_result_by_its_power(string name)
        => Gen.Double[0.8, 1.25].Sample(factor =>
        {
            var expected = Laws[name].Stretched(1) * Math.Pow(factor, Laws[name].Power);

            Assert.Equal(expected, Laws[name].Stretched(factor), Math.Abs(expected) * 1e-9);
        });
}
