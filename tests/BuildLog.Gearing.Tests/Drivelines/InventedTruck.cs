using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Speedometers;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.Tests.Drivelines;

/// <summary>An invented four-wheel drive on which everything is known, and every goal is set.</summary>
internal static class InventedTruck
{
    private static readonly Bolting Studs = new(6, InventedShaft.Known(0.1397), InventedShaft.Known(0.106), "M12×1.5", Seat.Cone);

    public static readonly Driveline Whole = InventedCar.Plain with
    {
        Engine = new("engine", Redline: InventedShaft.Known(4500 / 60.0)) { Torque = TorqueCurve.Of([new(1000 / 60.0, 180), new(2500 / 60.0, 240), new(4500 / 60.0, 190)]) },
        TransferCase = new("transfer case", InventedCar.Exactly(1), InventedCar.Exactly(2.72)) { FrontDrive = FrontDrive.Declutch },
        Propshaft = Shaft(InventedShaft.Piece),
        FrontPropshaft = Shaft(new ShaftPiece(InventedShaft.Known(0.05), InventedShaft.Known(0.003), InventedShaft.Known(0.7), Yokes.InLine)),
        RearAxle = Axle(4.10),
        FrontAxle = Axle(4.11),
        Tyres = new TyreSet("tyres", InventedCar.Exactly(InventedCar.Of(2.26, 0.01, "roll-out", _ => "roll further")), TyreSizeText.Read("P235/75R15 105S").OrRefuse())
        {
            LoadedRadius = InventedShaft.Known(0.345),
            Wheel = new(InventedShaft.Known(7 * 0.0254), InventedShaft.Known(-0.012), Studs),
            PassengerOnTruck = true,
        },
        AxleMasses = new(InventedShaft.Known(900), InventedShaft.Known(1050)),
        Speedometer = new("speedometer", InventedShaft.Known(0.637), SpeedometerDrive.Gears(8, 23)),
    };

    public static readonly OwnersGoals Goals = new([InventedCar.Goal("90 km/h", "2700")])
    {
        TopSpeed = TopSpeedGoal.Read("130 km/h").OrRefuse(),
        TyreDiameter = LengthLimit.ReadTyreDiameter("31 in").OrRefuse(),
        TyreWidth = LengthLimit.ReadTyreWidth("245 mm").OrRefuse(),
        Track = LengthLimit.ReadTrack("1.5 m").OrRefuse(),
    };

    private static Propshaft Shaft(ShaftPiece piece) => new("propshaft", piece)
    {
        Line = InventedShaft.Line(4, 7, 4),
        JointRating = InventedShaft.Known(1200),
        Slip = new(InventedShaft.Known(0.1), InventedShaft.Known(0.035)),
    };

    private static Axle Axle(Measured ratio) => InventedCar.Axle(ratio) with
    {
        Hub = Studs,
        HubFaces = InventedShaft.Known(1.45),
        Travel = new(InventedShaft.Known(0.1), InventedShaft.Known(0.08)),
    };
}
