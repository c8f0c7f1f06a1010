using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Speedometers;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using Xunit;

namespace BuildLog.Gearing.Tests.Options;

/// <summary>A few shops small enough to be gone through by hand, so that every step of the search is held without throwing many.</summary>
public sealed class SmallShopsTests
{
    private static readonly OwnersGoals Pulling = RandomShop.Wishes with
    {
        TopSpeed = TopSpeedGoal.Read("150 km/h").OrRefuse(),
        Hill = HillGoal.Read("6 %", "90 km/h").OrRefuse(),
        HillStart = HillStartGoal.Read("30 %").OrRefuse(),
    };

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Cruise_overall_low_and_size(int seed) => PlainLoops.EndAlike(InventedCar.Plain, RandomShop.Wishes, RandomShop.Of(seed, 2, 1, 4, 6), 1 + (seed % 2));

    // At most so many turns: slower is no distance.
    [Theory]
    [InlineData(5)]
    [InlineData(6)]
    public void A_cruise_without_a_lower_limit_and_a_second_one(int seed)
        => PlainLoops.EndAlike(
            InventedCar.Plain, new([InventedCar.Goal("110 km/h", "2600 rpm", "at most"), InventedCar.Goal("90 km/h", "2400 rpm", "10 %", "1")]), RandomShop.Of(seed, 2, 1, 4, 6));

    [Theory]
    [InlineData(7, 160)]
    [InlineData(8, 200)]
    [InlineData(9, 240)]
    public void Top_speed_hill_and_hill_start(int seed, double torque)
        => PlainLoops.EndAlike(InventedLoad.WithTorque(torque), Pulling, RandomShop.Of(seed, 1, 1, 4, 5));

    [Theory]
    [InlineData(10, Pickup.Propshaft)]
    [InlineData(11, Pickup.Wheel)]
    public void A_speedometer(int seed, Pickup pickup)
    {
        var car = InventedCar.Plain with { Speedometer = new("dial", InventedCar.Exactly(InventedCar.Of(0.7, 0.005)), SpeedometerDrive.Gears(8, 22, pickup)) };

        PlainLoops.EndAlike(car, RandomShop.Wishes, RandomShop.Of(seed, 1, 1, 4, 6));
        PlainLoops.EndAlike(car with { Speedometer = new("dial", null, car.Speedometer!.Drive) }, RandomShop.Wishes, RandomShop.Of(seed, 1, 1, 3, 4));
        PlainLoops.EndAlike(car with { Driven = new(InventedCar.Exactly(InventedCar.Of(1.05, 0.01)), car) }, RandomShop.Wishes, RandomShop.Of(seed, 1, 1, 3, 4));
    }
}
