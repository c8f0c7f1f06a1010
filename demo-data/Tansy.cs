using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Goals;
using BuildLog.Data.Sessions;
using BuildLog.Data.Specs;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;

namespace BuildLog.DemoData;

/// <summary>The estate on the road: teeth counted, tyres rolled out, the cruise fits, and its folder is full: engine curve, masses, work, money, pictures.</summary>
internal static class Tansy
{
    public static void Enter(Shop shop)
    {
        var vehicle = shop.Add(new Vehicle
        {
            Name = "Tansy",
            Description = "estate of 1988, five doors",
            State = VehicleState.OnTheRoad,
            Owner = "Dorrit Ames",
            ChassisNumber = "TN-88-3105",
            Registration = "D 3105 A",
            OdometerUnit = OdometerUnit.Miles,
            BodyClass = "saloon, 1980–95",
            RollingClass = "modern radial",
            Mass = Noted.Of(Spec.Mass, "1360 kg ± 10 kg", Source.Measured),
            FrontAxleMass = Noted.Of(Spec.FrontAxleMass, "830 kg ± 5 kg", Source.Measured),
            RearAxleMass = Noted.Of(Spec.RearAxleMass, "860 kg ± 5 kg", Source.Measured),
            Notes = "Estate, daily use.",
        });
        shop.Add(new CruiseGoalEntry(vehicle) { Speed = "70 mph", EngineSpeed = "2900 rpm" });

        var engine = shop.Add(new EngineComponent
        {
            Name = "Corvane 2.3 four",
            SerialNumber = "CV23-90411",
            Donor = "its own",
            Idle = Noted.EngineSpeed("800 rpm", Source.MakersData),
            Redline = Noted.EngineSpeed("5800 rpm", Source.MakersData),
            TorquePoints = Noted.Of(Spec.TorquePoints, "1200:158 Nm; 2400:182 Nm; 3200:188 Nm; 5400:156 Nm", Source.MakersData),
        }.LookedAt("Corvane four"));
        var fourSpeed = shop.Add(new TransmissionComponent
        {
            Name = "Delmere D4, Tansy's own",
            SerialNumber = "D4-33870",
            Donor = "its own",
            Shelf = "rack A, top",
            Gears = TransmissionComponent.GearsFrom(Source.MakersData, "3.54", "2.12", "1.38", "1.00"),
            Notes = "Jumps out of second.",
        }.LookedAt("Corvane four", Joints.FineSpline, Joints.FineSpline));
        var fiveSpeed = shop.Add(new TransmissionComponent
        {
            Name = "Delmere D5 five-speed",
            SerialNumber = "D5-00214",
            Donor = "Tolland yard, from a late saloon",
            Gears = TransmissionComponent.GearsFrom(Source.MakersData, "3.32", "2.05", "1.38", "1.00", "0.81"),
            ClutchRating = Noted.Of(Spec.ClutchRating, "260 Nm", Source.MakersData),
            SpeedometerFeed = SpeedometerFeed.Cable,
        }.LookedAt("Corvane four", Joints.FineSpline, Joints.FineSpline));
        var axle = shop.Add(new AxleComponent
        {
            Name = "Harrow axle 41/11",
            SerialNumber = "HR-5-2218",
            Donor = "its own",
            Teeth = new Teeth(41, 11),
            StatedRatio = Noted.Ratio("3.73", RatioRange.Axle, Source.Tag),
            ParkingBrake = Presence.Fitted,
        });
        var lowTyres = shop.Add(new WheelSetComponent
        {
            Name = "Norwell 185/60R15 on alloys",
            SizeText = "185/60R15 84H",
            StatedCircumference = Noted.Length("1.84 m", Source.MakersData),
            Donor = "came with it",
            Shelf = "loft",
        });
        var speedometer = shop.Add(new SpeedometerComponent
        {
            Name = "Tansy's own speedometer",
            Donor = "its own",
            TurnsWanted = Noted.Of(Spec.TurnsWanted, "870", Source.Tag),
            Per = OdometerUnit.Miles,
            DriveTeeth = 6,
            DrivenTeeth = 22,
            SpeedometerFeed = SpeedometerFeed.Cable,
        });
        var tyres = shop.Add(new WheelSetComponent
        {
            Name = "Norwell 195/65R15 on alloys",
            SizeText = "195/65R15 91H",
            Worn = Noted.Length("2 mm", Source.Measured),
            Donor = "bought new",
        });

        shop.Fit(engine, vehicle, Position.Engine, new(2024, 4, 13), "92 118", "back in after a head gasket");
        shop.Fit(fourSpeed, vehicle, Position.Transmission, new(2024, 4, 13), "92 118", "its own, for now");
        shop.Fit(axle, vehicle, Position.RearAxle, new(2024, 4, 13), "92 118", "cover off, teeth counted, new gasket");
        shop.Fit(lowTyres, vehicle, Position.Tyres, new(2024, 4, 13), "92 118", "as it came");
        shop.Fit(speedometer, vehicle, Position.Speedometer, new(2024, 4, 13), "92 118", "its own");
        shop.Fit(tyres, vehicle, Position.Tyres, new(2024, 4, 20), "92 118", "legal tread");
        shop.Add(new RollOutSession(tyres, vehicle)
        {
            Date = new(2024, 5, 4),
            Loaded = true,
            Helper = "Dorrit Ames",
            Conditions = "level car park, half a tank, driver aboard",
            Pressure = "2.2 bar",
            Readings = ["1:1936mm", "3:5807 mm", "5:9.68 m"],
        });
        shop.Add(new GearCountSession(fiveSpeed, "5")
        {
            Date = new(2024, 7, 20),
            ReadTo = "0.1",
            Helper = "Piet Arlow",
            Conditions = "on the bench, paper disc on the input",
            Readings = ["10:8.1", "20:16.2"],
        });
        shop.Fit(fiveSpeed, vehicle, Position.Transmission, new(2024, 7, 27), "94 870", "own box jumps out of second, and 70 mph is tiring");

        TansyFolder.Enter(shop, vehicle, fiveSpeed);
    }
}
