using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Speeds;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Propshafts;

public sealed class ShaftSpeedTests
{
    // 5200 rev/min through 0.70: 7428.6; 75 mph, 3.73, a free tyre of 26 in: 3617 at π D = 75 · 336.13 · 3.73 / 26 = 3617.
    [Fact]
    public void From_the_engine_and_from_the_road()
    {
        Assert.Equal(7428.6, 60 * ShaftSpeed.FromEngine(5200 / 60.0, 0.70).Value, 0.1);
        Assert.Equal(75 * 336.135 * 3.73 / 26, 60 * ShaftSpeed.FromRoad(75 * 0.44704, 3.73, Math.PI * 26 * 0.0254).Value, 0.1);
    }

    [Fact]
    public void Both_roads_lead_to_one_speed()
        => Gen.Select(Gen.Double[10, 60], Gen.Double[0.6, 4], Gen.Double[2, 7], Gen.Double[1.5, 3]).Sample((v, gear, axle, tyre) =>
        {
            var engine = new SpeedRelation { RoadSpeed = v, Gear = gear, Axle = axle, Circumference = tyre }.Solved().EngineSpeed!;

            Assert.Equal(ShaftSpeed.FromRoad(v, axle, tyre).Value, ShaftSpeed.FromEngine(engine, gear).Value, 1e-9);
        });

    // Redline 6000 in direct top: 100 rev/s. 180 km/h = 50 m/s · 4.10 / 2.00 = 102.5 rev/s; 108 km/h: 61.5.
    [Theory]
    [InlineData("180 km/h")]
    [InlineData("108 km/h")]
    public void What_the_owner_wants_at_least_keeps_nothing_from_its_redline(string top)
    {
        var fastest = Fastest(InventedShaft.Car(6000), top);

        Assert.Equal(100, fastest.Speed.Value, 1e-9);
        Assert.Equal("at the redline in 4", fastest.At);
        Assert.Null(fastest.ToKnow);
    }

    [Fact]
    public void Where_nothing_else_is_known_the_wish_is_the_least_it_will_turn()
    {
        var fastest = Fastest(InventedShaft.Car(6000) with { Engine = null }, "108 km/h");

        Assert.Equal(61.5, fastest.Speed.Value, 1e-9);
        Assert.Equal("at the 108 km/h wanted", fastest.At);
        Assert.Equal("enter the engine's redline", fastest.ToKnow);
    }

    // An overdrive of 0.8 is the longest gear: 125 rev/s.
    [Fact]
    public void In_overdrive_the_shaft_outruns_the_engine()
    {
        var car = InventedShaft.Car(6000) with { Overdrive = new("unit", InventedCar.Exactly(0.8)) };

        Assert.Equal(125, FastestTurn.Of(car, OwnersGoals.None, Assert.Single(FittedShaft.Of(car)))!.Speed.Value, 1e-9);
    }

    [Fact]
    public void Without_redline_and_top_speed_it_is_not_known()
    {
        var car = InventedShaft.Car(6000) with { Engine = null };

        Assert.Null(FastestTurn.Of(car, OwnersGoals.None, Assert.Single(FittedShaft.Of(car))));
    }

    [Fact]
    public void A_shaft_has_one_to_three_pieces_and_two_angles_more_than_pieces()
    {
        Assert.Throws<RefusedException>(() => new Propshaft("none"));
        Assert.Throws<RefusedException>(() => InventedShaft.Plain with { Line = InventedShaft.Line(3, 6) });
    }

    [Fact]
    public void Up_to_three_pieces_and_each_named_so_that_it_is_found()
    {
        var piece = InventedShaft.Piece;
        var three = Assert.Single(FittedShaft.Of(InventedShaft.Car(6000, new("long", piece, piece, piece))));

        Assert.Equal(["piece 1 of the propshaft", "piece 3 of the propshaft"], [three.Named(0), three.Named(2)]);
        Assert.Equal("the propshaft", Assert.Single(FittedShaft.Of(InventedShaft.Car(6000))).Named(0));
        Assert.Equal([Position.Propshaft, Position.RearAxle], three.Joint);
        Assert.Throws<RefusedException>(() => new Propshaft("longer", piece, piece, piece, piece));
    }

    // 60 N·m and a redline of 5000 would turn it at 83.3 rev/s; the road ends it at 32.843 m/s (TopSpeedTests), 67.3 rev/s. A wish of 70 km/h changes nothing.
    [Fact]
    public void With_a_load_it_is_the_top_speed()
    {
        var fastest = Fastest(InventedLoad.WithTorque(60) with { Propshaft = InventedShaft.Plain }, "70 km/h");

        Assert.Equal("at its top speed in 4", fastest.At);
        Assert.Equal(32.843 * 4.10 / 2, fastest.Speed.Value, 1e-2);
    }

    // Flat to 5000, redline 6000: it surely turns 83.3 rev/s and never more than 100, and only the torque between them would tell.
    [Fact]
    public void Beyond_the_torque_curve_it_lies_between_the_curves_end_and_the_redline()
    {
        var car = InventedLoad.Car with { Propshaft = InventedShaft.Plain, Engine = InventedLoad.Car.Engine! with { Redline = InventedCar.Exactly(100) } };
        var fastest = Fastest(car, "108 km/h");

        Assert.Equal("at its top speed, as far as the torque curve tells", fastest.At);
        Assert.Equal((100 + (5000 / 60.0)) / 2, fastest.Speed.Value, 1e-6);
        Assert.Equal((100 - (5000 / 60.0)) / 2 / Math.Sqrt(3), fastest.Speed.StandardUncertainty, 1e-6);
        Assert.Null(fastest.ToKnow);
    }

    // Power still rises at 5000, and nobody knows how far the engine turns.
    [Fact]
    public void Where_not_even_a_redline_is_known_it_is_the_curves_end_at_least()
    {
        var fastest = Fastest(InventedLoad.Car with { Propshaft = InventedShaft.Plain, Engine = InventedLoad.Car.Engine! with { Redline = null } }, "108 km/h");

        Assert.Equal(5000 / 60.0, fastest.Speed.Value, 1e-9);
        Assert.Equal("where the torque curve ends in 4", fastest.At);
        Assert.Equal("enter the engine's torque up to its redline", fastest.ToKnow);
    }

    [Fact]
    public void A_tube_is_known_only_by_all_three_of_its_measures()
    {
        var (outer, wall, length) = (InventedCar.Exactly(0.0762), InventedCar.Exactly(0.0021), InventedCar.Exactly(1.3));

        Assert.Equal(0.072, new ShaftPiece(outer, wall, length).Tube!.Inner.Value, 1e-12);
        Assert.Null(new ShaftPiece(outer, wall).Tube);
        Assert.Null(new ShaftPiece(outer, null, length).Tube);
        Assert.Null(new ShaftPiece(null, wall, length).Tube);
        Assert.Null(new Propshaft("not measured", new ShaftPiece()).Joints);
    }

    [Fact]
    public void The_rear_shaft_comes_first_and_each_leads_to_its_axle()
    {
        var car = InventedShaft.Car(6000) with { FrontPropshaft = InventedShaft.Plain };

        Assert.Equal([Position.RearAxle, Position.FrontAxle], FittedShaft.Of(car).Select(shaft => shaft.AxlePosition));
    }

    private static FastestTurn Fastest(Driveline car, string wanted)
        => FastestTurn.Of(car, OwnersGoals.None with { TopSpeed = TopSpeedGoal.Read(wanted).OrRefuse() }, Assert.Single(FittedShaft.Of(car)))!;
}
