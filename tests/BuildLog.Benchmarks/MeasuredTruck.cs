using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Benchmarks;

/// <summary>An invented truck as the record knows one: counted axle, rolled tyre, torque curve, load, goals.</summary>
internal static class MeasuredTruck
{
    public static readonly Driveline Whole = new()
    {
        Engine = new("engine", Exactly(13), Exactly(75)) { Torque = TorqueCurve.Of([new(1000 / 60.0, 180), new(2500 / 60.0, 240), new(4500 / 60.0, 190)]), LowestPull = Exactly(22) },
        Transmission = new("four-speed", [Gear("1", 3.5), Gear("2", 2.1), Gear("3", 1.4), Gear("4", 1)]) { TorqueRating = Exactly(300) },
        TransferCase = new("transfer case", Exactly(1), Exactly(2.72)),
        RearAxle = new("axle", new(Axle(), Source.Measured)) { TorqueRating = Exactly(2500) },
        Tyres = new("tyres", new(Tyre(), Source.Measured), TyreSizeText.Read("P235/75R15 105S").OrRefuse()),
        Load = new() { Mass = Exactly(1800), DragArea = Exactly(1.1), RollingResistance = Exactly(0.014), DrivenShare = Exactly(0.55) },
    };

    public static readonly OwnersGoals Goals = new([CruiseGoal.Read("90 km/h", "2700").OrRefuse()])
    {
        Hill = HillGoal.Read("5 %", "80 km/h").OrRefuse(),
        HillStart = HillStartGoal.Read("20 %").OrRefuse(),
        OverallLow = OverallLowGoal.Read("35").OrRefuse(),
        TopSpeed = TopSpeedGoal.Read("130 km/h").OrRefuse(),
    };

    private static Gear Gear(string name, double ratio) => new(name, Exactly(ratio));

    private static Known Exactly(double value) => new(value, Source.MakersData);

    private static Measured Axle() => TurnCount.Of([TurnReading.Read("20:41", Wheels.OneHeld).OrRefuse()], new CountPrecision(0.25, 0.02)).Ratio;

    private static Measured Tyre() => RollOut.Of([RollReading.Read("5:11300mm").OrRefuse()], new RollOutPrecision(Loaded: true)).RollingCircumference;
}
