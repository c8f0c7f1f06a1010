using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Measurements;
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

    [Fact]
    public void The_ends_of_a_range_belong_to_it()
    {
        Assert.True(PowerCorrection.IsTrusted(0.93) && PowerCorrection.IsTrusted(1.07));
        Assert.False(PowerCorrection.IsTrusted(0.929) || PowerCorrection.IsTrusted(1.071));
        Assert.All([(40e3, 25.0), (120e3, 25), (99e3, -50), (99e3, 80)], air => Assert.True(PowerCorrection.J1349(air.Item1, air.Item2) > 0));
        Assert.All([(39.9e3, 25.0), (120.1e3, 25), (99e3, -50.1), (99e3, 80.1)], air => Assert.Throws<RefusedException>(() => PowerCorrection.J1349(air.Item1, air.Item2)));
        Assert.True(Atmosphere.At(-2000).Density > Atmosphere.SeaLevel.Density && Atmosphere.At(11_000).Density < Atmosphere.SeaLevel.Density);
    }

    // ISO 2533 (from memory): at 11 000 m 216.774 K, 22 700 Pa and 0.36480 kg/m³; at 1000 m 281.651 K, 89 876 Pa and 1.1117 kg/m³.
    [Theory]
    [InlineData(0, 288.15, 101_325, 1.225)]
    [InlineData(1000, 281.651, 89_876, 1.1117)]
    [InlineData(11_000, 216.774, 22_700, 0.36480)]
    public void The_standard_air_is_the_published_one(double altitude, double kelvin, double pascals, double density)
    {
        var air = Atmosphere.At(altitude);

        Assert.Equal(kelvin, air.Temperature, 1e-3);
        Assert.Equal(pascals, air.Pressure, 0.5);
        Assert.Equal(density, air.Density, 5e-5);
        Assert.Equal(density / 1.225, air.DensityRatio, 5e-5);
    }

    // The critical altitude is the charger's; an engine without one has none.
    [Fact]
    public void A_critical_altitude_says_nothing_of_an_engine_without_a_charger()
        => Assert.Equal(AltitudeLoss.Factor(Induction.NaturallyAspirated, Atmosphere.At(3000)), AltitudeLoss.Factor(Induction.NaturallyAspirated, Atmosphere.At(3000), 2000));

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

    [Theory]
    [InlineData(0, true)]
    [InlineData(0.03, true)]
    [InlineData(0.4999, true)]
    [InlineData(0.5, false)]
    [InlineData(-0.01, false)]
    public void A_slip_somebody_compared_counts_before_the_usual_one(double slip, bool can)
    {
        if (can) Assert.Equal(slip, (new Converter(LocksUp: true) { Slip = new(slip, Source.Measured) }).CruiseSlip.Value);
        else Assert.Equal("out-of-range", Assert.Throws<RefusedException>(() => new Converter(LocksUp: true) { Slip = new(slip, Source.Measured) }).Refusal.Code);
    }

    // A truck engine maker's guide: 1.5 to 2.8, so 2.1 ± 0.6.
    [Fact]
    public void The_usual_torque_ratio_covers_the_published_range()
    {
        var usual = new Converter(LocksUp: true).TorqueRatio;

        Assert.Equal(2.1, usual.Value, 1e-12);
        Assert.Equal(0.6 / Math.Sqrt(3), usual.StandardUncertainty, 1e-12);
        Assert.Equal(1.9, new Converter(true, null, new(1.9, Source.MakersData)).TorqueRatio.Value);
    }
}
