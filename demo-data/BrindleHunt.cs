using BuildLog.Data;
using BuildLog.Data.Costs;
using BuildLog.Data.Deadlines;
using BuildLog.Data.Decisions;
using BuildLog.Data.Hunting;
using BuildLog.Data.Jobs;
using BuildLog.Data.Notes;
using BuildLog.Data.RoadTests;
using BuildLog.Data.Suppliers;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Measurements;
using static BuildLog.DemoData.Yard;

namespace BuildLog.DemoData;

/// <summary>What came of Brindle's lying tag: the hunt for a longer axle, two offers of which one is worth a drive, and the work that waits for it.</summary>
internal static class BrindleHunt
{
    public static void Enter(Shop shop, Vehicle brindle, Supplier tolland)
    {
        shop.Add(new RoadTest(brindle)
        {
            Date = new(2024, 10, 19),
            Speed = Noted.Speed("100 km/h", Source.Measured),
            EngineSpeed = Noted.EngineSpeed("3500 rpm", Source.OwnersWord),
            Gear = "4",
            Noises = "none from the axle; the engine drowns it",
            Defects = "far too busy: this is no 3.90",
        });
        var axle = shop.Add(new WantedPart(brindle, WantedKind.Axle)
        {
            Title = "longer axle",
            Windows = [new(WindowOf.AxleRatio, "3.23", "3.49")],
            Most = Euro(350),
        });
        shop.Add(new Offer(axle)
        {
            What = "axle from a late pickup, cover off",
            Place = "advert, Ambery board",
            Claimed = "3.36",
            Price = Euro(280),
            Contact = "evenings",
            Seen = new(2024, 11, 9),
            Notes = "37 teeth painted on the cover; 1070 between the perches, he says",
        });
        shop.Add(new Offer(axle) { What = "axle, row 2, no vehicle with it", Place = "Tolland yard", SupplierId = tolland.Id, Claimed = "4.10", Price = Euro(120), Seen = new(2024, 11, 2) });

        var swap = shop.Add(new Job(brindle) { Title = "fit the longer axle", Due = new(2025, 4, 1), BeforeHandover = true, WaitsForId = axle.Id });
        var brakes = shop.Add(new Job(brindle) { Title = "rear brake lines", State = JobState.UnderWay, BeforeHandover = true });
        shop.Add(new WorkEntry(brakes) { Date = new(2024, 11, 16), Hours = "3 h 30 min", Who = "Agnes", What = "old lines off, new ones bent" });
        shop.Add(new Cost(brindle, brakes) { Date = new(2024, 11, 15), What = "brake line and unions", Amount = Euro(48.60m) });
        shop.Add(new Cost(brindle) { Date = new(2024, 10, 12), What = "yard axle", Amount = Euro(150), SupplierId = tolland.Id });
        shop.Add(new Deadline(brindle) { What = "test station, first look", Day = new(2025, 5, 15) });
        shop.Add(new Decision(brindle)
        {
            Date = new(2024, 10, 27),
            What = "axle between 3.23 and 3.49 instead of still taller tyres",
            Why = "taller tyres would reach the arches and read the speedometer low",
            AgreedBy = "Agnes Thorley",
        });
        shop.Add(new Note(swap) { Date = new(2024, 10, 27), Title = "before lifting", Body = "Two stands under the frame, not the axle. Ask Piet for a Saturday." });
    }
}
