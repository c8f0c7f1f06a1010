using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Speedometers;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Benchmarks;

/// <summary>An invented four-wheel drive on which somebody has looked at everything: counted axles, rolled tyres, two propshafts, every joint.</summary>
internal static class MeasuredTruck
{
    private const double Degree = Math.PI / 180;

    private static readonly Bolting Studs = new(6, Exactly(0.1397), Exactly(0.106), "M12×1.5", Seat.Cone);

    public static readonly Driveline Whole = new()
    {
        Engine = new("engine", Exactly(13), Exactly(75))
        {
            Torque = TorqueCurve.Of([new(1000 / 60.0, 180), new(2500 / 60.0, 240), new(4500 / 60.0, 190)]),
            LowestPull = Exactly(22),
            Rear = new() { BellHousing = "six", Plate = Plate.Flexplate, PilotBore = Exactly(0.01505), Starter = StarterSide.Left, Turns = Sense.Clockwise },
        },
        Transmission = new("four-speed", [Gear("1", 3.5), Gear("2", 2.1), Gear("3", 1.4), Gear("4", 1)])
        {
            Converter = new Converter(false, Exactly(30)),
            TorqueRating = Exactly(300),
            Front = new()
            {
                BellHousing = "six",
                Spigot = Exactly(0.015),
                InputSpline = "26 × 1 1/8 in",
                DiscSpline = "26 × 1 1/8 in",
                ClutchRating = Exactly(320),
                Starter = StarterSide.Left,
                Turns = Sense.Clockwise,
            },
            ShiftLinkage = Presence.Fitted,
        },
        TransferCase = new("transfer case", Exactly(1), Exactly(2.72))
        {
            FrontDrive = FrontDrive.Declutch,
            Output = "4 × 80 mm",
            FrontOutput = "4 × 80 mm",
            SpeedometerFeed = SpeedometerFeed.Cable,
        },
        Propshaft = Shaft(1.3),
        FrontPropshaft = Shaft(0.7),
        RearAxle = Axle("20:41") with { TorqueRating = Exactly(4500), ParkingBrake = Presence.Fitted },
        FrontAxle = Axle("20:41.25"),
        Tyres = new("tyres", new(Tyre(), Source.Measured), TyreSizeText.Read("P235/75R15 105S").OrRefuse())
        {
            LoadedRadius = Exactly(0.345),
            Wheel = new(Exactly(7 * 0.0254), Exactly(-0.012), Studs),
        },
        MeasuredAgain = [new(Position.FrontAxle, "ratio", Units.One, new(Counted("20:41.25"), Source.Measured, "today's count"), new(Counted("20:39"), Source.Measured, "an earlier count"))],
        AxleMasses = new(Exactly(850), Exactly(950)),
        Speedometer = new("speedometer", Exactly(0.637), SpeedometerDrive.Gears(8, 23)) { Takes = SpeedometerFeed.Cable },
        RearHanging = new(Exactly(1.02), Exactly(Degree)),
        FrontHanging = new(Exactly(1.02), Exactly(Degree)),
        Load = new() { Mass = Exactly(1800), DragArea = Exactly(1.1), RollingResistance = Exactly(0.014) },
    };

    public static readonly OwnersGoals Goals = new([CruiseGoal.Read("90 km/h", "2700").OrRefuse()])
    {
        Hill = HillGoal.Read("5 %", "80 km/h").OrRefuse(),
        HillStart = HillStartGoal.Read("20 %").OrRefuse(),
        OverallLow = OverallLowGoal.Read("35").OrRefuse(),
        TopSpeed = TopSpeedGoal.Read("130 km/h").OrRefuse(),
        TyreDiameter = LengthLimit.ReadTyreDiameter("31 in").OrRefuse(),
        TyreWidth = LengthLimit.ReadTyreWidth("245 mm").OrRefuse(),
        Track = LengthLimit.ReadTrack("1.5 m").OrRefuse(),
    };

    private static Gear Gear(string name, double ratio) => new(name, Exactly(ratio));

    private static Known Exactly(double value) => new(value, Source.MakersData);

    private static Propshaft Shaft(double length) => new("propshaft", new ShaftPiece(Exactly(0.0762), Exactly(0.0021), Exactly(length), Yokes.InLine))
    {
        Line = [new(Exactly(3 * Degree)), new(Exactly(5 * Degree)), new(Exactly(3 * Degree))],
        JointRating = Exactly(1200),
        Slip = new(Exactly(0.1), Exactly(0.035)),
        FrontEnd = "4 × 80 mm",
        RearEnd = "4 × 80 mm",
    };

    private static Axle Axle(string count) => new("axle", new(Counted(count), Source.Measured))
    {
        Quoted = new(4.1, Source.Tag),
        Hub = Studs,
        HubFaces = Exactly(1.45),
        Travel = new(Exactly(0.1), Exactly(0.08)),
        PinionFlange = "4 × 80 mm",
        Perches = Exactly(1.02),
        PinionToPerch = Exactly(2 * Degree),
    };

    private static Measured Counted(string turns) => TurnCount.Of([TurnReading.Read(turns, Wheels.OneHeld).OrRefuse()], new CountPrecision(0.25, 0.02)).Ratio;

    private static Measured Tyre() => RollOut.Of([RollReading.Read("5:11300mm").OrRefuse()], new RollOutPrecision(Loaded: true)).RollingCircumference;
}
