using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Speeds;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Speeds;

public sealed class SpeedRelationTests
{
    // Engine rev/min, gear, axle, circumference m.
    private static readonly Gen<(double Rpm, double Gear, double Axle, double Circumference)> AnyDriveline =
        Gen.Select(Gen.Double[600, 8000], Gen.Double[0.5, 8], Gen.Double[2, 9], Gen.Double[1.2, 4]);

    // By hand: 3000 rev/min are 50 a second; 50 / 4 = 12.5 wheel turns; · 2 m = 25 m/s = 90 km/h.
    private static readonly SpeedRelation Ninety = new() { EngineSpeed = 50, RoadSpeed = 25, Gear = 2, Axle = 2, Circumference = 2 };

    public static TheoryData<Unknown, double> Unknowns => new()
    {
        { Unknown.RoadSpeed, 25 },
        { Unknown.EngineSpeed, 50 },
        { Unknown.Gear, 2 },
        { Unknown.Axle, 2 },
        { Unknown.Circumference, 2 },
    };

    [Theory]
    [MemberData(nameof(Unknowns))]
    public void Each_of_the_five_follows_from_the_other_four(Unknown unknown, double expected)
    {
        var left = Without(Ninety, unknown);

        Assert.Equal([unknown], left.Missing);
        Assert.Equal(expected, Value(left.Solved(), unknown), 1e-12);
    }

    // By hand: overall 2 · 0.8 · 2.5 · 2 · 1.5 = 12; 50 · (1 − 0.04) / 12 = 4 wheel turns a second; · 2 m = 8 m/s.
    [Fact]
    public void Overdrive_transfer_case_hub_and_slip_all_count()
    {
        var relation = new SpeedRelation { EngineSpeed = 50, Gear = 2, Axle = 2, Circumference = 2, Overdrive = 0.8, Transfer = 2.5, Hub = 1.5, Slip = 0.04 }.Solved();

        Assert.Equal(12, relation.OverallRatio.Value, 1e-12);
        Assert.Equal(4, relation.WheelSpeed.Value, 1e-12);
        Assert.Equal(8, relation.RoadSpeed!.Value, 1e-12);
        foreach (var unknown in Enum.GetValues<Unknown>())
            Assert.Equal(Value(relation, unknown), Value(Without(relation, unknown).Solved(), unknown), 1e-12);
    }

    // The driveline note: 2257 rev/min locked, 5 % slip: 2257 / 0.95 = 2375.8.
    [Fact]
    public void A_slipping_converter_makes_the_engine_turn_faster()
    {
        var locked = new SpeedRelation { RoadSpeed = 2257 / 60.0, Gear = 1, Axle = 1, Circumference = 1 };

        Assert.Equal(2257, locked.Solved().EngineSpeed!.Value * 60, 1e-9);
        Assert.Equal(2375.8, (locked with { Slip = 0.05 }).Solved().EngineSpeed!.Value * 60, 0.05);
    }

    // The driveline note: 3.90 axle behind a 2.00 hub is 7.80 in all.
    [Fact]
    public void A_hub_reduction_comes_on_top_of_the_axle()
        => Assert.Equal(7.80, new SpeedRelation { Gear = 1, Axle = 3.90, Hub = 2.00 }.OverallRatio.Value, 1e-12);

    // The driveline note: 2500 rev/min, 2.05 m, 82.5 km/h, direct: 0.06 · 2500 · 2.05 / 82.5 = 3.727, that is 41/11.
    [Fact]
    public void A_road_test_tells_the_axle()
    {
        var axle = new SpeedRelation { RoadSpeed = 82.5 / 3.6, EngineSpeed = 2500 / 60.0, Gear = 1, Circumference = 2.05 }.Solved().Axle!.Value;

        Assert.Equal(new Teeth(41, 11).Ratio, axle, 1e-9);
    }

    // The driveline note: ± 1 km/h, ± 50 rev/min and 0.5 % of C are 2.39 % of the ratio.
    [Fact]
    public void The_uncertainty_of_a_road_test_is_the_root_of_the_squares()
    {
        static Measured Of(double value, double u) => Measured.From(value, new Input("reading", u, new Evidence("road test")));
        var axle = new SpeedRelation { RoadSpeed = Of(82.5, 1), EngineSpeed = Of(2500, 50), Gear = 1, Circumference = Of(2.05, 0.005 * 2.05) }.Solved().Axle!;

        Assert.Equal(0.0239149, axle.RelativeUncertainty, 1e-6);
    }

    [Fact]
    public void Twice_the_ratio_is_half_the_speed_in_any_unit()
        => Gen.Select(AnyDriveline, Gen.OneOf(Units.Of(Kind.Speed).Select(Gen.Const).ToArray())).Sample((driveline, unit) =>
        {
            var (one, twice) = (Speed(driveline), Speed(driveline with { Axle = 2 * driveline.Axle }));

            Assert.Equal(unit.FromBase(one) / 2, unit.FromBase(twice), unit.FromBase(one) * 1e-12);
        });

    [Fact]
    public void Solving_forward_and_back_returns_the_start()
        => Gen.Select(AnyDriveline, Gen.Enum<Unknown>(), Gen.Double[0, 0.2]).Sample((driveline, unknown, slip) =>
        {
            var whole = (Relation(driveline) with { Slip = slip, Overdrive = 0.78, Transfer = 1.1, Hub = 1.4 }).Solved();

            Assert.Equal(Value(whole, unknown), Value(Without(whole, unknown).Solved(), unknown), Value(whole, unknown) * 1e-12);
        });

    [Fact]
    public void Speed_rises_with_engine_speed_and_circumference_and_falls_with_every_ratio()
        => Gen.Select(AnyDriveline, Gen.Double[1.001, 2]).Sample((driveline, more) =>
        {
            var speed = Speed(driveline);

            Assert.True(Speed(driveline with { Rpm = driveline.Rpm * more }) > speed);
            Assert.True(Speed(driveline with { Circumference = driveline.Circumference * more }) > speed);
            Assert.True(Speed(driveline with { Gear = driveline.Gear * more }) < speed);
            Assert.True(Speed(driveline with { Axle = driveline.Axle * more }) < speed);
        });

    [Theory]
    [InlineData(1.0)]
    [InlineData(1.5)]
    [InlineData(-0.1)]
    public void A_slip_of_everything_or_less_than_nothing_is_refused(double slip)
        => Assert.Throws<RefusedException>(() => (Without(Ninety, Unknown.RoadSpeed) with { Slip = slip }).Solved());

    [Fact]
    public void A_standing_car_tells_no_ratio()
    {
        Assert.Throws<RefusedException>(() => (Without(Ninety, Unknown.Axle) with { RoadSpeed = 0 }).Solved());
        Assert.Throws<RefusedException>(() => (Without(Ninety, Unknown.Circumference) with { EngineSpeed = 0 }).Solved());
        Assert.Throws<RefusedException>(() => (Without(Ninety, Unknown.RoadSpeed) with { Axle = 0 }).Solved());
        Assert.Throws<RefusedException>(() => (Without(Ninety, Unknown.EngineSpeed) with { Circumference = -2 }).Solved());
    }

    [Fact]
    public void Exactly_one_must_be_missing()
    {
        Assert.Throws<InvalidOperationException>(() => Ninety.Solved());
        Assert.Throws<InvalidOperationException>(() => new SpeedRelation { Gear = 1 }.Solved());
        Assert.Throws<InvalidOperationException>(() => new SpeedRelation { Gear = 1 }.OverallRatio);
    }

    private static SpeedRelation Relation((double Rpm, double Gear, double Axle, double Circumference) of)
        => new() { EngineSpeed = of.Rpm / 60, Gear = of.Gear, Axle = of.Axle, Circumference = of.Circumference };

    private static double Speed((double Rpm, double Gear, double Axle, double Circumference) of) => Relation(of).Solved().RoadSpeed!.Value;

    private static SpeedRelation Without(SpeedRelation whole, Unknown unknown) => unknown switch
    {
        Unknown.RoadSpeed => whole with { RoadSpeed = null },
        Unknown.EngineSpeed => whole with { EngineSpeed = null },
        Unknown.Gear => whole with { Gear = null },
        Unknown.Axle => whole with { Axle = null },
        _ => whole with { Circumference = null },
    };

    private static double Value(SpeedRelation of, Unknown unknown) => (unknown switch
    {
        Unknown.RoadSpeed => of.RoadSpeed,
        Unknown.EngineSpeed => of.EngineSpeed,
        Unknown.Gear => of.Gear,
        Unknown.Axle => of.Axle,
        _ => of.Circumference,
    })!.Value;
}
