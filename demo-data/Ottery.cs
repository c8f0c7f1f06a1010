using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Goals;
using BuildLog.Data.Sessions;
using BuildLog.Data.Specs;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Tyres;

namespace BuildLog.DemoData;

/// <summary>The tourer that was handed over: an overdrive unit, bias tyres, and an axle counted with both wheels turning.</summary>
internal static class Ottery
{
    public static void Enter(Shop shop)
    {
        var vehicle = shop.Add(new Vehicle
        {
            Name = "Ottery",
            Description = "open tourer of 1955",
            State = VehicleState.HandedOver,
            Owner = "Rufus Keel",
            ChassisNumber = "OT 5529",
            Registration = "KEE 55",
            OdometerUnit = OdometerUnit.Miles,
            Notes = "Open tourer. Handed over with its sheet in September 2024.",
        });
        shop.Add(new CruiseGoalEntry(vehicle) { Speed = "60 mph", EngineSpeed = "2550 rpm" });

        var engine = shop.Add(new EngineComponent
        {
            Name = "Corvane 2.1 four",
            SerialNumber = "CV21-7715",
            Donor = "its own",
            Idle = Noted.EngineSpeed("750 rpm", Source.Measured),
            Redline = Noted.EngineSpeed("5200 rpm", Source.OwnersWord),
        }.LookedAt("Corvane four"));
        var gearbox = shop.Add(new TransmissionComponent
        {
            Name = "Delmere D4 light",
            SerialNumber = "D4L-1123",
            Donor = "its own",
            Gears = TransmissionComponent.GearsFrom(Source.MakersData, "3.41", "2.00", "1.37", "1.00"),
        }.LookedAt("Corvane four", Joints.FineSpline, Joints.FineSpline));
        var overdrive = shop.Add(new OverdriveComponent
        {
            Name = "Delmere step-up unit",
            SerialNumber = "SU-338",
            Donor = "swap meet at Ferrow",
            OverdriveRatio = Noted.Ratio("0.78", RatioRange.Overdrive, Source.MakersData),
            Output = Joints.LightFlange,
        });
        var shortAxle = shop.Add(new AxleComponent
        {
            Name = "Harrow light axle, short",
            SerialNumber = "HR-L-209",
            Donor = "its own",
            Shelf = "rack B, bottom",
            StatedRatio = Noted.Ratio("4.3", RatioRange.Axle, Source.OwnersWord),
            ParkingBrake = Presence.Fitted,
            PinionFlange = Joints.LightFlange,
        });
        var axle = shop.Add(new AxleComponent
        {
            Name = "Harrow light axle, long",
            SerialNumber = "HR-L-311",
            Donor = "saloon wreck at Ferrow",
            StatedRatio = Noted.Ratio("3.90", RatioRange.Axle, Source.Tag),
            ParkingBrake = Presence.Fitted,
            PinionFlange = Joints.LightFlange,
        });
        var propshaft = shop.Add(new PropshaftComponent
        {
            Name = "Ottery's own propshaft",
            Donor = "its own",
            Pieces =
            [
                new(Noted.Of(SpecSheet.ShaftOuter, "76.2 mm", Source.Measured), Noted.Of(SpecSheet.ShaftWall, "2.1 mm", Source.Measured),
                    Noted.Of(SpecSheet.ShaftLength, "1240 mm", Source.Measured), Yokes.InLine),
            ],
            FrontEnd = Joints.LightFlange,
            RearEnd = Joints.LightFlange,
        });
        var tyres = shop.Add(new WheelSetComponent
        {
            Name = "Tarn 165/80-15 on wires",
            SizeText = "165/80-15",
            Construction = Construction.Bias,
            Donor = "bought new",
        });

        shop.Fit(engine, vehicle, Position.Engine, new(2024, 3, 2), "38 411", "rebuilt");
        shop.Fit(gearbox, vehicle, Position.Transmission, new(2024, 3, 2), "38 411", "rebuilt with the engine");
        shop.Fit(propshaft, vehicle, Position.Propshaft, new(2024, 3, 16), "38 411", "balanced, new joints");
        shop.Fit(shortAxle, vehicle, Position.RearAxle, new(2024, 3, 23), "38 411", "its own, new seals");
        shop.Fit(tyres, vehicle, Position.Tyres, new(2024, 4, 6), "38 412", "right size for the arches");
        shop.Add(new RollOutSession(tyres)
        {
            Date = new(2024, 4, 6),
            Construction = Construction.Bias,
            Conditions = "loose wheel along the bench rail",
            Pressure = "26 psi",
            Readings = ["1:2028mm", "2:4057mm"],
        });
        shop.Fit(axle, vehicle, Position.RearAxle, new(2024, 6, 15), "39 020 mi", "too busy at 60; the long one from Ferrow");
        shop.Add(new TurnCountSession(axle, vehicle)
        {
            Date = new(2024, 6, 16),
            Wheels = Wheels.Together,
            Helper = "Rufus Keel",
            Conditions = "rolled along the yard, both wheels on the ground",
            Readings = ["10:39", "20:78"],
        });
        shop.Add(new RollOutSession(tyres, vehicle)
        {
            Date = new(2024, 6, 16),
            Loaded = true,
            Construction = Construction.Bias,
            Helper = "Rufus Keel",
            Conditions = "same run along the yard",
            Pressure = "26 psi",
            Readings = ["2:12 ft 8 in", "4:25 ft 4 in", "6:38 ft"],
        });
        shop.Fit(overdrive, vehicle, Position.Overdrive, new(2024, 8, 10), "39 544", "Rufus wants it quiet at 60");
    }
}
