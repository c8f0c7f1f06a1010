using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Speedometers;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Options;

public sealed class OptionSearchPlainLoopsTests
{
    private static readonly OwnersGoals Truck = InventedTruck.Goals with { OverallLow = OverallLowGoal.Read("30").OrRefuse() };

    [Fact]
    public void The_front_is_the_plain_loops_on_random_shops()
        => Gen.Int[1, 100_000].Sample(seed => PlainLoops.EndAlike(InventedCar.Plain, RandomShop.Wishes, RandomShop.Of(seed, 3, 2, 7, 9)), iter: 50);

    // Found by the above: an overdrive beside another gear makes the same ratio to the last bit but one, with a part more.
    [Fact]
    public void The_last_bits_of_a_distance_are_worth_no_part() => PlainLoops.EndAlike(InventedCar.Plain, RandomShop.Wishes, RandomShop.Of(51_706, 3, 2, 7, 9));

    // The whole answer against every check of every combination: 4 · 3 · 5 · 6 of them.
    [Fact]
    public void No_combination_of_a_small_shop_is_better_than_the_best_that_is_answered()
        => Gen.Int[1, 100_000].Sample(seed => PlainLoops.HaveNothingBetter(InventedCar.Plain, RandomShop.Wishes, RandomShop.Of(seed, 3, 2, 4, 5)), iter: 12);

    // Found by the above: the best by the separable checks had an overdrive whose step is larger than the one below it, and hid what steps evenly.
    [Fact]
    public void A_step_that_gearbox_and_overdrive_make_together_hides_nothing() => PlainLoops.HaveNothingBetter(InventedCar.Plain, RandomShop.Wishes, RandomShop.Of(21_489, 3, 2, 4, 5));

    // Half of its axles and wheels have five holes for the truck's six, some axles are weak, some gearboxes step unevenly: joints of two parts, and what one part brings.
    [Fact]
    public void No_combination_on_a_whole_truck_is_better_than_the_best_that_is_answered()
        => Gen.Int[1, 100_000].Sample(seed => PlainLoops.HaveNothingBetter(InventedTruck.Whole.Without(Position.Speedometer), Truck, OfTruck(seed, 2, 1, 3, 3)), iter: 2);

    // As above on a car with engine and load, so that top speed, hill and hill start have their say; the wishes lie where the shops' parts reach over them.
    [Fact]
    public void The_front_is_the_plain_loops_where_pull_is_wanted_too()
        => Gen.Int[1, 100_000].Sample(
            seed =>
            {
                var random = new Random(seed);
                var car = InventedLoad.WithTorque(random.Next(120, 260)) with { Tyres = InventedCar.Rolling(2) };
                var goals = RandomShop.Wishes with
                {
                    TopSpeed = TopSpeedGoal.Read(FormattableString.Invariant($"{random.Next(100, 190)} km/h")).OrRefuse(),
                    Hill = random.Next(3) == 0 ? null : HillGoal.Read(FormattableString.Invariant($"{random.Next(1, 12)} %"), "90 km/h").OrRefuse(),
                    HillStart = HillStartGoal.Read(FormattableString.Invariant($"{random.Next(15, 45)} %")).OrRefuse(),
                };
                PlainLoops.EndAlike(car, goals, RandomShop.Of(seed, 2, 1, 6, 8));
            },
            iter: 25);

    // As above with a speedometer that is driven from the propshaft or a wheel, of which too little is known, or that was held against a measured distance.
    [Fact]
    public void The_front_is_the_plain_loops_where_a_speedometer_has_its_say_too()
        => Gen.Int[1, 100_000].Sample(
            seed =>
            {
                var random = new Random(seed);
                var drive = SpeedometerDrive.Gears(random.Next(7, 11), random.Next(18, 26), random.Next(2) == 0 ? Pickup.Propshaft : Pickup.Wheel);
                var car = InventedCar.Plain with
                {
                    Speedometer = random.Next(4) == 0
                        ? new("dial", null, drive)
                        : new("dial", InventedCar.Exactly(InventedCar.Of(0.7, 0.005)), drive),
                };
                if (random.Next(3) == 0) car = car with { Driven = new(InventedCar.Exactly(InventedCar.Of(0.97 + (0.2 * random.NextDouble()), 0.01)), car) };
                PlainLoops.EndAlike(car, RandomShop.Wishes, RandomShop.Of(seed, 2, 1, 7, 9));
            },
            iter: 50);

    // The parts of a random shop in the truck's trim.
    private static CandidateParts OfTruck(int seed, int boxes, int overdrives, int axles, int tyres)
    {
        var random = new Random(seed);
        var (shop, here, truck) = (RandomShop.Of(seed, boxes, overdrives, axles, tyres), CandidateParts.InPlace(InventedTruck.Whole), InventedTruck.Whole);
        return new(
            [.. here.Gearboxes, .. shop.Gearboxes.Skip(1)],
            shop.Overdrives,
            [
                .. here.Axles,
                .. shop.Axles.Skip(1).Select(axle => axle with
                {
                    Part = truck.RearAxle! with
                    {
                        Ratio = axle.Part!.Ratio,
                        Hub = truck.RearAxle.Hub! with { Studs = random.Next(5, 7) },
                        TorqueRating = random.Next(2) == 0 ? null : InventedCar.Exactly(random.Next(500, 6000)),
                    },
                }),
            ],
            [
                .. here.Tyres,
                .. shop.Tyres.Skip(1).Select(set => set with
                {
                    Part = truck.Tyres! with
                    {
                        RollingCircumference = set.Part!.RollingCircumference,
                        Wheel = truck.Tyres.Wheel! with { Bolting = truck.Tyres.Wheel.Bolting! with { Studs = random.Next(5, 7) } },
                    },
                }),
            ]);
    }
}
