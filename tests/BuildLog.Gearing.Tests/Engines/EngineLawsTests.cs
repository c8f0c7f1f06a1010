using BuildLog.Gearing.Engines;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Engines;

/// <summary>What holds of engines and their air whatever the numbers are.</summary>
public sealed class EngineLawsTests
{
    [Fact]
    public void Thinner_or_hotter_air_has_more_put_back_by_the_correction()
        => Gen.Select(Gen.Double[85e3, 105e3], Gen.Double[-10, 45], Gen.Double[0.1, 10]).Sample((pressure, celsius, more) =>
        {
            Assert.True(PowerCorrection.J1349(pressure - (100 * more), celsius) > PowerCorrection.J1349(pressure, celsius));
            Assert.True(PowerCorrection.J1349(pressure, celsius + more) > PowerCorrection.J1349(pressure, celsius));
        });

    [Fact]
    public void An_engine_without_a_charger_loses_with_every_metre()
        => Gen.Select(Gen.Double[0, 5000], Gen.Double[1, 500]).Sample((altitude, more) =>
            Assert.True(Left(Induction.NaturallyAspirated, altitude + more) < Left(Induction.NaturallyAspirated, altitude)));

    [Fact]
    public void A_charged_one_loses_nothing_up_to_its_critical_altitude_and_never_as_much_as_one_without()
        => Gen.Select(Gen.Double[500, 3000], Gen.Double[0, 5000]).Sample((critical, altitude) =>
        {
            var charged = Left(Induction.Charged, altitude, critical);

            if (altitude <= critical) Assert.Equal(1, charged, 1e-12);
            Assert.True(charged >= Left(Induction.NaturallyAspirated, altitude) - 1e-12);
        });

    [Fact]
    public void More_torque_at_every_speed_is_as_much_more_at_any_speed()
        => Gen.Select(Gen.Double[100, 300].Array[3, 8], Gen.Double[0.5, 2], Gen.Double[0, 1]).Sample((torques, factor, share) =>
        {
            var (one, other) = (Curve(torques, 1), Curve(torques, factor));
            var n = one.From + (share * (one.To - one.From));

            Assert.Equal(one.TorqueAt(n) * factor, other.TorqueAt(n), 1e-9);
            Assert.Equal(one.MostPowerful.EngineSpeed, other.MostPowerful.EngineSpeed, 1e-9);
            Assert.True(2 * Math.PI * n * one.TorqueAt(n) <= one.PeakPower.Value * (1 + 1e-4));
        });

    [Fact]
    public void A_stronger_engine_stalls_a_converter_higher_and_back_again()
        => Gen.Select(Gen.Double[20, 50], Gen.Double[100, 300], Gen.Double[1.01, 3]).Sample((stall, torque, stronger) =>
        {
            var higher = Converter.StallBehind(stall, torque, torque * stronger);

            Assert.True(higher.Value > stall);
            Assert.Equal(stall, Converter.StallBehind(higher, torque * stronger, torque).Value, 1e-9);
        });

    private static double Left(Induction induction, double altitude, double? critical = null) => AltitudeLoss.Factor(induction, Atmosphere.At(altitude), critical);

    private static TorqueCurve Curve(double[] torques, double factor) => TorqueCurve.Of([.. torques.Select((torque, k) => new TorquePoint(15 + (10 * k), torque * factor))], spread: 0);
}
