using BuildLog.Data;
using BuildLog.Data.Attachments;
using BuildLog.Data.Components;
using BuildLog.Data.Costs;
using BuildLog.Data.Jobs;
using BuildLog.Data.RoadTests;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Measurements;

namespace BuildLog.DemoData;

/// <summary>What Tansy's folder holds for who gets it one day: work, money with a receipt, a drive, pictures.</summary>
internal static class TansyFolder
{
    public static void Enter(Shop shop, Vehicle vehicle, TransmissionComponent fiveSpeed)
    {
        var swap = shop.Add(new Job(vehicle) { Title = "five-speed instead of the four-speed", State = JobState.Done });
        shop.Add(new WorkEntry(swap) { Date = new(2024, 7, 20), Hours = "2 h 30 min", Who = "Piet Arlow", What = "on the bench: top gear counted, new input seal" });
        shop.Add(new WorkEntry(swap) { Date = new(2024, 7, 27), Hours = "7 h", What = "four-speed out, five-speed in, tunnel plate cut back" });
        var receipt = Picture.Attach(shop, vehicle, "receipt-five-speed.jpg", AttachmentKind.Receipt, "Tolland yard, gearbox", "6 July 2024");
        shop.Add(new Cost(vehicle, swap) { Date = new(2024, 7, 6), What = "five-speed gearbox", Amount = Yard.Euro(310), ComponentId = fiveSpeed.Id, ReceiptId = receipt.Id });
        shop.Add(new Cost(vehicle, swap) { Date = new(2024, 7, 19), What = "input seal, oil", Amount = Yard.Euro(41.50m) });
        shop.Add(new RoadTest(vehicle)
        {
            Date = new(2024, 8, 3),
            Speed = Noted.Speed("70 mph", Source.Measured),
            EngineSpeed = Noted.EngineSpeed("2900 rpm", Source.Measured),
            Gear = "5",
            Noises = "quiet; a tick from the speedometer cable",
        });
        Picture.Attach(shop, vehicle, "tansy.jpg", AttachmentKind.Photo, "back on the road", "August 2024");
        Picture.Attach(shop, swap, "tansy-on-stands.jpg", AttachmentKind.Photo, "before: on stands, in primer, its own box still in", "spring 2024");
    }
}
