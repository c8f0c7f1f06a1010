using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Engines;

public sealed class PlausibleCurveTests
{
    // Invented data sheets: a small petrol engine, a big slow one, a charged one with a plateau, one whose torque falls early.
    [Theory]
    [InlineData(210, 2500, 77, 4500)]
    [InlineData(400, 2000, 120, 4000)]
    [InlineData(320, 1750, 140, 5000)]
    [InlineData(300, 2000, 85, 5000)]
    public void Both_peaks_of_the_data_sheet_are_met(double torque, double atTorque, double kilowatts, double atPower)
    {
        var curve = PlausibleCurve.From(torque, atTorque / 60, kilowatts * 1000, atPower / 60);

        Assert.Equal(torque, curve.PeakTorque.Value, 1e-9);
        Assert.Equal(torque, curve.TorqueAt(atTorque / 60), 1e-9);
        Assert.Equal(kilowatts * 1000 / (2 * Math.PI * atPower / 60), curve.TorqueAt(atPower / 60), 1e-9);
        Assert.Equal(kilowatts, curve.PeakPower.Value / 1000, 1e-9);
        Assert.Equal(atPower, curve.MostPowerful.EngineSpeed * 60, 1e-9);
    }

    // 400 N·m at 2000 rev/min make 83.78 kW; the sheet rounds the one power of both peaks to 83.5.
    [Fact]
    public void Two_peaks_of_one_power_make_a_curve_although_the_sheet_rounds()
        => Assert.Equal(400, PlausibleCurve.From(400, 2000 / 60.0, 83_500, 2500 / 60.0).PeakTorque.Value, 1e-9);

    // By hand, of 210 N·m at 2500: it begins at a quarter, 210 (1 − 0.45 · 0.75²) = 156.84; at 1093.75 it is 210 (1 − 0.45 · 0.5625²) = 180.10,
    // at 1562.5 210 (1 − 0.45 · 0.375²) = 196.71; at 5400, 1.2 of the power's speed, 77 · 0.88 kW are 119.83 N·m.
    [Theory]
    [InlineData(625, 156.84)]
    [InlineData(1093.75, 180.10)]
    [InlineData(1562.5, 196.71)]
    [InlineData(2500, 210)]
    [InlineData(5400, 119.83)]
    public void Below_the_peak_of_torque_and_beyond_that_of_power_it_is_the_common_shape(double rpm, double torque)
        => Assert.Equal(torque, PlausibleCurve.From(210, 2500 / 60.0, 77_000, 4500 / 60.0).TorqueAt(rpm / 60), 0.01);

    [Fact]
    public void It_reaches_from_a_quarter_of_the_torques_speed_to_a_fifth_beyond_the_powers()
    {
        var curve = PlausibleCurve.From(210, 2500 / 60.0, 77_000, 4500 / 60.0);

        Assert.Equal((625, 5400), (Math.Round(curve.From * 60, 6), Math.Round(curve.To * 60, 6)));
    }

    // 140 kW at 5000 rev/min are 267.38 N·m. The fall of 52.62 is too little for the slope at its end from 1750 on: it begins at 5000 (1 − 3 · 52.62/267.38) = 2048.
    // Half way, t = ½: 320 − 52.62/2 + 267.38/83.333 · 49.2/8 = 313.42.
    [Theory]
    [InlineData(1900, 320)]
    [InlineData(2040, 320)]
    [InlineData(3524, 313.42)]
    public void A_charged_engine_keeps_its_torque_until_the_fall_fits(double rpm, double torque)
        => Assert.Equal(torque, PlausibleCurve.From(320, 1750 / 60.0, 140_000, 5000 / 60.0).TorqueAt(rpm / 60), 0.01);

    [Fact]
    public void No_point_of_it_beats_either_peak()
        => Gen.Select(Gen.Double[80, 800], Gen.Double[1200, 4000], Gen.Double[1.1, 2.5], Gen.Double[0.55, 0.98]).Sample((torque, atTorque, apart, share) =>
        {
            if (apart * share < 1) return;
            var power = 2 * Math.PI * torque * share * atTorque * apart / 60;

            Assert.All(PlausibleCurve.From(torque, atTorque / 60, power, atTorque * apart / 60).Points, point =>
                Assert.True(point.Torque <= torque * (1 + 1e-12) && point.Power <= power * (1 + 1e-12)));
        });

    [Fact]
    public void It_is_marked_assumed_and_as_uncertain_as_a_guess()
    {
        var curve = PlausibleCurve.From(210, 2500 / 60.0, 77_000, 4500 / 60.0);

        Assert.Equal(Source.Assumed, curve.Source);
        Assert.Equal(0.05, curve.At(50)!.RelativeUncertainty, 1e-12);
    }

    [Fact]
    public void Any_two_peaks_that_can_be_give_a_curve_that_never_beats_them()
        => Gen.Select(Gen.Double[80, 800], Gen.Double[1200, 4000], Gen.Double[1.1, 2.5], Gen.Double[0.55, 0.98]).Sample((torque, atTorque, apart, share) =>
        {
            var atPower = atTorque * apart;
            if (apart * share < 1) return;
            var power = 2 * Math.PI * torque * share * atPower / 60;
            var curve = PlausibleCurve.From(torque, atTorque / 60, power, atPower / 60);

            for (var n = curve.From; n <= curve.To; n += (curve.To - curve.From) / 300)
            {
                Assert.True(curve.TorqueAt(n) <= torque * (1 + 1e-12));
                Assert.True(curve.PowerAt(n)!.Value <= power * (1 + 1e-12));
            }
        });

    // There P = 2π n T stays, so one part more of n takes one part off the torque.
    [Fact]
    public void Where_it_is_held_to_its_power_torque_falls_as_engine_speed_rises()
    {
        var curve = PlausibleCurve.From(210, 2500 / 60.0, 77_000, 4500 / 60.0);
        var held = Enumerable.Range(2501, 1998).Select(rpm => rpm / 60.0).Where(n => Math.Abs(curve.PowerAt(n)!.Value - 77_000) < 1e-6 && curve.Points.All(point => Math.Abs(point.EngineSpeed - n) > 1e-6)).ToList();

        Assert.NotEmpty(held);
        Assert.All(held, n =>
        {
            var input = new Input("rev counter", 0.01 * n, new Evidence("rev counter"));
            var line = curve.At(Measured.From(n, input))!.Budget().Single(line => line.Input == input);
            Assert.Equal(0.01 * curve.TorqueAt(n), line.Contribution, 1e-9);
            Assert.True(line.Sensitivity < 0);
        });
    }

    [Theory]
    [InlineData(210, 4500, 77, 2500, "2500 against 4500")]
    [InlineData(100, 2500, 77, 4500, "163 N·m")]
    [InlineData(400, 4000, 80, 4500, "167.6 kW")]
    [InlineData(0, 2500, 77, 4500, "more than zero")]
    [InlineData(double.NaN, 2500, 77, 4500, "more than zero")]
    [InlineData(210, 0, 77, 4500, "more than zero")]
    [InlineData(210, 2500, 0, 4500, "more than zero")]
    [InlineData(210, 2500, double.PositiveInfinity, 4500, "more than zero")]
    [InlineData(double.PositiveInfinity, 2500, 77, 4500, "more than zero")]
    [InlineData(210, 2500, 77, 2500, "2500 against 2500")]
    public void Peaks_no_engine_can_have_together_are_refused(double torque, double atTorque, double kilowatts, double atPower, string says)
    {
        var refused = Assert.Throws<RefusedException>(() => PlausibleCurve.From(torque, atTorque / 60, kilowatts * 1000, atPower / 60));

        Assert.Contains(says, refused.Message, StringComparison.Ordinal);
    }
}
