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

/// <summary>The pickup whose tag lies: a yard axle sold as 3.90 counts near 4.74, and the cruise clashes.</summary>
internal static class Brindle
{
    public static Vehicle Enter(Shop shop)
    {
        var vehicle = shop.Add(new Vehicle
        {
            Name = "Brindle",
            Description = "half-ton pick-up of 1971",
            State = VehicleState.InBuild,
            Owner = "Agnes Thorley",
            ChassisNumber = "WX-PU-20417",
            Registration = "BT 417",
            RearSprings = Noted.Of(Spec.RearSprings, "1070 mm", Source.Measured),
            Notes = "Half-ton pickup, bare frame when it came. Wants to cross the county without shouting.",
        });
        shop.Add(new CruiseGoalEntry(vehicle) { Speed = "100 km/h", EngineSpeed = "2500 rpm", Tolerance = "100 rpm" });

        var engine = shop.Add(new EngineComponent
        {
            Name = "Corvane 3.3 six",
            SerialNumber = "CV33-118204",
            Donor = "Wexcombe delivery van, Tolland yard",
            Idle = Noted.EngineSpeed("650 rpm", Source.Measured),
            Redline = Noted.EngineSpeed("4600 rpm", Source.MakersData),
        }.LookedAt("Corvane six"));
        var gearbox = shop.Add(new TransmissionComponent
        {
            Name = "Delmere D4 four-speed",
            SerialNumber = "D4-60921",
            Donor = "came with the engine",
            Gears = TransmissionComponent.GearsFrom(Source.MakersData, "3.54", "2.12", "1.38", "1.00"),
        }.LookedAt("Corvane six", Joints.FineSpline, Joints.FineSpline));
        var ownAxle = shop.Add(new AxleComponent
        {
            Name = "Harrow axle, the frame's own",
            SerialNumber = "HR-3-0077",
            Donor = "came with the frame",
            Shelf = "under the bench, left",
            Teeth = new Teeth(43, 13),
            Notes = "Pinion chipped on two teeth; whines from 70 km/h.",
            ParkingBrake = Presence.Fitted,
            Perches = Noted.Of(Spec.Perches, "1070 mm", Source.Measured),
        });
        var yardAxle = shop.Add(new AxleComponent
        {
            Name = "Harrow yard axle",
            SerialNumber = "HR-7-4410",
            Donor = "Tolland yard, row 6, no vehicle with it",
            StatedRatio = Noted.Ratio("3.90", RatioRange.Axle, Source.Tag),
            Notes = "Cover and tag look newer than the housing.",
            ParkingBrake = Presence.Fitted,
            Perches = Noted.Of(Spec.Perches, "1071 mm", Source.Measured),
        });
        var firstTyres = shop.Add(new WheelSetComponent { Name = "Stavely 205/75R15 on steel", SizeText = "205/75R15", Donor = "came with the frame" });
        var tallTyres = shop.Add(new WheelSetComponent { Name = "Stavely 235/75R15 on steel", SizeText = "235/75R15 105S", Donor = "bought new" });

        shop.Fit(engine, vehicle, Position.Engine, new(2024, 3, 9), "61 204 km", "the frame came without one");
        shop.Fit(gearbox, vehicle, Position.Transmission, new(2024, 3, 9), "61 204 km", "bolted up with the engine");
        shop.Fit(ownAxle, vehicle, Position.RearAxle, new(2024, 3, 16), "61 204", "back under the frame after cleaning");
        shop.Fit(firstTyres, vehicle, Position.Tyres, new(2024, 3, 16), "61 204", "to roll the frame about");
        shop.Fit(tallTyres, vehicle, Position.Tyres, new(2024, 5, 25), "61 690", "taller tyres, to calm the engine on the road");
        shop.Add(new RollOutSession(tallTyres, vehicle)
        {
            Date = new(2024, 6, 1),
            Loaded = true,
            Helper = "Piet Arlow",
            Conditions = "shed floor, level, driver aboard",
            Pressure = "2.4 bar",
            Readings = ["1:2238mm", "3:6 715 mm", "5:11.19 m"],
        });
        shop.Fit(yardAxle, vehicle, Position.RearAxle, new(2024, 10, 12), "64 105", "own axle whines, pinion chipped; tag of this one says 3.90");
        shop.Add(new TurnCountSession(yardAxle, vehicle)
        {
            Date = new(2024, 10, 26),
            Wheels = Wheels.OneHeld,
            Helper = "Piet Arlow",
            Conditions = "on stands, left wheel held, chalk on the flange",
            Notes = "Done because the engine was far too busy on the first drive.",
            Readings = ["10:23.7", "10:23 3/4", "10:23 3/4"],
        });
        return vehicle;
    }
}
