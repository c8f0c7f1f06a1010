using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

public sealed class HillStartCheckTests
{
    // Grip gives 38.6 % exactly; 100 N·m give 27.9 % with u of the losses.
    [Theory]
    [InlineData(200, "30 %", Verdict.Fits)]
    [InlineData(200, "40 %", Verdict.Clash)]
    [InlineData(100, "28 %", Verdict.Watch)]
    public void The_owners_hill_is_a_limit(double torque, string gradient, Verdict verdict)
        => Assert.Equal(verdict, Find(InventedLoad.WithTorque(torque), gradient).Verdict);

    // 40 % at μ 0.8: (0.4 + 0.014)/0.8 = 51.75 % of the mass; 90 % need more than all of it.
    [Fact]
    public void Where_the_wheels_spin_load_on_them_is_the_cure()
    {
        Assert.Equal("52 % or more of the mass on driven wheels", Assert.Single(Find(InventedLoad.Car, "40 %").Cures));
        Assert.Contains("the driven wheels spin first", Find(InventedLoad.Car, "40 %").Says, StringComparison.Ordinal);
        Assert.Equal("all wheels driven, on ground and tyres with a grip of 0.92 or more", Find(InventedLoad.Car, "90 %").Cures[0]);
    }

    // Gravity at 0.6 m over 2.4 m: a hill of 52 % puts 0.25 · 0.52 of it onto the rear, (0.52 + 0.014)/0.8 − 0.13 = 53.75 % have to stand there on the level.
    [Fact]
    public void What_a_hill_moves_onto_driven_wheels_need_not_stand_there()
    {
        var tall = InventedLoad.WithTorque(400) with { Load = InventedLoad.Exact with { GravityHeight = InventedCar.Exactly(0.6), Wheelbase = InventedCar.Exactly(2.4) } };

        Assert.Equal("54 % or more of the mass on driven wheels", Assert.Single(Find(tall, "52 %").Cures));
        Assert.Contains("where the engine gives up first", Find(InventedLoad.WithTorque(100), "35 %").Says, StringComparison.Ordinal);
    }

    // 35 %: θ = 0.33667; 14709.98 · (0.014 · 0.94386 + 0.33035) = 5053.8 N against 4154.5: 14.35 · 1.2165 = 17.46, and what the tyre and the torque are not known by on top.
    [Fact]
    public void Where_the_engine_gives_up_a_lower_ratio_is_the_cure()
        => Assert.Equal("an overall low ratio of 18.2 or more", Assert.Single(Find(InventedLoad.WithTorque(100), "35 %").Cures));

    // 100 N·m is 73.76 lb·ft, 1500 kg 3306.9 lb, 2.00 m 804.7 turns a mile: 73.76 · 14.35 · 804.7/(10.7 · 3306.9) = 24.07.
    [Theory]
    [InlineData(100, "gives 24 % at 1500 kg as driven: enough for the highway.")]
    [InlineData(200, "gives 48 % at 1500 kg as driven: enough for severe going.")]
    [InlineData(50, "gives 12 % at 1500 kg as driven: too little for the highway.")]
    public void The_truck_trades_rule_is_a_second_opinion(double torque, string rule)
        => Assert.EndsWith($"{rule} The trade asks it of the gross mass, trailer and all.", Find(InventedLoad.WithTorque(torque), "20 %").Says, StringComparison.Ordinal);

    [Fact]
    public void What_nobody_told_is_named()
    {
        var usual = InventedLoad.Car with
        {
            Engine = new("six") { Torque = PlausibleCurve.From(200, 2500 / 60.0, 70_000, 4400 / 60.0) },
            Load = InventedLoad.Exact with { Grip = new VehicleLoad().Grip, RollingResistance = new(0.014, Source.Assumed) },
        };

        Assert.EndsWith(" Assumed: a grip of 0.80 ± 0.10 (dry road) and a rolling resistance of 0.014.", Find(usual, "20 %").Says, StringComparison.Ordinal);
        Assert.DoesNotContain("Assumed", Find(InventedLoad.Car, "20 %").Says, StringComparison.Ordinal);
    }

    [Fact]
    public void The_rule_is_not_for_a_converter()
    {
        var car = InventedLoad.Car with { Transmission = InventedLoad.Car.Transmission! with { Converter = new(true) } };

        Assert.DoesNotContain("rule", Find(car, "20 %").Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_the_goal_nothing_and_without_the_numbers_open()
    {
        Assert.Empty(new HillStartCheck().Look(InventedLoad.Car, CheckCase.NoGoals));
        Assert.Contains("weigh the axles one by one", Find(InventedLoad.Car with { Load = InventedLoad.Exact with { DrivenShare = null } }, "20 %").Cures);
        Assert.Equal(Verdict.Open, Find(new(), "20 %").Verdict);
    }

    // In low all wheels pull: grip gives (0.8 · 1 − 0.014)/1 = 78.6 %, though only half of the mass is driven on the road.
    [Fact]
    public void A_part_time_front_axle_pulls_in_the_low_range()
    {
        var truck = InventedLoad.WithTorque(400) with
        {
            FrontAxle = InventedCar.Axle(4.10),
            TransferCase = new("case", InventedCar.Exactly(1), InventedCar.Exactly(2.5)) { FrontDrive = FrontDrive.Declutch },
        };

        Assert.Equal(0.786, Find(truck, "40 %").Value!.Value, 1e-12);
        Assert.Equal(Verdict.Fits, Find(truck with { Load = InventedLoad.Exact with { DrivenShare = null } }, "40 %").Verdict);
    }

    private static Finding Find(Driveline car, string gradient) => Assert.Single(new HillStartCheck().Look(car, CheckCase.NoGoals with { HillStart = HillStartGoal.Read(gradient).OrRefuse() }));
}
