using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Goals;
using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;

namespace BuildLog.DemoData;

/// <summary>The coupe on the edge: an axle counted over three turns only, so the cruise is a watch that more turns would settle.</summary>
internal static class Quillon
{
    public static void Enter(Shop shop)
    {
        var vehicle = shop.Add(new Vehicle
        {
            Name = "Quillon",
            Description = "fastback coupe of 1970",
            State = VehicleState.InBuild,
            Owner = "Bastian Orme",
            ChassisNumber = "QL 70 0093",
            Notes = "Fastback coupe, shell painted, going together.",
        });
        shop.Add(new CruiseGoalEntry(vehicle) { Speed = "100 km/h", EngineSpeed = "3000 rpm", Tolerance = "150 rpm" });

        var engine = shop.Add(new EngineComponent
        {
            Name = "Corvane 2.7 six",
            SerialNumber = "CV27-40032",
            Donor = "Tolland yard",
            Idle = Noted.EngineSpeed("700 rpm", Source.OwnersWord),
            Redline = Noted.EngineSpeed("6000 rpm", Source.MakersData),
        }.LookedAt("Corvane six"));
        var gearbox = shop.Add(new TransmissionComponent
        {
            Name = "Delmere D4 close-ratio",
            SerialNumber = "D4C-511",
            Donor = "Bastian's shelf",
            Gears = TransmissionComponent.GearsFrom(Source.Tag, "2.98", "1.94", "1.34", "1.00"),
            Notes = "The clutch disc came with the engine.",
        }.LookedAt("Corvane six", Joints.FineSpline, Joints.CoarseSpline));
        var axle = shop.Add(new AxleComponent
        {
            Name = "Harrow narrow axle",
            SerialNumber = "HR-N-0815",
            Donor = "unknown, bought with the shell",
            ParkingBrake = Presence.Fitted,
        });
        var tyres = shop.Add(new WheelSetComponent { Name = "Norwell 185/70R14 on steel", SizeText = "185/70R14 88T", Donor = "bought new" });

        shop.Fit(engine, vehicle, Position.Engine, new(2024, 9, 14), "0", "odometer set to nought with the new dial");
        shop.Fit(gearbox, vehicle, Position.Transmission, new(2024, 9, 14), "0", "in with the engine");
        shop.Fit(axle, vehicle, Position.RearAxle, new(2024, 11, 2), "0", "it came with the shell and bolts straight up");
        shop.Fit(tyres, vehicle, Position.Tyres, new(2024, 11, 9), "0", "onto its wheels at last");
        shop.Add(new TurnCountSession(axle, vehicle)
        {
            Date = new(2024, 11, 9),
            Wheels = Wheels.OneHeld,
            Conditions = "alone, three turns before the light went",
            Readings = ["3:5 1/4"],
        });
        shop.Add(new RollOutSession(tyres, vehicle)
        {
            Date = new(2024, 11, 16),
            Loaded = true,
            Helper = "Bastian Orme",
            Conditions = "shed floor, shell without glass yet",
            Pressure = "2.0 bar",
            Readings = ["1:1876mm", "2:3751mm", "4:7.503 m"],
        });
    }
}
