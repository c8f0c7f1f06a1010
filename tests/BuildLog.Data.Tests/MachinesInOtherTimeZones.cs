using BuildLog.Data.Files;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using Xunit;

namespace BuildLog.Data.Tests;

/// <summary>A day is a day wherever the record is opened, and the log keeps its order though the calendars on the walls differ by two days.</summary>
public sealed class MachinesInOtherTimeZones : IDisposable
{
    private static readonly DateTimeOffset Noon = new(2026, 5, 3, 10, 30, 0, TimeSpan.Zero);
    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    [Fact]
    public void Read_the_same_days_and_the_same_order()
    {
        // By hand: 10:30 UTC on 3 May is 00:30 on 4 May at +14, and 23:40 on 2 May at −11 ten minutes later.
        var (east, west) = (new Wall(14, Noon), new Wall(-11, Noon.AddMinutes(10)));
        Assert.Equal((4, 2), (east.GetLocalNow().Day, west.GetLocalNow().Day));
        using (var shop = ShopFile.Open(test.Path, east))
        {
            shop.Fit(test.Axle("Harrow axle"), shop.Add(new Vehicle { Name = "Brindle" }), Position.RearAxle, new(2026, 5, 4));
        }

        using var there = ShopFile.Open(test.Path, west);
        there.Change(there.FindVehicle("Brindle"), vehicle => vehicle.Owner = "Agnes");
        Assert.Equal(new DateOnly(2026, 5, 4), Assert.Single(there.Fitments(there.FindVehicle("Brindle"))).From);
        Assert.Null(there.DrivelineOn(there.FindVehicle("Brindle"), new(2026, 5, 3)).At(Position.RearAxle));
        Assert.NotNull(there.DrivelineOn(there.FindVehicle("Brindle"), new(2026, 5, 4)).At(Position.RearAxle));

        var changes = there.Changes();
        Assert.Equal(("changed vehicle Brindle", Noon.AddMinutes(10)), (changes[0].Label, changes[0].When));
        Assert.Contains(changes, change => change.Label == "fitted Harrow axle to Brindle" && change.When == Noon);
        Assert.Equal("2026-05-03T10:40:00.0000000Z", test.Ask("SELECT At FROM ChangeSets ORDER BY Id DESC LIMIT 1"));
        Assert.Equal("changed vehicle Brindle", there.Undo());
    }

    // In the night the clocks are put back, an hour on the wall comes twice.
    [Fact]
    public void Keep_the_order_where_the_clock_on_the_wall_goes_back()
    {
        using (var summer = ShopFile.Open(test.Path, new Wall(2, Noon))) summer.Add(new Vehicle { Name = "first" });
        using var winter = ShopFile.Open(test.Path, new Wall(1, Noon.AddMinutes(20)));
        winter.Add(new Vehicle { Name = "second" });
        Assert.Equal(["added vehicle second", "added vehicle first"], winter.Changes().Select(change => change.Label));
        Assert.Equal("added vehicle second", winter.Undo());
    }

    private sealed class Wall(int hoursFromGreenwich, DateTimeOffset now) : TimeProvider
    {
        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.CreateCustomTimeZone("there", TimeSpan.FromHours(hoursFromGreenwich), "there", "there");

        public override DateTimeOffset GetUtcNow() => now;
    }
}
