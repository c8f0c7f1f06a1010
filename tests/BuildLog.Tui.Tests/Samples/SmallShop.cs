using BuildLog.Data;
using BuildLog.Data.Costs;
using BuildLog.Data.Deadlines;
using BuildLog.Data.Files;
using BuildLog.Data.Jobs;
using BuildLog.Data.Suppliers;
using BuildLog.Data.Tests;
using BuildLog.Data.Vehicles;

namespace BuildLog.Tui.Tests.Samples;

/// <summary>A record with one vehicle and some work on it, on 20 May 2026. Invented.</summary>
internal sealed class SmallShop : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-small-shop-").FullName;

    public SmallShop()
    {
        var path = Path.Combine(folder, "shop.db");
        EmptyRecord.CopyTo(path);
        Shop = ShopFile.Open(path, Clock);
        Bittern = Shop.Add(new Vehicle { Name = "Bittern", State = VehicleState.InBuild });
    }

    public TimeProvider Clock { get; } = new ADay(2026, 5, 20);

    public string Folder => folder;

    public Shop Shop { get; }

    public Vehicle Bittern { get; }

    /// <summary>Three jobs, one of them blocked and one late, hours, a cost, work given out, and a deadline.</summary>
    public SmallShop WithWork()
    {
        var brakes = Shop.Add(new Job(Bittern) { Title = "Rebuild the brake cylinders", Due = new(2026, 5, 10), BeforeHandover = true });
        var shaft = Shop.Add(new Job(Bittern) { Title = "Balance the propshaft", State = JobState.UnderWay });
        Shop.Add(new Job(Bittern) { Title = "Fit the axle", BlockedBy = "the paint to dry" });
        Shop.Add(new WorkEntry(brakes) { Date = new(2026, 5, 18), Hours = "2:30", What = "front pair" });
        Shop.Add(new Cost(Bittern, brakes) { Date = new(2026, 5, 17), What = "seal kit", Amount = Money.Of(4550, Currency.Euro) });
        Shop.Add(new Cost(Bittern) { Date = new(2026, 5, 1), What = "transport", Amount = Money.Of(12000, Currency.Euro) });
        var tolland = Shop.Add(new Supplier { Name = "Tolland machine shop" });
        Shop.Add(new OutsideWork(shaft, tolland) { What = "balance", Sent = new(2026, 5, 4), Promised = new(2026, 5, 15) });
        Shop.Add(new Deadline(Bittern) { What = "test station, second look", Day = new(2026, 6, 1) });
        return this;
    }

    public void Dispose()
    {
        Shop.Dispose();
        Directory.Delete(folder, recursive: true);
    }
}
