using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Tests.Drivelines;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.RoadLoad;

public sealed class LowGearTests
{
    private static readonly double PoundFoot = Units.PoundFoot.Factor;
    private static readonly TransferCase Low = new("case", InventedCar.Exactly(1), InventedCar.Exactly(2.72));

    // 3.5 · 2.72 · 4.10 = 39.032; at 800 rev/min on 2.00 m: 13.333 · 2/39.032 m/s.
    [Fact]
    public void The_crawl_is_idle_through_everything()
    {
        var car = InventedCar.Plain with { TransferCase = Low, Engine = new("four", InventedCar.Exactly(800 / 60.0)) };

        Assert.Equal(39.032, LowRange.OverallRatio(car)!.Value, 1e-9);
        Assert.Equal(800 / 60.0 * 2 / 39.032, LowRange.CrawlSpeed(car)!.Value, 1e-9);
        Assert.Equal("1 low", LowRange.LowestStep(car)!.Name);
    }

    [Fact]
    public void Without_a_transfer_case_first_gear_is_the_lowest_and_without_its_low_nobody_knows()
    {
        Assert.Equal(14.35, LowRange.OverallRatio(InventedCar.Plain)!.Value, 1e-9);
        Assert.Null(LowRange.OverallRatio(InventedCar.Plain with { TransferCase = new("case", InventedCar.Exactly(1), null) }));
        Assert.Null(LowRange.LowestStep(InventedCar.Plain with { Transmission = new("empty", []) }));
        Assert.Null(LowRange.CrawlSpeed(InventedCar.Plain));
    }

    // The same case is before both.
    [Fact]
    public void Backwards_the_lowest_is_reverse()
    {
        var car = InventedCar.Plain with { Transmission = InventedCar.Plain.Transmission! with { Reverse = InventedCar.Exactly(3.8) } };

        Assert.Equal(("R", 3.8), Lowest(car));
        Assert.Equal(("R low", 3.8 * 2.72), Lowest(car with { TransferCase = Low }));
        Assert.Null(LowRange.LowestStep(InventedCar.Plain, Way.Backwards));

        static (string, double) Lowest(Driveline car) => LowRange.LowestStep(car, Way.Backwards) is { } step ? (step.Name, step.Ratio.Value) : default;
    }

    // 14.35 · 1.391 = 19.96. 50 N·m start as 69.55 N·m do in the low of the axle.
    [Fact]
    public void The_low_of_a_two_speed_axle_is_in_the_lowest_ratio_and_in_the_start()
    {
        var two = InventedLoad.WithTorque(50);
        two = two with { RearAxle = two.RearAxle! with { LowStep = InventedCar.Exactly(1.391) } };

        Assert.Equal(14.35 * 1.391, LowRange.OverallRatio(two)!.Value, 1e-9);
        Assert.Equal(HillStart.Of(InventedLoad.WithTorque(50 * 1.391))!.Gradient.Value, HillStart.Of(two)!.Gradient.Value, 1e-9);
        Assert.Equal(AxleTorque.InLowGear(InventedLoad.WithTorque(50), InventedCar.Axle(4.1))!.Value * 1.391, AxleTorque.InLowGear(two, two.RearAxle!)!.Value, 1e-9);
    }

    // First gear makes 200 · 3.5 · 4.10 · 0.9216 · π = 8309 N, asin(0.565) is more than the grip: 0.8 · 0.5 − 0.014 = 38.6 %.
    [Fact]
    public void Grip_ends_a_start_in_a_strong_first_gear()
    {
        var start = HillStart.Of(InventedLoad.Car)!;

        Assert.True(start.EndedByGrip);
        Assert.Equal(0.386, start.Gradient.Value, 1e-9);
    }

    // Gravity at 0.6 m over 2.4 m: s = 0.25. Behind 0.386 / (1 − 0.8 · 0.25) = 0.4825, in front 0.386 / 1.2 = 0.32167; with all wheels driven nothing moves.
    [Fact]
    public void A_hill_loads_the_rear_wheels_and_unloads_the_front_ones()
    {
        var tall = InventedLoad.Car with { Load = InventedLoad.Car.Load! with { GravityHeight = InventedCar.Exactly(0.6), Wheelbase = InventedCar.Exactly(2.4) } };
        var strong = tall with { Engine = InventedLoad.WithTorque(400).Engine };

        Assert.Equal(0.4825, HillStart.Of(strong)!.Gradient.Value, 1e-9);
        Assert.Equal(0.386 / 1.2, HillStart.Of(strong with { FrontAxle = strong.RearAxle, DrivesInFront = true })!.Gradient.Value, 1e-9);
        Assert.Equal(0.386, HillStart.Of(strong with { TransferCase = Low })!.Gradient.Value, 1e-9);
    }

    // A gravity as high as the wheelbase is long is a typing error, and moves nothing.
    [Fact]
    public void Where_the_height_cannot_be_or_is_not_known_a_hill_moves_no_load()
    {
        Assert.Equal(0.25, Shift(0.6), 1e-12);
        Assert.Equal(2.39 / 2.4, Shift(2.39), 1e-12);
        Assert.Equal(0, Shift(2.4));
        Assert.Equal(0, HillStart.Shift(InventedLoad.Car).Value);
        Assert.Equal(0, HillStart.Shift(new Driveline()).Value);

        static double Shift(double height)
            => HillStart.Shift(InventedLoad.Car with { Load = InventedLoad.Exact with { GravityHeight = InventedCar.Exactly(height), Wheelbase = InventedCar.Exactly(2.4) } }).Value;
    }

    // On the road a part-time front axle is out: 900 of 1500 kg pull, 0.8 · 0.6 − 0.014; in low range all of it, 0.8 − 0.014.
    [Fact]
    public void Grip_on_the_road_is_that_of_the_wheels_driven_there()
    {
        var truck = InventedLoad.WithTorque(400) with
        {
            FrontAxle = InventedCar.Axle(4.10),
            TransferCase = Low with { FrontDrive = FrontDrive.Declutch },
            AxleMasses = new(InventedCar.Exactly(600), InventedCar.Exactly(900)),
            Load = InventedLoad.Exact with { DrivenShare = null },
        };

        Assert.Equal(0.466, HillStart.ByGripOnTheRoad(InventedLoad.Pull(truck))!.Value, 1e-9);
        Assert.Equal(0.786, HillStart.Of(truck)!.Gradient.Value, 1e-9);
        Assert.Null(HillStart.ByGripOnTheRoad(InventedLoad.Pull(truck with { AxleMasses = null })));
        Assert.Null(HillStart.Of(InventedLoad.Car with { Load = InventedLoad.Exact with { DrivenShare = null } }));
        Assert.Null(HillStart.Of(InventedLoad.Car with { Engine = null }));
        Assert.Null(HillStart.Of(InventedLoad.Car with { Transmission = null }));
    }

    // First gear at 100 N·m: 100 · 3.5 · 4.10 · 0.96 · 0.96 · 2π/2 N.
    [Fact]
    public void It_says_with_which_force_and_gear_it_pulls_away()
    {
        var start = HillStart.Of(InventedLoad.WithTorque(100))!;

        Assert.Equal("1", start.Step.Name);
        Assert.Equal(100 * 3.5 * 4.10 * 0.96 * 0.96 * Math.PI, start.Force.Value, 1e-6);
    }

    // 100 N·m: p = 4154.9/14710 = 0.28245; θ = asin(0.28242) − 0.0139991 = 0.272332; tan = 0.27928.
    [Fact]
    public void The_engine_ends_it_where_it_is_weaker_than_the_grip()
    {
        var start = HillStart.Of(InventedLoad.WithTorque(100))!;

        Assert.False(start.EndedByGrip);
        Assert.Equal(0.27928, start.Gradient.Value, 2e-4);
    }

    // The lowest clean pull is where the torque is read; a converter multiplies what there is at its stall.
    [Fact]
    public void It_pulls_away_with_the_torque_of_where_it_pulls_away()
    {
        var engine = new Engine("four") { Torque = InventedLoad.Curve((1000, 50), (2000, 100), (3000, 150)), LowestPull = InventedCar.Exactly(1500 / 60.0) };
        var car = InventedLoad.Car with { Engine = engine };
        var automatic = car with { Transmission = car.Transmission! with { Converter = new(true, InventedCar.Exactly(2000 / 60.0), InventedCar.Exactly(2)) } };
        var first = InventedLoad.Step(car, "1");

        Assert.Equal(75.0 / 50, Force(car) / Force(car with { Engine = engine with { LowestPull = null } }), 1e-9);
        Assert.Equal(200.0 / 75, Force(automatic) / Force(car), 1e-9);

        double Force(Driveline of) => InventedLoad.Pull(of).PullAwayForce(first).Value;
    }

    // The published rule, 180 lb·ft, 13.055, 800 turns a mile, 4400 lb: 39.93 %.
    [Fact]
    public void The_truck_trades_rule_gives_its_worked_figure() => Assert.Equal(0.399303, Startability.Gradient(180, 13.055, 800, 4400), 1e-6);

    // 200 N·m are 147.5124 lb·ft, 3.5 · 4.10 = 14.35, 1609.344/2 = 804.672 turns a mile, 1500 kg 3306.934 lb: 48.138 %.
    [Fact]
    public void The_rule_takes_a_driveline_in_its_own_pounds_and_feet()
    {
        Assert.Equal(0.48138, Startability.Of(InventedLoad.Pull(InventedLoad.Car))!.Value, 1e-5);
        Assert.Null(Startability.Of(InventedLoad.Pull(InventedLoad.Car with { Transmission = InventedLoad.Car.Transmission! with { Converter = new(true) } })));
        Assert.Null(Startability.Of(InventedLoad.Pull(InventedLoad.Car with { TransferCase = new("case", InventedCar.Exactly(1), null) })));
    }

    // What is wanted, second-hand from SAE J2469: 16, 25 and 30 %.
    [Theory]
    [InlineData(0.159, "too little for the highway")]
    [InlineData(0.16, "enough for the highway")]
    [InlineData(0.249, "enough for the highway")]
    [InlineData(0.25, "enough for moderate going")]
    [InlineData(0.299, "enough for moderate going")]
    [InlineData(0.30, "enough for severe going")]
    public void The_rule_has_three_steps(double gradient, string says) => Assert.Equal(says, Startability.EnoughFor(gradient));

    // Statics with the 0.785 that hides in 10.7, no roll: the rule takes the sine for the tangent, which is right on small hills.
    [Fact]
    public void On_small_hills_the_rule_and_statics_agree()
        => Gen.Select(Gen.Double[20, 60], Gen.Double[4, 10], Gen.Double[600, 900], Gen.Double[3000, 6000]).Sample((torque, ratio, turns, pounds) =>
        {
            var rule = Startability.Gradient(torque, ratio, turns, pounds);
            if (rule > 0.1) return;

            var force = torque * PoundFoot * ratio * 0.7853 * 2 * Math.PI * turns / 1609.344;
            Assert.Equal(rule, Hills.Held(force / (pounds * Units.PoundForce), 0)!.Value, 0.006 * rule);
        });

    // 380 lb·ft, 3.5, low 2.72, axle 4.10: 2921.21 lb·ft at the propshaft, 11 378 at the wheels. The same with 2.48, converter 2.0, no transfer case: 1507.84.
    [Fact]
    public void Low_gear_torque_is_the_worked_one()
    {
        var car = InventedCar.Plain with { TransferCase = Low, Engine = new("eight") { Torque = InventedLoad.Flat(380 * PoundFoot) } };
        var automatic = car with
        {
            TransferCase = null,
            Transmission = new("automatic", [InventedCar.Gear("1", 2.48)]) { Converter = new(false, null, InventedCar.Exactly(2)) },
        };

        Assert.Equal(2921.21 * 4.10 * 0.95, AxleTorque.InLowGear(car, car.RearAxle!)!.Value / PoundFoot, 0.1);
        Assert.Equal(1507.84 * 4.10 * 0.95, AxleTorque.InLowGear(automatic, car.RearAxle!)!.Value / PoundFoot, 0.1);
        Assert.Null(AxleTorque.InLowGear(InventedCar.Plain, car.RearAxle!));
    }

    // 3500 lb, rolling radius 15 in: 3106 lb·ft at the wheels, 797.5 at the propshaft through 4.10 and 0.95.
    [Fact]
    public void Wheel_slip_torque_is_the_worked_one()
    {
        var slip = AxleTorque.AtWheelSlip(0.71, 3500 * 0.45359237, 2 * Math.PI * 15 * 0.0254).Value / PoundFoot;

        Assert.Equal(3106.25, slip, 0.01);
        Assert.Equal(797.497, slip / 4.10 / 0.95, 0.1);
    }
}
