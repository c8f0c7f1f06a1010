using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.RoadLoad;

public sealed class GearedForTests
{
    private const double Speed = 40;

    // By hand: 40 m/s · 4.10 / 2.00 m are 82 rev/s in top, and 83.33 may be turned: 1.01626 times at most.
    [Fact]
    public void Shorter_it_turns_out_where_the_redline_is() => Assert.Equal(5000 / 60.0 / 82, Of(InventedLoad.Car).Nominal.High, 1e-6);

    // 4.10 times the end, as an axle: a little inside it holds 40 m/s, a little outside it does not, as the third gear turns out there.
    [Theory]
    [InlineData(90)]
    [InlineData(100)]
    public void Between_its_ends_the_speed_is_held_and_beyond_them_it_is_not(double torque)
    {
        var car = InventedLoad.WithTorque(torque);
        var window = Of(car).Nominal;

        Assert.InRange(window.Low, 0.75, 0.95);
        Assert.True(Reaches(car, window.Low * 1.001));
        Assert.True(Reaches(car, window.High * 0.999));
        Assert.False(Reaches(car, window.Low * 0.999));
        Assert.False(Reaches(car, window.High * 1.001));
    }

    [Fact]
    public void An_engine_too_weak_for_it_is_cured_by_no_gearing() => Assert.Null(GearedFor.Of(InventedLoad.Pull(InventedLoad.WithTorque(30)), Speed));

    // 200 N·m hold it in the third gear too, where the engine turns 1.4 times as fast: down to a quarter no end is met.
    [Fact]
    public void A_strong_engine_holds_it_however_long_it_is_geared() => Assert.Equal(double.NegativeInfinity, Of(InventedLoad.Car).Nominal.Low);

    // 107 N·m at 38 m/s: the second turns out from 0.509 on, and the third is strong enough from 0.515 on only. The gap is narrower than the steps it is looked for in.
    [Fact]
    public void A_narrow_gap_between_two_gears_ends_it()
    {
        var car = InventedLoad.WithTorque(107.09);
        var window = GearedFor.Of(InventedLoad.Pull(car), 38)!.Nominal;

        Assert.InRange(window.Low, 0.51, 0.52);
        Assert.False(GearedFor.Of(InventedLoad.Pull(car with { RearAxle = car.RearAxle! with { Ratio = InventedCar.Exactly(4.10 * window.Low * 0.999) } }), 38)!.Nominal.Contains(1));
    }

    // Ratios and tyre are exact, the efficiency of the driveline is not.
    [Fact]
    public void What_the_driveline_loses_is_kept_to_spare_and_the_redline_is_not()
    {
        var geared = Of(InventedLoad.WithTorque(90));

        Assert.InRange(geared.Sure!.Value.Low, geared.Nominal.Low + 0.01, geared.Nominal.High - 0.01);
        Assert.Equal(geared.Nominal.High, geared.Sure.Value.High, 1e-6);
    }

    // A tyre of ± 2 % may turn the engine 2 % faster: 1.01626 / 1.02 or hardly less is sure.
    [Fact]
    public void What_is_not_known_of_the_tyre_is_kept_clear_of_the_redline()
    {
        var geared = Of(InventedLoad.WithTorque(90) with { Tyres = new("tyres", InventedCar.Exactly(InventedCar.Of(2, 0.04 / 1.96)), null) });

        Assert.Equal(5000 / 60.0 / 82 / 1.02, geared.Sure!.Value.High, 1e-5);
        Assert.True(geared.Sure.Value.Low > geared.Nominal.Low);
    }

    // 83.8 kW at 4000 rev/min and 26.2 at 5000, where 41.7 are needed: shorter than where it turns 4000, 0.813, there is room, but not up to the redline.
    [Fact]
    public void An_engine_that_is_spent_at_its_redline_is_geared_below_it()
    {
        var car = InventedLoad.Car with { Engine = InventedLoad.Car.Engine! with { Torque = InventedLoad.Curve((1000, 200), (4000, 200), (5000, 50)) } };

        Assert.InRange(Of(car).Nominal.High, 4000 / 60.0 / 82, 4990 / 60.0 / 82);
    }

    // 40 m/s take 989.9 N, 41.66 kW at the engine: 79.6 N·m at 5000 rev/min. 80 leave 5 N, and 2 % of the driveline's efficiency are 21 N.
    [Fact]
    public void What_only_just_holds_it_is_sure_of_no_gearing()
    {
        var geared = Of(InventedLoad.WithTorque(80));

        Assert.Null(geared.Sure);
        Assert.Equal(5000 / 60.0 / 82, geared.Nominal.High, 1e-6);
        Assert.InRange(geared.Nominal.Low, 1.005, 1.012);
    }

    private static GearedFor Of(Driveline car) => GearedFor.Of(InventedLoad.Pull(car), Speed)!;

    private static bool Reaches(Driveline car, double factor)
        => TopSpeed.Of(InventedLoad.Pull(car with { RearAxle = car.RearAxle! with { Ratio = InventedCar.Exactly(4.10 * factor) } }))!.Speed.Value >= Speed;
}
