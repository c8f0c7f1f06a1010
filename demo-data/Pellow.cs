using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Goals;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;

namespace BuildLog.DemoData;

/// <summary>The half-known van: nobody has counted its axle, so its cruise is open. It rolls on the tyres that came off Brindle.</summary>
internal static class Pellow
{
    public static void Enter(Shop shop)
    {
        var vehicle = shop.Add(new Vehicle
        {
            Name = "Pellow",
            Description = "panel van, about 1976",
            State = VehicleState.Planned,
            Owner = "the shop",
            ChassisNumber = "not found yet",
            Notes = "Panel van, for the shop itself once the others are out.",
        });
        shop.Add(new CruiseGoalEntry(vehicle) { Speed = "95 km/h", EngineSpeed = "2600 rpm" });

        var engine = shop.Add(new EngineComponent { Name = "Corvane 2.1 four, van's own", Donor = "its own", Notes = "Turns over by hand." });
        var gearbox = shop.Add(new TransmissionComponent
        {
            Name = "Delmere D4 column-shift",
            Donor = "its own",
            Gears = TransmissionComponent.GearsFrom(Source.OwnersWord, "3.5", "2.1", "1.4", "1.0"),
        });
        var axle = shop.Add(new AxleComponent { Name = "van's own axle, no tag", Donor = "its own" });
        var tyres = (WheelSetComponent)shop.Parts().Single(part => part.Component.Name == "Stavely 205/75R15 on steel").Component;

        shop.Fit(engine, vehicle, Position.Engine, new(2024, 8, 31), "", "as found");
        shop.Fit(gearbox, vehicle, Position.Transmission, new(2024, 8, 31), "", "as found");
        shop.Fit(axle, vehicle, Position.RearAxle, new(2024, 8, 31), "", "as found");
        shop.Fit(tyres, vehicle, Position.Tyres, new(2024, 12, 7), "118 300", "came off Brindle, good enough to push it about");
    }
}
