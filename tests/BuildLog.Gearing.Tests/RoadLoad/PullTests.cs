using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.Tests.Drivelines;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.RoadLoad;

public sealed class PullTests
{
    // Top gear at 30 m/s, by hand: n = 30 · 4.10/2.00 = 61.5 rev/s; F = 200 · 4.10 · (0.99 · 0.96) · 2π/2.00 = 2448.33 N;
    // resistance 1500 · 9.80665 · 0.014 + ½ · 1.225 · 0.8 · 900 = 205.94 + 441.00 N.
    [Fact]
    public void Force_reserve_and_power_in_top_are_those_worked_by_hand()
    {
        var (pull, top) = (InventedLoad.Pull(InventedLoad.Car), InventedLoad.Step(InventedLoad.Car));

        Assert.Equal(61.5, pull.EngineSpeed(top, 30).Value, 1e-9);
        Assert.Equal(2448.33, pull.Force(top, 30)!.Value, 0.01);
        Assert.Equal(2448.33 - 646.94, pull.Reserve(top, 30)!.Value, 0.01);
        Assert.Equal(2448.33 * 30, pull.PowerAtWheels(top, 30)!.Value, 0.3);
        Assert.Equal(200 * 646.94 / 2448.33, pull.TorqueNeeded(top, 30).Value, 0.001);
        Assert.Equal(646.94 * 30 / 0.9504, pull.PowerNeeded(top, 30).Value, 0.3);
    }

    // An indirect gear loses 4 % in its gears, not 1 %: third at 20 m/s, 200 · 1.4 · 4.10 · 0.9216 · π.
    [Fact]
    public void An_indirect_gear_loses_more()
        => Assert.Equal(200 * 1.4 * 4.10 * 0.96 * 0.96 * Math.PI, InventedLoad.Pull(InventedLoad.Car).Force(InventedLoad.Step(InventedLoad.Car, "3"), 20)!.Value, 1e-6);

    // Half a per cent off 1 is gears in mesh: 0.96 for 0.99, each times 0.96 at the pinion, ± 0.02 (u) for all together.
    [Theory]
    [InlineData(1, 0.99)]
    [InlineData(0.996, 0.99)]
    [InlineData(1.004, 0.99)]
    [InlineData(0.994, 0.96)]
    [InlineData(1.006, 0.96)]
    public void A_gear_of_nearly_one_is_direct(double ratio, double stage)
    {
        var efficiency = DrivelineEfficiency.Of(InventedCar.Plain, new("gear", ratio, 1));

        Assert.Equal(stage * 0.96, efficiency.Value, 1e-12);
        Assert.Equal(0.02, efficiency.StandardUncertainty, 1e-12);
    }

    [Fact]
    public void A_transfer_case_takes_its_share()
    {
        var car = InventedLoad.Car with { TransferCase = new("case", InventedCar.Exactly(1), InventedCar.Exactly(2.5)) };

        Assert.Equal(0.99, InventedLoad.Pull(car).Force(InventedLoad.Step(car), 30)!.Value / InventedLoad.Pull(InventedLoad.Car).Force(InventedLoad.Step(InventedLoad.Car), 30)!.Value, 1e-12);
    }

    // By hand: p = (2448.33 − 441.00)/14709.98 = 0.136461; θ = asin(0.136449) − atan(0.014) = 0.122877; tan θ = 0.12350.
    [Fact]
    public void The_steepest_hill_in_top_is_the_one_worked_by_hand()
        => Assert.Equal(0.12350, InventedLoad.Pull(InventedLoad.Car).Hill(InventedLoad.Step(InventedLoad.Car), 30)!.Value, 1e-5);

    // Worked by hand in the short form (roll without cos θ): 200 N·m through 3.73 · 0.70, η 0.9, C 2.05 m, the 1800 kg case at 100 km/h:
    // 3.592 %, with g = 9.81.
    [Fact]
    public void A_worked_hill_in_overdrive_agrees()
    {
        var resistance = new DrivingResistance(1800, 0.015, 1.17, 1.2);
        var force = 200 * 3.73 * 0.70 * 0.9 * 2 * Math.PI / 2.05;

        Assert.Equal(0.035924, Hills.Held((force - resistance.Drag(100 / 3.6)) / resistance.Weight, 0.015)!.Value, 4e-5);
    }

    [Fact]
    public void On_the_hill_it_holds_nothing_is_left()
        => Gen.Select(Gen.Double[5, 39], Gen.Double[60, 300]).Sample((v, torque) =>
        {
            var car = InventedLoad.WithTorque(torque);
            var (pull, top) = (InventedLoad.Pull(car), InventedLoad.Step(car));
            if (pull.Hill(top, v) is { } hill) Assert.Equal(0, pull.Reserve(top, v, hill.Value)!.Value, 1e-6);
        });

    [Fact]
    public void A_force_that_lifts_it_up_a_wall_holds_no_hill() => Assert.Null(Hills.Held(1.2, 0.014));

    [Fact]
    public void Beyond_the_torque_curve_nothing_is_said()
    {
        var (pull, top) = (InventedLoad.Pull(InventedLoad.Car), InventedLoad.Step(InventedLoad.Car));

        Assert.Null(pull.Force(top, 5));
        Assert.Null(pull.Hill(top, 45));
    }

    // σ − (1 − σ)/7.55 at 2000 m, σ = 1.0066/1.225: 0.7980; a charged engine keeps all.
    [Fact]
    public void Altitude_takes_from_the_engine_that_breathes_by_itself()
    {
        double Force(Induction induction)
        {
            var car = InventedLoad.Car with
            {
                Engine = InventedLoad.Car.Engine! with { Induction = induction },
                Load = InventedLoad.Exact with { Altitude = 2000 },
            };
            return InventedLoad.Pull(car).Force(InventedLoad.Step(car), 30)!.Value;
        }

        Assert.Equal(2448.33, Force(Induction.Charged), 0.01);
        Assert.Equal(2448.33 * 0.7980, Force(Induction.NaturallyAspirated), 0.3);
    }

    // 1500 kg are 3306.93 lb, 0.8 m² are 8.6111 sq ft, 200 N·m are 147.512 lb·ft, 2.00 m are 78.740 in.
    [Fact]
    public void The_same_car_in_pounds_feet_and_inches_pulls_the_same()
    {
        double Typed(string text, Kind kind) => QuantityText.Read(text, kind).OrRefuse().Value;
        var pounds = InventedCar.Plain with
        {
            Engine = new("four") { Torque = InventedLoad.Flat(Typed("147.5124299 lb-ft", Kind.Torque)) },
            Tyres = InventedCar.Rolling(Typed("78.74015748 in", Kind.Length)),
            Load = InventedLoad.Exact with
            {
                Mass = InventedCar.Exactly(Typed("3306.9339328 lb", Kind.Mass)),
                DragArea = InventedCar.Exactly(Typed("8.6111283 sq ft", Kind.Area)),
            },
        };
        var v = Typed("67.10808876 mph", Kind.Speed);

        Assert.Equal(InventedLoad.Pull(InventedLoad.Car).Hill(InventedLoad.Step(InventedLoad.Car), 30)!.Value, InventedLoad.Pull(pounds).Hill(InventedLoad.Step(pounds), v)!.Value, 1e-7);
    }

    // 61.5 rev/s locked, 5.5 % slip: 65.079.
    [Fact]
    public void A_slipping_converter_turns_the_engine_faster()
    {
        var car = InventedLoad.Car with { Transmission = InventedLoad.Car.Transmission! with { Converter = new(LocksUp: false) } };

        Assert.Equal(61.5 / 0.945, InventedLoad.Pull(car).EngineSpeed(InventedLoad.Step(car), 30).Value, 1e-9);
        Assert.Equal(30, InventedLoad.Pull(car).RoadSpeed(InventedLoad.Step(car), 61.5 / 0.945).Value, 1e-9);
    }

    // 2000 m, and a converter that slips: the most that arrives is what arrives at the end of a flat curve, where its power peaks.
    [Fact]
    public void The_most_power_at_the_wheels_is_what_arrives_there_at_peak_power()
    {
        var car = InventedLoad.Car with
        {
            Transmission = InventedLoad.Car.Transmission! with { Converter = new(LocksUp: false) },
            Load = InventedLoad.Exact with { Altitude = 2000 },
        };
        var (pull, top) = (InventedLoad.Pull(car), InventedLoad.Step(car));

        Assert.Equal(pull.PowerAtWheels(top, pull.RoadSpeed(top, 5000 / 60.0 * (1 - 1e-12)).Value)!.Value, pull.AtWheels(top, pull.Torque.PeakPower).Value, 1e-6 * pull.AtWheels(top, pull.Torque.PeakPower).Value);
        Assert.Equal(104_720 * 0.9504 * 0.945 * 0.7980, pull.AtWheels(top, pull.Torque.PeakPower).Value, 10.0);
    }

    [Fact]
    public void Without_one_of_its_numbers_there_is_no_pull()
    {
        Assert.Null(Pull.Of(InventedCar.Plain));
        Assert.Null(Pull.Of(InventedLoad.Car with { Engine = new("four") }));
        Assert.Null(Pull.Of(InventedLoad.Car with { Load = null }));
        Assert.Null(Pull.Of(InventedLoad.Car with { RearAxle = null }));
        Assert.Null(Pull.Of(InventedLoad.Car with { Tyres = null }));
    }
}
