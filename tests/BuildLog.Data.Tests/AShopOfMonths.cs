using BuildLog.Gearing.Drivelines;
using Microsoft.EntityFrameworkCore;
using Xunit;

namespace BuildLog.Data.Tests;

public sealed class AShopOfMonths : IDisposable
{
    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    [Fact]
    public void Holds_together_over_many_vehicles_and_swaps()
    {
        new BulkShop(test.Shop).Fill(vehicles: 12, swaps: 8);
        test.Reopen();
        Assert.Equal(12, test.Shop.Vehicles().Count);
        foreach (var vehicle in test.Shop.Vehicles())
        {
            var history = test.Shop.History(vehicle);
            Assert.Equal(11, history.Count);
            Assert.Equal(history.OrderBy(swap => swap.Date), history);

            // Two routes to one fact: the history's last driveline is the driveline of a late day.
            Assert.Equal(history[^1].After.RearAxle!.Name, test.Shop.DrivelineOn(vehicle, new(2026, 1, 1)).At(Position.RearAxle)!.Name);
        }

        // Of every table of records something, so that a new kind has to be made here too.
        using (var db = new ShopContext(ShopContext.OptionsFor(test.Path)))
        {
            var kinds = db.Model.GetEntityTypes().Where(type => type.IsKept() && type.BaseType is null).Select(type => type.GetTableName()!).ToList();
            Assert.Equal(["OdometerChanges", "Workshops"], kinds.Where(table => test.Ask($"SELECT count(*) FROM \"{table}\"") is 0L).Order(StringComparer.Ordinal));
        }

        Assert.Equal("ok", test.Ask("PRAGMA integrity_check"));
        Assert.Null(test.Ask("PRAGMA foreign_key_check"));
        Assert.Equal(12L, test.Ask("SELECT count(*) FROM Fitments WHERE Position = 'RearAxle' AND ToDate IS NULL"));
    }

    [Fact]
    public void Is_the_same_for_the_same_seed()
    {
        using var second = new TestShop();
        foreach (var shop in (TestShop[])[test, second]) new BulkShop(shop.Shop).Fill(vehicles: 2, swaps: 2);
        Assert.Equal(test.Shop.Vehicles().Select(vehicle => vehicle.ChassisNumber), second.Shop.Vehicles().Select(vehicle => vehicle.ChassisNumber));
        Assert.Equal(test.Ask("SELECT group_concat(Text, '|') FROM Readings"), second.Ask("SELECT group_concat(Text, '|') FROM Readings"));
    }
}
