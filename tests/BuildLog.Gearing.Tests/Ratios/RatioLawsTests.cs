using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Speeds;
using BuildLog.Gearing.Tests.Drivelines;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Ratios;

/// <summary>What holds of ratios whatever the numbers are.</summary>
public sealed class RatioLawsTests
{
    private static readonly Gen<Teeth> AnyAxle = Gen.Select(Gen.Int[25, 60], Gen.Int[7, 16]).Where((ring, pinion) => ring > 1.6 * pinion && ring < 8 * pinion).Select((ring, pinion) => new Teeth(ring, pinion));

    private static readonly Gen<Planetary> AnySet = Gen.Select(Gen.Int[12, 60], Gen.Int[16, 80]).Select((sun, more) => new Planetary(sun + more, sun));

    [Fact]
    public void What_a_hub_multiplies_the_teeth_take_out_again()
        => Gen.Select(AnyAxle, Gen.Double[1, 4]).Sample((teeth, hub) =>
            Assert.Equal(hub, HubReduction.Behind(HubReduction.AxleRatio(teeth.ToMeasured(), hub), teeth).Value, 1e-12));

    [Fact]
    public void Two_meshes_turned_round_undo_each_other()
        => Gen.Select(Gen.Int[10, 60], Gen.Int[10, 60]).Sample((one, other) => Assert.Equal(1, new GearMesh(one, other).Ratio * new GearMesh(other, one).Ratio, 1e-12));

    [Fact]
    public void It_is_all_one_which_of_two_pairs_comes_first()
        => Gen.Select(Gen.Int[20, 35], Gen.Int[20, 35], Gen.Int[20, 35], Gen.Int[20, 35]).Sample((a, b, c, d) =>
            Assert.Equal(new TwoStageGear(new(a, b), new(c, d)).Ratio, new TwoStageGear(new(c, d), new(a, b)).Ratio, 1e-12));

    [Fact]
    public void Of_two_planetary_sets_first_gear_follows_from_second_and_reverse()
        => Gen.Select(AnySet, AnySet).Sample((input, output) =>
        {
            var train = new SimpsonTrain(input, output);

            Assert.Equal(train.First, SimpsonTrain.FirstBeside(train.Second, -train.Reverse).Value, 1e-9);
            Assert.True(train.First > train.Second && train.Second > 1);
        });

    [Fact]
    public void The_low_of_a_two_speed_axle_is_lower_whatever_its_teeth_and_any_scale_leaves_its_step()
        => Gen.Select(Gen.Int[40, 90], Gen.Int[12, 24], Gen.Double[2, 7], Gen.Double[0.5, 2]).Sample((ring, sun, high, scale) =>
        {
            var axle = new TwoSpeedAxle(high, new Planetary(ring, sun).SunHeld);

            Assert.True(axle.Low.Value > axle.High.Value);
            Assert.Equal(axle.Step.Value, TwoSpeedAxle.Counted(axle.High.Value * scale, axle.Low.Value * scale).Step.Value, 1e-9);
        });

    [Fact]
    public void Reverse_from_first_and_second_is_the_one_that_binds_them()
        => Gen.Select(Gen.Double[1.3, 1.7], Gen.Double[1.5, 3]).Sample((second, reverse) =>
        {
            var first = SimpsonTrain.FirstBeside(second, reverse).Value;

            Assert.True(SimpsonTrain.CanBe((Measured)first, second, reverse));
            Assert.False(SimpsonTrain.CanBe((Measured)(first * 1.001), second, reverse));
            Assert.Equal(reverse, (first - second) / (second - 1), 1e-9);
        });

    [Fact]
    public void A_road_test_finds_the_axle_it_was_driven_with()
        => Gen.Select(Gen.Double[2.5, 6], Gen.Double[15, 35], Gen.Double[1.7, 2.6], Gen.Double[0.7, 1.4]).Sample((axle, v, circumference, gear) =>
        {
            var n = new SpeedRelation { RoadSpeed = v, Gear = gear, Axle = axle, Circumference = circumference }.Solved().EngineSpeed!.Value;

            Assert.Equal(axle, RoadTest.AxleRatio(v, n, gear, circumference).Value, 1e-9);
        });

    [Fact]
    public void A_faster_road_test_is_never_a_worse_one()
        => Gen.Select(Gen.Double[15, 35], Gen.Double[1.01, 2]).Sample((v, faster) =>
            Assert.True(RoadTest.AxleRatio(v * faster, 2 * v * faster, 1, 2).RelativeUncertainty < RoadTest.AxleRatio(v, 2 * v, 1, 2).RelativeUncertainty));

    [Fact]
    public void A_tag_as_far_above_a_count_agrees_as_one_below()
        => Gen.Select(Gen.Double[3, 5], Gen.Double[0.001, 0.05], Gen.Double[0, 0.2]).Sample((counted, u, apart) =>
        {
            var count = InventedCar.Exactly(InventedCar.Of(counted, u));

            Assert.Equal(Agrees(counted + apart, count), Agrees(counted - apart, count));
        });

    // A slip is a factor of two or a fraction turned over; whatever is asked would be a usual axle.
    [Fact]
    public void Every_slip_that_is_asked_about_would_make_a_usual_axle()
        => Gen.Double[0.1, 15].Sample(ratio => Assert.All(RatioTraps.OfAxle(ratio).Where(trap => trap.Otherwise is not null), trap =>
        {
            Assert.True(RatioTraps.UsualAxle.Contains(trap.Otherwise!.Value));
            Assert.Contains(trap.Otherwise.Value / ratio, (double[])[2, 0.5, 1 / (ratio * ratio)], new Close());
        }));

    [Fact]
    public void Another_digit_makes_a_quoted_ratio_ten_times_as_sure()
        => Gen.Int[16, 79].Sample(tenths =>
        {
            var coarse = QuotedRatio.Read(FormattableString.Invariant($"{tenths / 10.0:0.0}"), RatioRange.Axle).OrRefuse();
            var fine = QuotedRatio.Read(FormattableString.Invariant($"{tenths / 10.0:0.00}"), RatioRange.Axle).OrRefuse();

            Assert.Equal(coarse.StandardUncertainty, 10 * fine.StandardUncertainty, 1e-12);
        });

    [Fact]
    public void An_overdrive_named_by_its_share_is_one_less_that_share()
        => Gen.Int[5, 60].Sample(percent => Assert.Equal(1 - (percent / 100.0), OverdriveUnit.Read($"{percent} %").OrRefuse().Ratio, 1e-12));

    private static bool Agrees(double tag, Known count) => new TagAgainstCount(new(tag, Source.Tag), count).Agrees;

    private sealed class Close : IEqualityComparer<double>
    {
        public bool Equals(double x, double y) => Math.Abs(x - y) < 1e-9 * Math.Abs(y);

        public int GetHashCode(double obj) => 0;
    }
}
