using System.Globalization;
using BuildLog.Gearing.Tyres;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Tyres;

/// <summary>What holds of tyres whatever the numbers are.</summary>
public sealed class TyreLawsTests
{
    private static readonly Gen<(int Width, int Aspect, int Rim)> AnyMetric = Gen.Select(Gen.Int[14, 30], Gen.Int[9, 15], Gen.Int[13, 20]).Select((width, aspect, rim) => (10 * width + 5, 5 * aspect, rim));

    [Fact]
    public void A_wider_or_higher_tyre_or_one_on_a_larger_rim_stands_higher()
        => AnyMetric.Sample(size =>
        {
            var height = Metric(size.Width, size.Aspect, size.Rim).OverallDiameter;

            Assert.True(Metric(size.Width + 10, size.Aspect, size.Rim).OverallDiameter > height);
            Assert.True(Metric(size.Width, size.Aspect + 5, size.Rim).OverallDiameter > height);
            Assert.True(Metric(size.Width, size.Aspect, size.Rim + 1).OverallDiameter > height);
        });

    [Fact]
    public void A_worn_tyre_rolls_less_far_by_pi_times_twice_the_wear()
        => Gen.Select(AnyMetric, Gen.Double[0, 0.03]).Sample((size, worn) =>
        {
            var tyre = Metric(size.Width, size.Aspect, size.Rim);

            Assert.Equal(2 * Math.PI * worn, tyre.FreeCircumference - (tyre with { Worn = worn }).FreeCircumference, 1e-12);
        });

    [Fact]
    public void The_measuring_rim_is_one_of_the_permitted_and_no_wider_tyre_wants_a_narrower_one()
        => AnyMetric.Sample(size =>
        {
            var (rims, wider) = (Metric(size.Width, size.Aspect, size.Rim).RimWidth, Metric(size.Width + 10, size.Aspect, size.Rim).RimWidth);

            Assert.True(rims.Low < rims.Measuring && rims.Measuring < rims.High);
            Assert.True(wider.Measuring >= rims.Measuring);
        });

    [Fact]
    public void On_a_wider_rim_a_tyre_stands_wider_by_two_fifths()
        => Gen.Select(AnyMetric, Gen.Double[0.1, 0.2], Gen.Double[0, 0.1]).Sample((size, rim, more) =>
        {
            var tyre = Metric(size.Width, size.Aspect, size.Rim);

            Assert.Equal(0.4 * more, SectionOnRim.Of(tyre, rim + more).Value - SectionOnRim.Of(tyre, rim).Value, 1e-12);
        });

    [Fact]
    public void A_tyre_grows_with_speed_and_a_bias_one_more()
        => Gen.Select(Gen.Double[1, 60], Gen.Double[0.1, 9]).Sample((v, faster) =>
        {
            Assert.True(SpeedGrowth.At(Construction.Radial, v + faster).Value > SpeedGrowth.At(Construction.Radial, v).Value);
            Assert.True(SpeedGrowth.At(Construction.Bias, v).Value > SpeedGrowth.At(Construction.Radial, v).Value);
        });

    [Fact]
    public void A_higher_load_index_carries_more()
        => Gen.Select(Gen.Int[0, 199], Gen.Int[1, 40]).Where((index, more) => index + more <= LoadIndex.Highest)
            .Sample((index, more) => Assert.True(LoadIndex.CapacityKg(index + more) > LoadIndex.CapacityKg(index)));

    // The same marks in another unit and another order are the same circumference, as surely known.
    [Fact]
    public void A_roll_out_is_the_same_in_any_unit_and_order()
        => Gen.Select(Gen.Int[1, 5], Gen.Int[6, 12], Gen.Int[1900, 2300], Gen.Int[-20, 20]).Sample((few, many, millimetres, off) =>
        {
            var (near, far) = (few * millimetres, (many * millimetres) + off);
            var metric = Rolled($"{few}:{near} mm", $"{many}:{far} mm");
            var inches = Rolled(
                string.Create(CultureInfo.InvariantCulture, $"{many}:{far / 25.4:0.000000000} in"), string.Create(CultureInfo.InvariantCulture, $"{few}:{near / 1000.0} m"));

            Assert.Equal(metric.Measured.Value, inches.Measured.Value, 1e-9);
            Assert.Equal(metric.Measured.StandardUncertainty, inches.Measured.StandardUncertainty, 1e-9);
        });

    private static RollOut Rolled(params string[] marks) => RollOut.Of([.. marks.Select(mark => RollReading.Read(mark).OrRefuse())], new(Loaded: true));

    private static TyreSize Metric(int width, int aspect, int rim) => TyreSizeText.Read($"{width}/{aspect}R{rim}").OrRefuse();
}
