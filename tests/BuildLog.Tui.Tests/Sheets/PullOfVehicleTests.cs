using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Measurements;
using BuildLog.Sheet.Content;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Sheets;

namespace BuildLog.Tui.Tests.Sheets;

public sealed class PullOfVehicleTests
{
    private static readonly Driveline Car = new()
    {
        Engine = new("four") { Torque = TorqueCurve.Of([new TorquePoint(1000 / 60.0, 200), new TorquePoint(5000 / 60.0, 200)], Source.Measured, 0) },
        Transmission = new("one-speed", [new("1", Exactly(1))]),
        RearAxle = new("axle", Exactly(4.1)),
        Tyres = new("tyres", Exactly(2), null),
        Load = new() { Mass = Exactly(1500), RollingResistance = Exactly(0.014), DragArea = Exactly(0.8) },
    };

    [Fact]
    public void The_sheet_says_what_the_curves_lack()
        => Assert.Contains("not drawn without the engine's torque, the vehicle's mass", PrintedSheet.Of("Brindle"), StringComparison.Ordinal);

    [Fact]
    public void Only_what_is_missing_is_asked_for_and_where_it_is_entered()
    {
        Assert.Equal("", PullCurves.Missing(Car));
        Assert.Equal(
            "Reserve and hills need the rolling resistance or the kind of tyres: enter it with the vehicle (e).",
            PullCurves.Missing(Car with { Load = Car.Load! with { RollingResistance = null } }));
        Assert.Equal("Reserve and hills need the engine's torque: enter it with the engine (f).", PullCurves.Missing(Car with { Engine = new("four") }));
    }

    [Fact]
    public void A_driveline_without_torque_or_load_has_no_curves() => Assert.Null(PullOfVehicle.Of(new Driveline(), UnitSystem.Metric));

    // 5000 rev/min = 83.33 rev/s; / 4.1 · 2 m = 40.65 m/s = 146.34 km/h.
    [Fact]
    public void A_gear_s_curve_ends_where_the_engine_does()
    {
        var last = Curve("1").Points[^1];

        Assert.Equal(146.34, last.X, 0.01);
        Assert.InRange(last.Y, 80, 104.7);             // 200 N·m at 83.33 rev/s are 104.7 kW at the flywheel; some is lost on the way
    }

    // At 27.778 m/s: 1500 · 9.80665 · 0.014 = 205.94 N, ½ · 1.225 · 0.8 · 771.6 = 378.1 N; 584.0 N · 27.778 m/s = 16.22 kW.
    [Fact]
    public void The_road_load_is_rolling_and_drag_times_speed()
    {
        var load = Curve("road load").Points;
        var (below, above) = (load.Last(point => point.X <= 100), load.First(point => point.X > 100));
        var share = (100 - below.X) / (above.X - below.X);

        Assert.Equal(16.22, below.Y + (share * (above.Y - below.Y)), 0.05);
    }

    [Fact]
    public void Hills_are_in_per_cent_and_none_goes_down()
    {
        var hill = Assert.Single(PullOfVehicle.Of(Car, UnitSystem.Metric)!.Hill.Curves);

        Assert.All(hill.Points, point => Assert.InRange(point.Y, 0, 100));
        Assert.True(hill.Points[0].Y > hill.Points[^1].Y);
    }

    // Rolling alone at rest: 205.94 N. Axles of 800 and 700 kg: 0.8 · 7/15 · 14 709.98 N = 5.492 kN on the driven one; unweighed nobody knows.
    [Fact]
    public void Force_is_drawn_against_hills_up_to_where_the_wheels_spin()
    {
        var weighed = Car with { AxleMasses = new(Exactly(800), Exactly(700)), Load = Car.Load! with { Grip = Exactly(0.8) } };
        var curves = PullOfVehicle.Of(weighed, UnitSystem.Metric)!.Effort!.Curves;

        Assert.Equal(["1", "0 %", "10 %", "20 %", "30 %", "wheels spin"], curves.Select(curve => curve.Name));
        Assert.Equal(0.20594, curves[1].Points[0].Y, 1e-5);
        Assert.All(curves[^1].Points, point => Assert.Equal(5.492, point.Y, 1e-3));
        Assert.DoesNotContain(PullOfVehicle.Of(Car, UnitSystem.Metric)!.Effort!.Curves, curve => curve.Kind == CurveKind.Limit);
    }

    // By hand: 205.94 N / 4.4482216 N a pound-force = 46.30 lbf.
    [Fact]
    public void In_imperial_units_the_force_is_in_pounds()
    {
        var effort = PullOfVehicle.Of(Car, UnitSystem.Imperial)!.Effort!;

        Assert.Equal("force, lbf", effort.Up);
        Assert.Equal(46.30, effort.Curves.Single(curve => curve.Name == "0 %").Points[0].Y, 0.05);
    }

    private static Curve Curve(string name) => PullOfVehicle.Of(Car, UnitSystem.Metric)!.Power.Curves.Single(curve => curve.Name == name);

    private static Known Exactly(double value) => new(value, Source.Measured);
}
