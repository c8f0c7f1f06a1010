using BuildLog.Data.Files;
using Xunit;

namespace BuildLog.Data.Tests.Files;

/// <summary>MonthsOfSwaps.sql is the demo shop as the third schema held it: the second with jobs, hunts, donors and papers, and no log of changes yet.</summary>
public sealed class AFileOfMonthsOfSwaps : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-test-").FullName;
    private readonly string path;
    private readonly Shop shop;

    public AFileOfMonthsOfSwaps()
    {
        path = Path.Combine(folder, "shop.db");
        EarlierRecord.Make("MonthsOfSwaps.sql", path);
        shop = ShopFile.Open(path);
    }

    public void Dispose()
    {
        shop.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    // Read in the dump.
    [Fact]
    public void Keeps_the_jobs_the_hunt_and_the_money()
    {
        var brindle = shop.FindVehicle("Brindle");
        Assert.Equal(["fit the longer axle", "rear brake lines"], shop.Jobs(brindle).Select(job => job.Title).Order(StringComparer.Ordinal));
        Assert.Equal("198.60 EUR", Assert.Single(shop.Spent(brindle)).ToString());
        Assert.Equal(["3.36", "4.10"], shop.Offers(Assert.Single(shop.Wanted(brindle))).Select(offer => offer.Claimed).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Knows_the_days_of_its_fitments_to_the_day()
        => Assert.All(shop.Vehicles().SelectMany(vehicle => shop.Fitments(vehicle)), fitment => Assert.True(fitment.FromDay.IsExact));

    [Fact]
    public void Begins_its_log_with_what_is_changed_from_now_on()
    {
        Assert.Empty(shop.Changes());
        shop.Change(shop.FindVehicle("Haldor"), vehicle => vehicle.Owner = "Piet Arlow");
        Assert.Equal("changed vehicle Haldor", shop.Undo());
    }
}
