using BuildLog.Data.Fitments;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using Xunit;

namespace BuildLog.Data.Tests.Fitments;

/// <summary>Kilometres by hand: 61 204 to 64 000 on the first odometer, 0 to 1 500 on the second.</summary>
public sealed class AnOdometerThatChanged : IDisposable
{
    private readonly TestShop test = new();
    private readonly Vehicle vehicle;

    public AnOdometerThatChanged()
    {
        vehicle = test.Vehicle("Brindle");
        test.Shop.Fit(test.Axle("first axle"), vehicle, Position.RearAxle, new(2024, 3, 9), "61 204");
    }

    public void Dispose() => test.Dispose();

    [Fact]
    public void May_start_lower_and_the_distance_is_still_known()
    {
        Replace("64 000", "0 km", new(2025, 1, 1));
        var axle = test.Shop.DrivelineOn(vehicle, new(2025, 1, 1)).At(Position.RearAxle)!;
        test.Shop.TakeOff(axle, new(2025, 6, 1), "1 500");
        test.Reopen();
        Assert.Equal(new Distance(4_296_000, IsAtLeast: false), Assert.Single(test.Shop.LifeOf(axle).Service).Distance);
    }

    [Fact]
    public void Leaves_the_distance_open_upwards_where_nobody_read_the_old_one()
    {
        Replace(null, "12 km", new(2025, 1, 1));
        test.Shop.Fit(test.Gearbox("1.00"), vehicle, Position.Transmission, new(2025, 6, 1), "1 512");
        var axle = test.Shop.DrivelineOn(vehicle, new(2025, 6, 1)).At(Position.RearAxle)!;
        Assert.Equal(new Distance(1_500_000, IsAtLeast: true), Assert.Single(test.Shop.LifeOf(axle).Service).Distance);
    }

    [Fact]
    public void Still_runs_forward_on_each_side()
    {
        Replace("64 000", "0 km", new(2025, 1, 1));
        test.Shop.Fit(test.Gearbox("1.00"), vehicle, Position.Transmission, new(2025, 6, 1), "1 500");
        Assert.Equal(
            "The odometer of Brindle runs backwards: 64 100 km on 1 July 2024 is more than 64 000 km later, on 1 January 2025 (last reading before it was replaced).",
            Assert.Throws<RefusedException>(() => test.Shop.Fit(test.Wheels("2.04 m"), vehicle, Position.Tyres, new(2024, 7, 1), "64 100")).Message);
        Assert.Equal(
            "The odometer of Brindle runs backwards: 1 400 km on 1 July 2025 is less than 1 500 km on 1 June 2025 (Delmere box fitted).",
            Assert.Throws<RefusedException>(() => test.Shop.Fit(test.Wheels("2.04 m"), vehicle, Position.Tyres, new(2025, 7, 1), "1 400")).Message);
    }

    [Fact]
    public void Cannot_have_shown_less_than_before_it_was_replaced()
        => Assert.Equal(
            "The odometer of Brindle runs backwards: 61 000 km on 1 January 2025 (last reading before it was replaced) is less than 61 204 km on 9 March 2024 (first axle fitted).",
            Assert.Throws<RefusedException>(() => Replace("61 000", "0 km", new(2025, 1, 1))).Message);

    private void Replace(string? last, string first, DateOnly day) => test.Shop.Add(new OdometerChange(vehicle, OdometerChanged.Replaced)
    {
        Day = day,
        Last = last is null ? null : OdometerReading.Read(last, vehicle.OdometerUnit),
        First = OdometerReading.Read(first, vehicle.OdometerUnit),
    });
}
