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
    [InlineData("180 km/h", 100, "at the redline in 4")]
    [InlineData("108 km/h", 61.5, "at 108 km/h")]
    public void The_fastest_turn_is_the_lower_of_redline_and_top_speed(string top, double speed, string at)
    {
        var car = InventedShaft.Car(6000);
        var fastest = FastestTurn.Of(car, OwnersGoals.None with { TopSpeed = TopSpeedGoal.Read(top).OrRefuse() }, Assert.Single(FittedShaft.Of(car)))!;

        Assert.Equal(speed, fastest.Speed.Value, 1e-9);
        Assert.Equal(at, fastest.At);
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

    // 200 N·m and a redline of 6000 would turn it at 100 rev/s; the road ends it at 5000 rev/min of the torque curve, 83.3.
    [Fact]
    public void Where_nobody_says_how_fast_the_top_speed_is_worked_out()
    {
        var car = InventedShaft.Car(6000) with { Engine = new("four", Redline: InventedCar.Exactly(100)) { Torque = InventedLoad.Flat(200) }, Load = InventedLoad.Exact };
        var shaft = Assert.Single(FittedShaft.Of(car));

        var fastest = FastestTurn.Of(car, OwnersGoals.None, shaft)!;

        Assert.Equal("at its top speed in 4", fastest.At);
        Assert.Equal(5000 / 60.0, fastest.Speed.Value, 1e-6);
        Assert.Equal("at 108 km/h", FastestTurn.Of(car, OwnersGoals.None with { TopSpeed = TopSpeedGoal.Read("108 km/h").OrRefuse() }, shaft)!.At);
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
}
