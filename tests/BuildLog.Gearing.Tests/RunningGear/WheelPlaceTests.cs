using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Tests.Drivelines;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.RunningGear;

public sealed class WheelPlaceTests
{
    // An 8 in rim: ET 0 → 4.50 in, ET −12 mm → 4.03 in.
    [Theory]
    [InlineData(0, 4.50)]
    [InlineData(-12, 4.03)]
    public void Backspace_of_an_eight_inch_rim(double offset, double backspace)
        => Assert.Equal(backspace, WheelPlace.Backspace(8 * 0.0254, offset / 1000).Value / 0.0254, 5e-3);

    // Worked example H7: ET 25 to ET 0 on the same hubs is 50 mm more track.
    [Fact]
    public void Less_offset_is_twice_as_much_track()
        => Assert.Equal(0.050, WheelPlace.TrackChange(0.025, 0, 1.4, 1.4).Value, 1e-12);

    [Fact]
    public void The_change_is_the_difference_of_the_tracks()
        => Gen.Select(Gen.Double[-0.05, 0.05], Gen.Double[-0.05, 0.05], Gen.Double[1.2, 1.8], Gen.Double[1.2, 1.8]).Sample((old, now, oldFaces, nowFaces)
            => Assert.Equal(
                WheelPlace.Track(nowFaces, now).Value - WheelPlace.Track(oldFaces, old).Value,
                WheelPlace.TrackChange(old, now, oldFaces, nowFaces).Value, 1e-12));

    [Fact]
    public void Backspace_and_offset_are_each_others_inverse()
        => Gen.Select(Gen.Double[0.1, 0.3], Gen.Double[-0.05, 0.06]).Sample((width, offset)
            => Assert.Equal(offset, WheelPlace.OffsetFromBackspace(width, WheelPlace.Backspace(width, offset)).Value, 1e-12));

    // 40 mm wider and 10 mm less offset: the outer side moves out by 20 + 10, the inner in by 20 − 10.
    [Fact]
    public void Where_the_side_walls_go()
    {
        Assert.Equal(0.030, WheelPlace.OuterEdgeMoves(0.040, -0.010).Value, 1e-12);
        Assert.Equal(0.010, WheelPlace.InnerEdgeMoves(0.040, -0.010).Value, 1e-12);
    }

    // 1500 kg, 0.5 g, 0.6 m over 2.5 m: 180 kg. On a 20 % grade sin(atan 0.2) = 0.19612: 70.6 kg.
    [Fact]
    public void Load_goes_to_the_rear_pulling_away_and_uphill_and_to_the_front_braking()
    {
        Assert.Equal(180, WeightTransfer.ToRear(1500, 0.5 * 9.80665, 0.6, 2.5).Value, 1e-9);
        Assert.Equal(-180, WeightTransfer.ToRear(1500, -0.5 * 9.80665, 0.6, 2.5).Value, 1e-9);
        Assert.Equal(70.6, WeightTransfer.ToRear(1500, 0, 0.6, 2.5, Math.Atan(0.2)).Value, 0.05);
    }

    [Fact]
    public void The_uncertainty_of_an_offset_counts_on_both_sides()
        => Assert.Equal(0.002, WheelPlace.Track(1.4, InventedCar.Of(0.02, 0.001)).StandardUncertainty, 1e-12);
}
