using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Speeds;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Speeds;

public sealed class GearSpeedsTests
{
    private static readonly Measured Axle = InventedCar.Of(4.10, 0.04, "axle");
    private static readonly Measured Tyre = InventedCar.Of(2.00, 0.02, "tyre");

    private static readonly Driveline Car = InventedCar.Plain with
    {
        RearAxle = InventedCar.Axle(Axle),
        Tyres = InventedCar.Rolling(Tyre),
        TransferCase = new("transfer case", InventedCar.Exactly(InventedCar.Of(1.25, 0.01, "transfer case")), null),
    };

    private static readonly GearSpeeds Speeds = GearSpeeds.Of(Car)!;

    // The driveline note: 2.05 m and 3.73 in direct top are 60 · 2.05 / 3.73 = 32.98 km/h per 1000 rev/min.
    [Fact]
    public void Speed_per_thousand()
    {
        var speeds = GearSpeeds.Of(InventedCar.Plain with { RearAxle = InventedCar.Axle(3.73), Tyres = InventedCar.Rolling(2.05) })!;

        Assert.Equal(32.98, speeds.PerThousand(speeds.Steps[^1]).Value * 3.6, 0.005);
    }

    // By hand: 6000 rev/min in first: 100 rev/s · 2.00 / (3.5 · 1.25 · 4.10) = 11.150 m/s.
    [Fact]
    public void Road_speed_and_engine_speed_are_each_others_inverse()
    {
        foreach (var step in Speeds.Steps)
        {
            var back = Speeds.EngineSpeed(step, Speeds.RoadSpeed(step, 100));

            Assert.Equal(100, back.Value, 1e-9);
            Assert.True(back.IsExact);
        }

        Assert.Equal(200 / (3.5 * 1.25 * 4.10), Speeds.RoadSpeed(Speeds.Steps[0], 100).Value, 1e-9);
    }

    // By hand, upshifts at 5000: · 2.1/3.5 = 3000; · 1.4/2.1 = 3333.3; · 1/1.4 = 3571.4.
    [Fact]
    public void The_engine_drops_by_the_quotient_of_the_gears()
        => Assert.Equal([3000, 3333.3, 3571.4], Speeds.Upshifts(5000 / 60.0).Select(shift => Math.Round(shift.EngineSpeed.Value * 60, 1)));

    // Inputs in common cancel: at one road speed a shift drop has no tyre, no axle and no transfer case in it.
    [Fact]
    public void A_shift_drop_has_no_tyre_in_it()
    {
        var inputs = Axle.Budget().Concat(Tyre.Budget()).Concat(Car.TransferCase!.High!.Value.Budget()).Select(line => line.Input).ToList();

        Assert.Equal(3, inputs.Count);
        Assert.All(Speeds.Upshifts(5000 / 60.0), shift =>
        {
            Assert.All(inputs, input => Assert.Equal(0, shift.EngineSpeed.SensitivityTo(input)));
            Assert.True(shift.EngineSpeed.IsExact);
        });
    }

    // Gears counted on the bench do stay in it, each once.
    [Fact]
    public void A_shift_drop_has_its_two_gears_in_it()
    {
        var (low, high) = (InventedCar.Of(2.0, 0.02, "low"), InventedCar.Of(1.0, 0.01, "high"));
        var speeds = GearSpeeds.Of(Car with { Transmission = new("two-speed", [InventedCar.Gear("1", low), InventedCar.Gear("2", high)]) })!;

        // 1 % of each of two: √2 %.
        Assert.Equal(Math.Sqrt(2) * 0.01, Assert.Single(speeds.Upshifts(50)).EngineSpeed.RelativeUncertainty, 1e-9);
    }

    // From 1000 to 5000 rev/min: each tooth starts at the speed the last one ended with, at the engine speed after the drop.
    [Fact]
    public void The_sawtooth_goes_up_through_the_gears_without_a_gap()
    {
        var teeth = Speeds.Sawtooth(1000 / 60.0, 5000 / 60.0);

        Assert.Equal(["1", "2", "3", "4"], teeth.Select(tooth => tooth.Gear));
        Assert.Equal(1000, teeth[0].StartEngine * 60, 1e-9);
        Assert.Equal(teeth.SkipLast(1).Select(tooth => tooth.EndSpeed), teeth.Skip(1).Select(tooth => tooth.StartSpeed));
        Assert.Equal([3000, 3333.3, 3571.4], teeth.Skip(1).Select(tooth => Math.Round(tooth.StartEngine * 60, 1)));
        Assert.All(teeth, tooth => Assert.Equal(5000, tooth.EndEngine * 60, 1e-9));
        Assert.Equal(5000 / 60.0 * 2.00 / (1.25 * 4.10), teeth[^1].EndSpeed, 1e-9);
    }

    [Fact]
    public void Without_gears_axle_ratio_or_circumference_there_is_no_table()
    {
        Assert.Null(GearSpeeds.Of(Car with { Transmission = null }));
        Assert.Null(GearSpeeds.Of(Car with { RearAxle = new("axle", null) }));
        Assert.Null(GearSpeeds.Of(Car with { Tyres = new("tyres", null, null) }));
        Assert.Null(GearSpeeds.Of(Car with { TransferCase = new("transfer case", null, null) }));
    }
}
