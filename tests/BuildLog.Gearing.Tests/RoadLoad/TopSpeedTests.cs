using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Tests.Drivelines;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.RoadLoad;

public sealed class TopSpeedTests
{
    // 5000 rev/min in top: 83.333 · 2.00/4.10 = 40.650 m/s, where 2448 N stand against 1016 N.
    [Fact]
    public void With_power_to_spare_the_engine_speed_ends_it()
    {
        var top = Of(InventedLoad.Car);

        Assert.Equal((TopSpeedLimit.Gear, "4"), (top.Limit, top.Step.Name));
        Assert.Equal(5000 / 60.0 * 2 / 4.10, top.Speed.Value, 1e-9);
    }

    [Fact]
    public void A_redline_below_the_curves_end_ends_it_earlier()
        => Assert.Equal(4500 / 60.0 * 2 / 4.10, Of(InventedLoad.Car with { Engine = InventedLoad.Car.Engine! with { Redline = InventedCar.Exactly(75) } }).Speed.Value, 1e-9);

    // 60 N·m in top make 734.50 N: v² = (734.50 − 205.94)/(½ · 1.225 · 0.8). Third would be over at 29.04 m/s.
    [Fact]
    public void With_less_power_the_road_ends_it()
    {
        var top = Of(InventedLoad.WithTorque(60));

        Assert.Equal((TopSpeedLimit.Power, "4"), (top.Limit, top.Step.Name));
        Assert.Equal(Math.Sqrt((734.504 - 205.940) / (0.5 * 1.225 * 0.8)), top.Speed.Value, 1e-3);
    }

    // Top 0.5: 60 N·m make 367 · 0.96/0.99 N, which is 17.6 m/s; third, 1.4, is over at 29.04 m/s and gets there.
    [Fact]
    public void A_gear_too_tall_is_slower_than_the_one_below()
    {
        var car = InventedLoad.WithTorque(60) with
        {
            Transmission = new("tall", [InventedCar.Gear("1", 3.5), InventedCar.Gear("2", 2.1), InventedCar.Gear("3", 1.4), InventedCar.Gear("4", 0.5)]),
        };

        Assert.Equal((TopSpeedLimit.Gear, "3"), (Of(car).Limit, Of(car).Step.Name));
        Assert.True(TopSpeed.In(InventedLoad.Pull(car), InventedLoad.Step(car))!.Speed.Value < Of(car).Speed.Value);
    }

    // Flat to 5000 rev/min with power to spare: 40.650 m/s at least. A redline of 6000 leaves 48.780 m/s, and one that nobody knows leaves all open.
    [Theory]
    [InlineData(6000.0, 48.780)]
    [InlineData(null, null)]
    public void Where_the_torque_curve_ends_first_it_is_the_least(double? redline, double? most)
    {
        var top = Of(InventedLoad.Car with { Engine = InventedLoad.Car.Engine! with { Redline = redline is { } rpm ? InventedCar.Exactly(rpm / 60) : null } });

        Assert.Equal(TopSpeedLimit.Unknown, top.Limit);
        Assert.Equal(40.650, top.Speed.Value, 1e-3);
        Assert.Equal(most, top.Most is { } known ? Math.Round(known.Value, 3) : null);
    }

    // Anywhere from 40.650 to 48.780 m/s: 44.715 ± 4.065/√3 = 2.347. Where the most is not known, or the limit is, it is the speed itself.
    [Fact]
    public void It_likely_lies_half_way_to_what_it_cannot_exceed()
    {
        Driveline With(double? redline) => InventedLoad.Car with { Engine = InventedLoad.Car.Engine! with { Redline = redline is { } rpm ? InventedCar.Exactly(rpm / 60) : null } };
        var likely = Of(With(6000)).Likely;

        Assert.Equal((44.715, 2.347), (Math.Round(likely.Value, 3), Math.Round(likely.StandardUncertainty, 3)));
        Assert.All([Of(With(null)), Of(With(5000))], top => Assert.Same(top.Speed, top.Likely));
    }

    // 200 N·m at 4000 and 158 at 5000: power peaks before the end and falls to 82.73 kW. That is all it can make beyond, and (205.94 + 0.49 v²) v = 82 730 · 0.9504 has
    // v = 51.77 m/s, less than the 56.91 of a redline of 7000.
    [Fact]
    public void Past_the_power_peak_the_power_at_the_end_is_the_most_it_can_use()
    {
        var engine = new Engine("four", Redline: InventedCar.Exactly(7000 / 60.0)) { Torque = InventedLoad.Curve((1000, 200), (4000, 200), (5000, 158)) };
        var top = Of(InventedLoad.Car with { Engine = engine });

        Assert.Equal((TopSpeedLimit.Unknown, 40.650), (top.Limit, Math.Round(top.Speed.Value, 3)));
        Assert.Equal(82_730 * 0.9504, (205.940 + (0.49 * top.Most!.Value * top.Most.Value)) * top.Most.Value, 10.0);
        Assert.Equal((top.Speed.Value + top.Most.Value) / 2, top.Likely.Value, 1e-9);
    }

    // 60 N·m: top is ended by the road at 32.843 m/s, third by the curve at 29.04. With a redline of 6000, third may reach 34.843; without one nobody knows.
    [Fact]
    public void A_lower_gear_whose_end_is_not_known_may_overtake()
    {
        var car = InventedLoad.WithTorque(60);
        Driveline With(double? rpm) => car with { Engine = car.Engine! with { Redline = rpm is { } known ? InventedCar.Exactly(known / 60) : null } };

        Assert.Equal(TopSpeedLimit.Power, Of(With(5500)).Limit);
        Assert.Equal(TopSpeedLimit.Unknown, Of(With(null)).Limit);
        Assert.Equal(32.843, Of(With(null)).Speed.Value, 1e-3);
        Assert.Equal((TopSpeedLimit.Unknown, 34.843), (Of(With(6000)).Limit, Math.Round(Of(With(6000)).Most!.Value, 3)));
    }

    // A curve of one point only, or of none, that the engine may turn at.
    [Theory]
    [InlineData(500)]
    [InlineData(1000)]
    public void A_redline_below_the_torque_curve_leaves_no_pull(double rpm)
        => Assert.Null(BuildLog.Gearing.RoadLoad.Pull.Of(InventedLoad.Car with { Engine = InventedLoad.Car.Engine! with { Redline = InventedCar.Exactly(rpm / 60) } }));

    // The smallest step above the first point: there is next to no curve, and nothing that walks along it may fall off.
    [Fact]
    public void A_redline_a_hair_above_the_torque_curve_is_walked_to()
    {
        var car = InventedLoad.Car with { Engine = InventedLoad.Car.Engine! with { Redline = InventedCar.Exactly(Math.BitIncrement(1000 / 60.0)) } };

        Assert.Equal(1000 / 60.0 * 2 / 4.10, Of(car).Speed.Value, 1e-9);
        Assert.Equal(4, TractiveEffort.Of(InventedLoad.Pull(car), [0]).Gears.Count);
    }

    [Fact]
    public void An_engine_that_cannot_move_it_has_no_top_speed() => Assert.Null(TopSpeed.Of(InventedLoad.Pull(InventedLoad.WithTorque(1))));

    // Second route: v = √((F − m g Crr)/k) propagated by hand: u(v) = u(m) · g Crr/(2 k v).
    [Fact]
    public void An_uncertain_mass_makes_it_uncertain_as_the_closed_form_says()
    {
        var car = InventedLoad.WithTorque(60) with { Load = InventedLoad.Exact with { Mass = InventedCar.Exactly(InventedCar.Of(1500, 75, "mass")) } };
        var mass = Of(car).Speed.Budget().Single(line => line.Input.Name == "mass");

        Assert.Equal(75 * 9.80665 * 0.014 / (2 * 0.49 * 32.843), mass.Contribution, 1e-3);
    }

    // Peak power through the losses meets R(v) v: 200 N·m at 5000 rev/min is 104.72 kW.
    [Fact]
    public void At_the_speed_of_peak_power_the_road_takes_all_of_it()
    {
        var v = TopSpeed.ByPeakPower(InventedLoad.Pull(InventedLoad.Car)).Value;

        Assert.Equal(200 * 2 * Math.PI * 5000 / 60 * 0.9504, (205.940 + (0.49 * v * v)) * v, 0.1);
    }

    [Fact]
    public void More_torque_is_never_slower()
        => Gen.Select(Gen.Double[30, 250], Gen.Double[1, 50]).Sample((torque, more) =>
            Assert.True((TopSpeed.Of(InventedLoad.Pull(InventedLoad.WithTorque(torque + more)))?.Speed.Value ?? 0)
                >= (TopSpeed.Of(InventedLoad.Pull(InventedLoad.WithTorque(torque)))?.Speed.Value ?? 0) - 1e-9));

    [Fact]
    public void The_diagram_has_a_curve_a_gear_cut_by_grip()
    {
        var diagram = TractiveEffort.Of(InventedLoad.Pull(InventedLoad.Car), [0, 0.1]);

        // μ w m g = 0.8 · 0.5 · 14 710; first gear makes 8310 N of it and more, top 2448.
        Assert.Equal(5884.0, diagram.SlipCap!.Value, 0.1);
        Assert.Equal(["1", "2", "3", "4"], diagram.Gears.Select(gear => gear.Gear));
        Assert.All(diagram.Gears[0].Points, point => Assert.Equal((diagram.SlipCap.Value, true), (point.Force, point.CutByGrip)));
        Assert.All(diagram.Gears[3].Points, point => Assert.False(point.CutByGrip));
        Assert.Equal(5000 / 60.0 * 2 / 4.10, diagram.Gears[3].Points[^1].Speed, 1e-6);
        Assert.Equal(205.94, diagram.Gradients[0].Points[0].Force, 0.01);
        Assert.True(diagram.Gradients[1].Points[0].Force > 1400);
    }

    // The diagram is the road's: there a part-time front axle is out, and 900 of 1500 kg are left to pull with.
    [Fact]
    public void A_part_time_front_axle_lifts_no_cap()
    {
        var truck = InventedLoad.Car with
        {
            FrontAxle = InventedCar.Axle(4.10),
            TransferCase = new("case", InventedCar.Exactly(1), InventedCar.Exactly(2.5)) { FrontDrive = FrontDrive.Declutch },
            AxleMasses = new(InventedCar.Exactly(600), InventedCar.Exactly(900)),
            Load = InventedLoad.Exact with { DrivenShare = InventedCar.Exactly(1) },
        };

        Assert.Equal(0.8 * 0.6 * 1500 * 9.80665, TractiveEffort.Of(InventedLoad.Pull(truck), []).SlipCap!.Value, 1e-6);
    }

    // Two points are a line from the first point of the torque curve to its last; one is none.
    [Fact]
    public void A_curve_of_two_points_has_the_ends_of_the_torque_curve()
    {
        var top = TractiveEffort.Of(InventedLoad.Pull(InventedLoad.Car), [0], 2);

        Assert.Equal([Top(1000), Top(5000)], top.Gears[3].Points.Select(point => point.Speed), (one, other) => Math.Abs(one - other) < 1e-5);
        Assert.Equal([0, top.Gears[3].Points[1].Speed], top.Gradients[0].Points.Select(point => point.Speed));
        Assert.Equal(Top(3000), TractiveEffort.Of(InventedLoad.Pull(InventedLoad.Car), [0], 3).Gears[3].Points[1].Speed, 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>("points", () => TractiveEffort.Of(InventedLoad.Pull(InventedLoad.Car), [0], 1));

        static double Top(double rpm) => rpm / 60 * 2 / 4.10;
    }

    // The weight of 14 710 N · (0.014 cos θ + sin θ) on 10 %, θ = 5.7106°: 1668.6 N standing still.
    [Fact]
    public void A_line_of_the_diagram_is_the_resistance_on_that_gradient()
    {
        var line = TractiveEffort.Of(InventedLoad.Pull(InventedLoad.Car), [0.1]).Gradients[0];

        Assert.Equal(0.1, line.Gradient);
        Assert.Equal(1668.6, line.Points[0].Force, 0.1);
        Assert.All(line.Points, point => Assert.Equal(1668.6 + (0.49 * point.Speed * point.Speed), point.Force, 0.1));
        Assert.All(line.Points, point => Assert.False(point.CutByGrip));
    }

    [Fact]
    public void Without_the_driven_load_there_is_no_cap()
        => Assert.Null(TractiveEffort.Of(InventedLoad.Pull(InventedLoad.Car with { Load = InventedLoad.Exact with { DrivenShare = null } }), []).SlipCap);

    private static TopSpeed Of(Driveline car) => TopSpeed.Of(InventedLoad.Pull(car))!;
}
