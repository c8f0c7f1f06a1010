using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Quantities;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Engines;

public sealed class AirTests
{
    [Fact]
    public void Higher_up_the_air_is_colder_and_thinner()
        => Gen.Select(Gen.Double[-2000, 10_900], Gen.Double[1, 100]).Sample((altitude, more) =>
        {
            var (low, high) = (Atmosphere.At(altitude), Atmosphere.At(altitude + more));

            Assert.True(high.Temperature < low.Temperature && high.Pressure < low.Pressure && high.Density < low.Density);
            Assert.True(AltitudeLoss.Factor(Induction.NaturallyAspirated, high) < AltitudeLoss.Factor(Induction.NaturallyAspirated, low));
        });

    [Theory]
    [InlineData(-2001)]
    [InlineData(11_001)]
    [InlineData(double.NaN)]
    public void Where_no_road_goes_is_refused(double altitude) => Assert.Equal("altitude", Assert.Throws<RefusedException>(() => Atmosphere.At(altitude)).Refusal.Code);

    [Fact]
    public void A_charged_engine_keeps_its_torque_and_none_loses_any_at_sea_level()
    {
        Assert.Equal(1, AltitudeLoss.Factor(Induction.Charged, Atmosphere.At(2500)));
        Assert.Equal(1, AltitudeLoss.Factor(Induction.NaturallyAspirated, Atmosphere.SeaLevel));
    }

    // ISO 2533 density: 1.0066 kg/m³ at 2000 m, 0.9093 at 3000 m: σ = 0.90334; less (1 − σ)/7.55 leaves 0.8905.
    [Fact]
    public void A_charger_keeps_up_to_its_critical_altitude_only()
    {
        Assert.Equal(1, AltitudeLoss.Factor(Induction.Charged, Atmosphere.At(1999), 2000));
        Assert.Equal(0.8905, AltitudeLoss.Factor(Induction.Charged, Atmosphere.At(3000), 2000), 2e-4);
    }

    // By hand: 99/95 · √(308/298) · 1.18 − 0.18 = 1.04211 · 1.01664 · 1.18 − 0.18; at 99 kPa and 25 °C nothing is corrected.
    [Theory]
    [InlineData(95e3, 35, 1.07015)]
    [InlineData(99e3, 25, 1)]
    public void A_warm_day_of_low_pressure_is_corrected_upwards(double pressure, double celsius, double factor)
        => Assert.Equal(factor, PowerCorrection.J1349(pressure, celsius), 1e-5);

    [Fact]
    public void A_correction_is_trusted_within_its_range_only()
    {
        Assert.True(PowerCorrection.IsTrusted(1.05));
        Assert.False(PowerCorrection.IsTrusted(PowerCorrection.J1349(90e3, 35)));
        Assert.Equal("pressure", Assert.Throws<RefusedException>(() => PowerCorrection.J1349(99, 25)).Refusal.Code);
        Assert.Equal("temperature", Assert.Throws<RefusedException>(() => PowerCorrection.J1349(99e3, 298)).Refusal.Code);
    }

    // 1.18 · 99/95 · √(303/298) − 0.18 = 1.05996; at 90 kPa 1.12884, too much to be trusted.
    [Fact]
    public void The_air_of_the_day_is_read_and_an_untrusted_correction_is_all_in_doubt()
    {
        Assert.Equal(1.05996, TestAir.Read("95 kPa 30 °C").OrRefuse().Factor, 1e-5);
        Assert.Equal(0.03, TestAir.Read("0.95 bar 30°C").OrRefuse().Spread, 1e-12);
        Assert.Equal(0.15884, TestAir.Read("90 kPa 30 °C").OrRefuse().Spread, 1e-5);
        Assert.All(["", "95 kPa", "30 °C", "thin", "95 kPa 300 °C"], text => Assert.NotNull(TestAir.Read(text).Refusal));
    }

    // 4 times the torque stalls at twice the speed.
    [Fact]
    public void Stall_goes_with_the_root_of_torque()
        => Assert.Equal(60, Converter.StallBehind(30, 100, 400).Value, 1e-12);

    [Fact]
    public void A_locked_converter_does_not_slip_and_an_unlocked_one_by_three_to_eight_per_cent()
    {
        Assert.True(new Converter(LocksUp: true).CruiseSlip.IsExact);
        Assert.Equal(0.055, new Converter(LocksUp: false).CruiseSlip.Value, 1e-12);
        Assert.Equal(0.025 / Math.Sqrt(3), new Converter(LocksUp: false).CruiseSlip.StandardUncertainty, 1e-12);
    }
}
