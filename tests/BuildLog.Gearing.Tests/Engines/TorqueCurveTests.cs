using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using Xunit;

namespace BuildLog.Gearing.Tests.Engines;

public sealed class TorqueCurveTests
{
    [Theory]
    [InlineData("1500:180 Nm", 25, 180)]
    [InlineData(" 3000 rpm : 150 lb-ft ", 50, 203.372692)]
    [InlineData("2500:210,5 N·m", 2500 / 60.0, 210.5)]
    public void A_point_is_read_as_it_stands_on_a_dyno_sheet(string text, double engineSpeed, double torque)
    {
        var point = TorquePoint.Read(text).OrRefuse();

        Assert.Equal(engineSpeed, point.EngineSpeed, 1e-9);
        Assert.Equal(torque, point.Torque, 1e-6);
        Assert.Equal(text.Trim(), point.Text);
    }

    [Theory]
    [InlineData("180 Nm")]
    [InlineData("1500:180 kW")]
    [InlineData("0:180 Nm")]
    [InlineData("1500:0 Nm")]
    [InlineData("1500:-20 Nm")]
    [InlineData("1500:9000 Nm")]
    [InlineData("1500:180 Nm:3")]
    [InlineData(":")]
    public void What_is_no_point_is_refused_with_one_that_is(string text)
    {
        var refusal = TorquePoint.Read(text).Refusal!;

        Assert.Equal(("torque", "1500:180 Nm"), (refusal.Code, refusal.Example));
        Assert.Contains(Shown.Cut(text).Trim(), refusal.Message, StringComparison.Ordinal);
    }

    // Two points make a straight line: T = 225 − 0.025 N; P peaks where N = 225/(2 · 0.025) = 4500, with 112.5 N·m: 53.01 kW.
    [Fact]
    public void Power_peaks_where_the_straight_line_says()
    {
        var curve = InventedLoad.Curve((1000, 200), (5000, 100));

        Assert.Equal(4500, curve.MostPowerful.EngineSpeed * 60, 2.0);
        Assert.Equal(2 * Math.PI * 75 * 112.5, curve.PeakPower.Value, 0.1);
        Assert.Equal((1000 / 60.0, 200), (curve.StrongestPoint.EngineSpeed, curve.PeakTorque.Value));
    }

    [Fact]
    public void The_curve_is_the_same_whatever_unit_and_order_it_was_typed_in()
    {
        var newtons = Of("1000:135.58179483314 Nm", "3000:271.16358966628 Nm", "5000:203.37269224971 Nm");
        var pounds = Of("5000:150 lb-ft", "1000:100 lb-ft", "3000:200 lb-ft");

        foreach (var rpm in (double[])[1000, 1700, 3000, 4321, 5000]) Assert.Equal(newtons.TorqueAt(rpm / 60), pounds.TorqueAt(rpm / 60), 1e-9);
    }

    // The whole curve is off together: two torques of one curve keep their proportion.
    [Fact]
    public void The_dynamometers_error_cancels_between_two_engine_speeds()
    {
        var curve = Of("1000:180 Nm", "3000:200 Nm");

        Assert.Equal(0.03, curve.At(40)!.RelativeUncertainty, 1e-12);
        Assert.True((curve.At(20)! / curve.At(40)!).IsExact);
    }

    [Fact]
    public void It_cancels_between_the_peak_and_any_torque_too()
    {
        var curve = Of("1000:180 Nm", "3000:200 Nm");

        Assert.True((curve.PeakTorque / curve.At(40)!).IsExact);
        Assert.True((curve.PeakPower / curve.PowerAt(40)!).IsExact);
    }

    // The same line through five points: power peaks at the same 4500 rev/min, between the last two.
    [Fact]
    public void More_points_on_one_line_leave_the_peak_of_power_where_it_is()
        => Assert.Equal(4500, InventedLoad.Curve((1000, 200), (2000, 175), (3000, 150), (4000, 125), (5000, 100)).MostPowerful.EngineSpeed * 60, 3.0);

    [Fact]
    public void An_engine_of_five_thousand_newton_metres_is_the_strongest()
        => Assert.Equal(5000, TorquePoint.Read("1500:5000 Nm").OrRefuse().Torque);

    // On the straight line of 0.025 N·m a rev/min, 100 rev/min of doubt are 2.5 N·m.
    [Fact]
    public void An_uncertain_engine_speed_makes_the_torque_uncertain_by_the_slope()
    {
        var torque = InventedLoad.Curve((1000, 200), (5000, 100)).At(InventedCar.Of(3000 / 60.0, 100 / 60.0))!;

        Assert.Equal(150, torque.Value, 1e-9);
        Assert.Equal(2.5, torque.StandardUncertainty, 1e-9);
    }

    [Fact]
    public void Nothing_is_said_beyond_the_points()
    {
        Assert.Null(InventedLoad.Flat(200).At(16));
        Assert.Null(InventedLoad.Flat(200).PowerAt(84));
        Assert.Equal(2 * Math.PI * 50 * 200, InventedLoad.Flat(200).PowerAt(50)!.Value, 1e-9);
    }

    [Fact]
    public void One_point_or_two_of_one_engine_speed_are_no_curve()
    {
        Assert.Equal("torque", Assert.Throws<RefusedException>(() => Of("1500:180 Nm")).Refusal.Code);
        Assert.Contains("1500 rev/min", Assert.Throws<RefusedException>(() => Of("1500:180 Nm", "1500:190 Nm")).Message, StringComparison.Ordinal);
    }

    private static TorqueCurve Of(params string[] points) => TorqueCurve.Of([.. points.Select(text => TorquePoint.Read(text).OrRefuse())]);
}
