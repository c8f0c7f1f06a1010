using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.Tests.Drivelines;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.RoadLoad;

/// <summary>What holds of pull and road whatever the numbers are.</summary>
public sealed class RoadLoadLawsTests
{
    private static readonly DrivingResistance Road = new(1500, 0.014, 0.8, 1.2);

    [Fact]
    public void The_hill_that_a_force_holds_is_the_hill_that_takes_it()
        => Gen.Select(Gen.Double[-0.1, 0.8], Gen.Double[0, 50]).Sample((gradient, v) =>
        {
            var force = Road.At(v, gradient);

            Assert.Equal(gradient, Hills.Held((force - Road.Drag(v)) / Road.Weight, Road.RollingResistance)!.Value, 1e-9);
        });

    [Fact]
    public void More_grip_or_more_load_on_driven_wheels_holds_a_steeper_hill()
        => Gen.Select(Gen.Double[0.3, 1], Gen.Double[0.3, 1], Gen.Double[0.01, 0.1], Gen.Double[0, 0.3]).Sample((grip, share, more, shift) =>
        {
            var held = Hills.ByGrip(grip, share, 0.014, shift).Value;

            Assert.True(Hills.ByGrip(grip + more, share, 0.014, shift).Value > held);
            Assert.True(Hills.ByGrip(grip, share + more, 0.014, shift).Value > held);
        });

    [Fact]
    public void More_torque_or_a_lower_first_gear_never_starts_on_less_of_a_hill()
        => Gen.Select(Gen.Double[40, 400], Gen.Double[1, 100], Gen.Double[2.2, 5], Gen.Double[0.01, 2]).Sample((torque, stronger, first, lower) =>
        {
            var hill = Start(torque, first);

            Assert.True(Start(torque + stronger, first) >= hill);
            Assert.True(Start(torque, first + lower) >= hill);
        });

    [Fact]
    public void Overall_low_is_a_product_so_any_factor_may_give_it()
        => Gen.Select(Gen.Double[2, 6], Gen.Double[1.5, 4], Gen.Double[2.5, 6], Gen.Double[1.01, 1.5]).Sample((first, low, axle, factor) =>
        {
            var overall = Overall(first, low, axle) * factor;

            Assert.Equal(overall, Overall(first * factor, low, axle), 1e-9);
            Assert.Equal(overall, Overall(first, low * factor, axle), 1e-9);
            Assert.Equal(overall, Overall(first, low, axle * factor), 1e-9);
        });

    [Fact]
    public void No_force_in_the_diagram_is_more_than_the_tyres_hold()
        => Gen.Double[50, 500].Sample(torque =>
        {
            var diagram = TractiveEffort.Of(InventedLoad.Pull(InventedLoad.WithTorque(torque)), []);

            Assert.All(diagram.Gears.SelectMany(gear => gear.Points), point => Assert.True(point.Force <= diagram.SlipCap));
        });

    [Fact]
    public void An_axle_sees_more_torque_by_as_much_as_its_ratio_is_more()
        => Gen.Select(Gen.Double[2.5, 6], Gen.Double[1.01, 2]).Sample((ratio, more) =>
            Assert.Equal(
                AxleTorque.InLowGear(InventedLoad.Car, InventedCar.Axle(ratio))!.Value * more,
                AxleTorque.InLowGear(InventedLoad.Car, InventedCar.Axle(ratio * more))!.Value, 1e-6));

    [Fact]
    public void Some_is_lost_in_every_gear_and_least_in_the_direct_one()
        => Gen.Double[0.5, 6].Sample(ratio =>
        {
            var (gear, direct) = (Efficiency(ratio), Efficiency(1));

            Assert.InRange(gear, 0.85, 1);
            Assert.True(gear <= direct);
        });

    // By another way than the window was found: the axle itself is changed, and what the car then reaches is computed.
    [Fact]
    public void Within_the_gearing_for_a_speed_it_is_reached_and_beyond_it_not()
        => Gen.Select(Gen.Double[80, 130], Gen.Double[32, 42], Gen.Double[0, 1]).Sample((torque, speed, share) =>
        {
            var car = InventedLoad.WithTorque(torque);
            if (GearedFor.Of(InventedLoad.Pull(car), speed)?.Nominal is not { } window) return;

            var (low, high) = (Math.Max(window.Low, 0.4), Math.Min(window.High, 2.5));
            Assert.True(Reaches(car, (low * 1.000001) + (share * ((high * 0.999999) - (low * 1.000001))), speed));
            if (window.High < 2.5) Assert.False(Reaches(car, window.High * 1.00001, speed));
            if (window.Low > 0.4) Assert.False(Reaches(car, window.Low * 0.99999, speed));
        });

    [Fact]
    public void Gearing_for_a_speed_is_of_the_whole_ratio_wherever_it_is_changed()
        => Gen.Select(Gen.Double[80, 130], Gen.Double[0.97, 1.03]).Sample((torque, factor) =>
        {
            var car = InventedLoad.WithTorque(torque);
            var (window, changed) = (GearedFor.Of(InventedLoad.Pull(car), 38)!.Nominal, GearedFor.Of(InventedLoad.Pull(With(car, factor)), 38)!.Nominal);

            Assert.Equal(window.High, changed.High * factor, 1e-6);
            Assert.Equal(window.Low, changed.Low * factor, 1e-6);
        });

    private static Driveline With(Driveline car, double factor) => car with { RearAxle = car.RearAxle! with { Ratio = InventedCar.Exactly(4.10 * factor) } };

    private static bool Reaches(Driveline car, double factor, double speed) => TopSpeed.Of(InventedLoad.Pull(With(car, factor)))!.Speed.Value >= speed;

    private static double Start(double torque, double first)
    {
        var car = InventedLoad.WithTorque(torque);
        return HillStart.Of(car with { Transmission = new("box", [InventedCar.Gear("1", first), InventedCar.Gear("2", 1)]) })!.Gradient.Value;
    }

    private static double Overall(double first, double low, double axle) => LowRange.OverallRatio(new Driveline
    {
        Transmission = new("box", [InventedCar.Gear("1", first)]),
        TransferCase = new("case", null, InventedCar.Exactly(low)),
        RearAxle = InventedCar.Axle(axle),
    })!.Value;

    private static double Efficiency(double ratio) => DrivelineEfficiency.Of(InventedCar.Plain, new("gear", ratio, 1)).Value;
}
