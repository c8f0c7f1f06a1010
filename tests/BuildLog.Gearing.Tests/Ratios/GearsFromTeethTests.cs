using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Ratios;

/// <summary>Ratios that follow from counted teeth; figures in print stand in <c>Published/GearsInPrint.cs</c>.</summary>
public sealed class GearsFromTeethTests
{
    // By hand: (25/21) · (36/17) = 1.190476 · 2.117647 = 2.521008.
    [Fact]
    public void A_gear_over_the_layshaft_is_the_product_of_its_pairs()
    {
        var gear = TwoStageGear.Read("25/21 x 36/17").OrRefuse();

        Assert.Equal(2.521008, gear.Ratio, 1e-6);
        Assert.True(gear.ToMeasured().IsExact);
        Assert.Equal("25/21 x 36/17", gear.ToString());
    }

    [Theory]
    [InlineData("29/19 × 31/14")]
    [InlineData("29/19*31/14")]
    [InlineData("29:19 X 31:14")]
    public void Pairs_are_joined_as_people_write_it(string text) => Assert.Equal(29 * 31 / (19.0 * 14), TwoStageGear.Read(text).OrRefuse().Ratio, 1e-12);

    [Theory]
    [InlineData("29/19")]
    [InlineData("29/19 x 31")]
    [InlineData("29/19 x 31/14 x 20/20")]
    [InlineData("29/3 x 31/14")]
    [InlineData("200/4 x 200/4")]
    public void What_no_gear_is_is_refused_with_an_example_that_is_one(string text)
    {
        var refusal = TwoStageGear.Read(text).Refusal!;

        Assert.NotEmpty(refusal.Message);
        if (refusal.Code == "teeth") Assert.Null(TwoStageGear.Read(refusal.Example).Refusal);
    }

    // Worked: R 75, S 30 makes 3.50 (ring held), 1.40 (sun held), 0.714 (overdriving), −2.50 (carrier held).
    [Fact]
    public void A_planetary_has_a_ratio_for_each_member_held()
    {
        var set = new Planetary(75, 30);

        Assert.Equal(3.5, set.RingHeld, 1e-12);
        Assert.Equal(1.4, set.SunHeld, 1e-12);
        Assert.Equal(0.7142857, set.Overdriving, 1e-7);
        Assert.Equal(-2.5, set.CarrierHeld, 1e-12);
    }

    // Second route: S ω_sun + R ω_ring = (R + S) ω_carrier, with the speeds that each ratio claims.
    [Fact]
    public void Each_ratio_of_a_planetary_obeys_the_speeds_of_its_members()
        => Gen.Select(Gen.Int[40, 150], Gen.Int[10, 24]).Sample((ring, sun) =>
        {
            var set = new Planetary(ring, sun);
            double Balance(double ofSun, double ofRing, double ofCarrier) => (sun * ofSun) + (ring * ofRing) - ((ring + sun) * ofCarrier);

            Assert.Equal(0, Balance(set.RingHeld, 0, 1), 1e-9);
            Assert.Equal(0, Balance(0, set.SunHeld, 1), 1e-9);
            Assert.Equal(0, Balance(0, 1, set.Overdriving), 1e-9);
            Assert.Equal(0, Balance(set.CarrierHeld, 1, 0), 1e-9);
        });

    [Theory]
    [InlineData(3, 30)]
    [InlineData(75, 3)]
    [InlineData(201, 30)]
    [InlineData(36, 62)]
    [InlineData(60, 50)]
    public void A_planetary_without_room_for_planets_is_refused(int ring, int sun) => Assert.Throws<RefusedException>(() => new Planetary(ring, sun));

    [Fact]
    public void A_hub_multiplies_the_differential()
    {
        Assert.Equal(7.80, HubReduction.AxleRatio(3.90, 2.00).Value, 1e-12);
        Assert.Equal(1.92, HubReduction.Of(new GearMesh(48, 25)), 1e-12);
        Assert.Equal(3.5, HubReduction.Of(new Planetary(75, 30)), 1e-12);
        Assert.Throws<RefusedException>(() => HubReduction.Of(new GearMesh(25, 48)));
    }

    // 7.80 counted over an axle of 39/10 teeth leaves 2.00 for the hubs.
    [Fact]
    public void What_the_count_has_beyond_the_teeth_is_the_hub()
    {
        var counted = Measured.From(7.8, new Input("count", 0.02, new Evidence("count")));
        var hub = HubReduction.Behind(counted, new Teeth(39, 10));

        Assert.Equal(2, hub.Value, 1e-12);
        Assert.Equal(0.02 / 3.9, hub.StandardUncertainty, 1e-12);
    }

    // Worked, from memory: 9.04 over 6.50 is a planetary of 1.391.
    [Fact]
    public void A_two_speed_axle_is_slower_by_its_planetary()
    {
        Assert.Equal(1.391, TwoSpeedAxle.Counted(6.50, 9.04).Step.Value, 5e-4);

        // 39/6 = 6.5 and a planetary of 46/18: 1 + 18/46 = 1.3913: 9.0435.
        Assert.Equal(9.0435, TwoSpeedAxle.Of(new Teeth(39, 6), new Planetary(46, 18)).Low.Value, 1e-4);
    }

    // Low again from high and step is the count of low, its uncertainty included: what the counts share is not counted twice.
    [Fact]
    public void Low_through_the_counted_step_is_low_as_counted()
    {
        var (high, low) = (InventedCount(6.5, 0.02), InventedCount(9.04, 0.03));

        Assert.Equal(low.StandardUncertainty, TwoSpeedAxle.Counted(high, low).Low.StandardUncertainty, 1e-12);
    }

    [Fact]
    public void A_transfer_case_is_low_by_planetary_or_by_layshaft()
    {
        Assert.Equal(2.7222, TransferCaseLow.Of(new Planetary(62, 36)), 1e-4);
        Assert.Equal(2.0, TransferCaseLow.Of(new GearMesh(30, 20), new GearMesh(40, 30)), 1e-12);
        Assert.Throws<RefusedException>(() => TransferCaseLow.Of(new Planetary(190, 20)));

        Assert.Equal((2.7222, 0), (Math.Round(TransferCaseLow.Read("planetary 62/36").OrRefuse().Ratio, 4), TransferCaseLow.Read("planetary 62/36").OrRefuse().HalfLastDigit));
        Assert.Equal(2.0, TransferCaseLow.Read("30/20 40/30").OrRefuse().Ratio, 1e-12);
        Assert.Equal(0.005, TransferCaseLow.Read("2.72").OrRefuse().HalfLastDigit, 1e-12);
        Assert.NotNull(TransferCaseLow.Read("planetary 190/20").Refusal);
        Assert.NotNull(TransferCaseLow.Read("low").Refusal);
        Assert.Contains("75/30 75/30", TransferCaseLow.Read("75/30 75/30").Refusal!.Message, StringComparison.Ordinal);
    }

    private static Measured InventedCount(double ratio, double u) => Measured.From(ratio, new Input("count", u, new Evidence("count")));

    // 1 + 18/46; 9.04/6.50 each to half a hundredth: u/step = √((0.005/9.04)² + (0.005/6.50)²)/√3.
    [Theory]
    [InlineData("planetary 46/18", 1.391304, 0)]
    [InlineData("9.04/6.50", 1.390769, 0.000760)]
    [InlineData("1.39", 1.39, 0.002887)]
    public void A_step_is_read_from_teeth_from_both_ratios_or_by_itself(string text, double step, double u)
    {
        var read = TwoSpeedAxle.ReadStep(text).OrRefuse();

        Assert.Equal(step, read.Value, 1e-6);
        Assert.Equal(u, read.StandardUncertainty, 1e-6);
    }

    [Theory]
    [InlineData("46/18", "46")]
    [InlineData("6.50/9.04", "0.719")]
    [InlineData("9.04", "9.04")]
    public void What_is_no_step_is_refused(string text, string says)
        => Assert.Contains(says, TwoSpeedAxle.ReadStep(text).Refusal!.Message, StringComparison.Ordinal);

    [Fact]
    public void Two_planetary_sets_have_a_reverse_and_a_box_of_pairs_says_nothing_of_it()
    {
        Assert.Equal(75 / 33.0, GearTrain.Read("planetary 75/30 75/33").OrRefuse().Reverse!.Value, 1e-12);
        Assert.Null(GearTrain.Read("29/19 31/14 25/18 1").OrRefuse().Reverse);
    }
}
