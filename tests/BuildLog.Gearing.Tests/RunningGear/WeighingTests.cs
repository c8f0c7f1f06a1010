using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;
using Xunit;

namespace BuildLog.Gearing.Tests.RunningGear;

/// <remarks>A display in steps of 20 kg is off by up to 10 kg: u = 10/√3.</remarks>
public sealed class WeighingTests
{
    private static readonly double Display = 10 / Math.Sqrt(3);

    [Theory]
    [InlineData("front 700 kg", OnThePlate.Front, 700)]
    [InlineData("REAR 750", OnThePlate.Rear, 750)]
    [InlineData(" whole  1 450 kg ", OnThePlate.Whole, 1450)]
    [InlineData("whole 1.45 t", OnThePlate.Whole, 1450)]
    [InlineData("front 20 kg", OnThePlate.Front, 20)]
    [InlineData("rear 40000 kg", OnThePlate.Rear, 40_000)]
    public void A_weighing_is_read_as_it_is_called_out(string text, OnThePlate on, double kilograms)
    {
        var reading = WeighReading.Read(text).OrRefuse();

        Assert.Equal((on, text.Trim()), (reading.On, reading.ToString()));
        Assert.Equal(kilograms, reading.Mass.Value, 1e-9);
    }

    // Without its first word a thousand and some is no weighing of an axle.
    [Theory]
    [InlineData("1 450 kg", "weighing")]
    [InlineData("left 700 kg", "weighing")]
    [InlineData("front", "weighing")]
    [InlineData("front,rear 700 kg", "weighing")]
    [InlineData("front 19 kg", "out-of-range")]
    [InlineData("rear 40001 kg", "out-of-range")]
    [InlineData("whole 99 kg", "out-of-range")]
    [InlineData("front 2 m", "wrong-kind")]
    public void What_was_not_on_a_plate_is_refused(string text, string code) => Assert.Equal(code, WeighReading.Read(text).Refusal!.Code);

    // The display's step of 20 kg is no axle.
    [Theory]
    [InlineData("front 1650.5 kg", OnThePlate.Front)]
    [InlineData("rear 1640 kg", OnThePlate.Rear)]
    [InlineData("front 1630 kg", null)]
    [InlineData("front 900 kg", null)]
    public void One_axle_does_not_carry_all_of_it(string axle, OnThePlate? carries)
        => Assert.Equal(carries, Weighing.Of([WeighReading.Read(axle).OrRefuse(), WeighReading.Read("whole 1650.5 kg").OrRefuse()], 20).CarriesAll);

    // 35 and 70 % are common practice, no source: 0.35 · 1500 = 525, 0.70 · 1500 = 1050.
    [Theory]
    [InlineData(524, true)]
    [InlineData(525, false)]
    [InlineData(1050, false)]
    [InlineData(1051, true)]
    public void An_unusual_share_in_front_is_a_doubt(double front, bool isUnusual) => Assert.Equal(isUnusual, FrontShare.Doubt(front, 1500) is not null);

    [Fact]
    public void Two_axles_make_the_whole_and_are_off_independently()
    {
        var weighing = Of("front 700 kg", "rear 750 kg");

        Assert.Equal((700, 750, 1450), (weighing.Front!.Value, weighing.Rear!.Value, weighing.Whole!.Value));
        Assert.Equal(Display, weighing.Front.StandardUncertainty, 1e-9);
        Assert.Equal(Display * Math.Sqrt(2), weighing.Sum!.StandardUncertainty, 1e-9);
        Assert.True(weighing.Agrees);
        Assert.Null(weighing.Gap);
    }

    [Fact]
    public void What_was_not_weighed_is_not_known()
    {
        var front = Of("front 700 kg");

        Assert.Null(front.Rear);
        Assert.Null(front.Sum);
        Assert.Null(front.Whole);
        Assert.Null(Of("front 700 kg", "whole 1460 kg").Gap);
    }

    // Three displays are off by 10 kg each, and the road may slope for as much again: up to 60 kg are no contradiction.
    [Theory]
    [InlineData("whole 1460 kg", 10, true)]
    [InlineData("whole 1390 kg", 60, true)]
    [InlineData("whole 1510 kg", 60, true)]
    [InlineData("whole 1520 kg", 70, false)]
    public void The_whole_is_a_check_on_the_two(string whole, double gap, bool agrees)
    {
        var weighing = Of("front 700 kg", "rear 750 kg", whole);

        Assert.Equal(gap, weighing.Gap!.Value, 1e-9);
        Assert.Equal(agrees, weighing.Agrees);
        Assert.Equal(1450, weighing.Sum!.Value, 1e-9);
        Assert.NotEqual(1450, weighing.Whole!.Value);
    }

    // 100 kg apart: each may be wrong by as much, u = 100/√3 beside the display's.
    [Fact]
    public void Masses_that_contradict_are_no_surer_than_the_gap()
    {
        var weighing = Of("front 620 kg", "rear 560 kg", "whole 1280 kg");
        var wide = Math.Sqrt((100 * 100 / 3.0) + (Display * Display));

        Assert.Equal((620, 560, 1280), (weighing.Front!.Value, weighing.Rear!.Value, weighing.Whole!.Value));
        Assert.All([weighing.Front, weighing.Rear, weighing.Whole], mass => Assert.Equal(wide, mass!.StandardUncertainty, 1e-9));
        Assert.Equal(100, weighing.Gap!.Value, 1e-9);
    }

    // 700 and 720: the mean is 710, s = 14.142, s/√2 = 10, and the display's own half step stays.
    [Fact]
    public void Several_displays_are_averaged_and_their_scatter_comes_on_top()
    {
        var front = Of("front 700 kg", "front 720 kg").Front!;

        Assert.Equal(710, front.Value, 1e-9);
        Assert.Equal(Math.Sqrt(100 + (Display * Display)), front.StandardUncertainty, 1e-9);
    }

    // ± 5 kg is a 95 % half-width.
    [Fact]
    public void A_typed_uncertainty_stands_for_the_step()
    {
        Assert.Equal(5 / 1.959964, Of("front 700 kg ± 5 kg").Front!.StandardUncertainty, 1e-5);
        Assert.Equal(Display, Of("front 700 kg ± 5 kg", "front 700 kg ± 5 kg").Front!.StandardUncertainty, 1e-9);
    }

    [Fact]
    public void Nothing_weighed_or_a_display_without_steps_is_refused()
    {
        Assert.Equal("weighing", Refused([], 20));
        Assert.Equal("step", Refused([WeighReading.Read("front 700 kg").OrRefuse()], 0));
        Assert.Equal("step", Refused([WeighReading.Read("front 700 kg").OrRefuse()], 1001));
        Assert.NotNull(Weighing.Of([WeighReading.Read("front 700 kg").OrRefuse()], 1000).Front);

        static string Refused(IReadOnlyList<WeighReading> readings, double step) => Assert.Throws<RefusedException>(() => Weighing.Of(readings, step)).Refusal.Code;
    }

    [Fact]
    public void Each_place_has_a_word_of_its_own()
        => Assert.Equal(["front axle", "rear axle", "whole vehicle"], Enum.GetValues<OnThePlate>().Select(on => on.InWords()));

    private static Weighing Of(params string[] readings) => Weighing.Of([.. readings.Select(text => WeighReading.Read(text).OrRefuse())], 20);
}
