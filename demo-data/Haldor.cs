using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Goals;
using BuildLog.Data.Jobs;
using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.DemoData;

/// <summary>The 4×4: a transfer case, and a pair of axles changed two days apart, with a miscounted axle in between.</summary>
internal static class Haldor
{
    public static void Enter(Shop shop)
    {
        var vehicle = shop.Add(new Vehicle
        {
            Name = "Haldor",
            Description = "long-wheelbase 4×4 of 1977",
            State = VehicleState.InBuild,
            Owner = "Ilse Marrick",
            ChassisNumber = "HD4-1177-L",
            Registration = "IM 1177",
            Notes = "Long-wheelbase 4×4, carries the mowers.",
        });
        shop.Add(new CruiseGoalEntry(vehicle) { Speed = "90 km/h", EngineSpeed = "2700 rpm", Tolerance = "at most" });

        var engine = shop.Add(new EngineComponent
        {
            Name = "Corvane 3.9 diesel",
            SerialNumber = "CVD39-2260",
            Donor = "ground-power set, Ferrow",
            Idle = Noted.EngineSpeed("600 rpm", Source.Measured),
            Redline = Noted.EngineSpeed("3600 rpm", Source.MakersData),
        }.LookedAt("Corvane industrial"));
        var gearbox = shop.Add(new TransmissionComponent
        {
            Name = "Delmere D4 heavy",
            SerialNumber = "D4H-902",
            Donor = "its own",
            Gears = TransmissionComponent.GearsFrom(Source.MakersData, "4.05", "2.22", "1.42", "1.00"),
        }.LookedAt("Corvane industrial", Joints.CoarseSpline, Joints.CoarseSpline));
        var transferCase = shop.Add(new TransferCaseComponent
        {
            Name = "Marlow M2 transfer case",
            SerialNumber = "M2-4451",
            Donor = "its own",
            High = Noted.Ratio("1.00", RatioRange.Transfer, Source.MakersData),
            Low = Noted.Ratio("2.32", RatioRange.Transfer, Source.MakersData),
            FrontDrive = FrontDrive.Declutch,
            ParkingBrake = Presence.Fitted,
        });
        var shortRear = Axle(shop, "Harrow heavy rear 4.56", "HR-H-120", "its own", new Teeth(41, 9), "rack C");
        var shortFront = Axle(shop, "Harrow heavy front 4.56", "HR-HF-121", "its own", new Teeth(41, 9), "rack C");
        var rear = Axle(shop, "Harrow heavy rear 4.10", "HR-H-388", "Tolland yard, matched pair", new Teeth(41, 10), "");
        var front = shop.Add(new AxleComponent
        {
            Name = "Harrow heavy front 4.10",
            SerialNumber = "HR-HF-389",
            Donor = "Tolland yard, matched pair",
            StatedRatio = Noted.Ratio("4.10", RatioRange.Axle, Source.Tag),
        });
        var tyres = shop.Add(new WheelSetComponent { Name = "Tarn LT235/85R16 on steel", SizeText = "LT235/85R16 120/116Q", Donor = "bought new" });

        shop.Fit(engine, vehicle, Position.Engine, new(2024, 4, 27), "140 220", "the petrol engine was worn out");
        shop.Fit(gearbox, vehicle, Position.Transmission, new(2024, 4, 27), "140 220", "new bearings");
        shop.Fit(transferCase, vehicle, Position.TransferCase, new(2024, 4, 27), "140 220", "new seals");
        shop.Fit(shortRear, vehicle, Position.RearAxle, new(2024, 5, 11), "140 220", "its own");
        shop.Fit(shortFront, vehicle, Position.FrontAxle, new(2024, 5, 11), "140 220", "its own");
        shop.Fit(tyres, vehicle, Position.Tyres, new(2024, 5, 11), "140 220", "mud pattern, to clear the arches");
        shop.Add(new RollOutSession(tyres)
        {
            Date = new(2024, 5, 11),
            Conditions = "one loose wheel along the shed floor",
            Pressure = "3.5 bar",
            Readings = ["1:2531mm", "3:7596mm"],
        });
        shop.Fit(rear, vehicle, Position.RearAxle, new(2024, 10, 5), "143 008", "the diesel runs out of revs at 90 km/h on the old pair");
        shop.Add(new TurnCountSession(front)
        {
            Date = new(2024, 10, 6),
            Wheels = Wheels.OneHeld,
            Conditions = "alone, axle on trestles before it went in",
            Notes = "The third count is half a turn long: the telephone rang. Left in as counted; to be done again on the vehicle.",
            Readings = ["20:41", "20:41", "20:41 1/2"],
        });
        shop.Fit(front, vehicle, Position.FrontAxle, new(2024, 10, 7), "143 008", "has to match the rear");
        shop.Add(new TurnCountSession(front, vehicle)
        {
            Date = new(2024, 10, 8),
            Wheels = Wheels.OneHeld,
            Helper = "Ilse Marrick",
            Conditions = "transfer case in two-wheel drive, front on stands",
            Readings = ["10:20 1/2", "20:41"],
        });
        var shaft = shop.Add(new Job(vehicle) { Title = "front propshaft", State = JobState.UnderWay });
        var balancing = shop.Suppliers().First(supplier => supplier.Name == "Ambery Balancing");
        shop.Add(new OutsideWork(shaft, balancing) { What = "new joints and balancing", Sent = new(2024, 10, 7) });
    }

    private static AxleComponent Axle(Shop shop, string name, string serial, string donor, Teeth teeth, string shelf)
        => shop.Add(new AxleComponent { Name = name, SerialNumber = serial, Donor = donor, Teeth = teeth, Shelf = shelf });
}
