using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Tests.Drivelines;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.RunningGear;

public sealed class FourWheelMatchTests
{
    // Worked examples H3 and H4: radii 365 over 360 mm; 4.10 in front of 4.11.
    [Fact]
    public void A_larger_radius_or_a_lower_ratio_in_front_pulls()
    {
        Assert.Equal(0.0136986, FourWheelMatch.LowSpeed(0.365, 0.360, 3.73, 3.73).Value, 1e-7);
        Assert.Equal(0.00243309, FourWheelMatch.HighSpeed(2, 2, 4.10, 4.11).Value, 1e-8);
        Assert.Equal(0.0080, FourWheelMatch.HighSpeed(2, 2, 3.70, 3.73).Value, 5e-5);
    }

    // The manual's own form: [(M_R R_AR − M_F R_AF) / (M_R R_AR)], turns a mile instead of circumferences.
    [Fact]
    public void By_turns_a_mile_it_is_the_same()
        => Gen.Select(Gen.Double[600, 1000], Gen.Double[600, 1000], Gen.Double[3, 5], Gen.Double[3, 5]).Sample((front, rear, frontAxle, rearAxle)
            => Assert.Equal(
                ((rear * rearAxle) - (front * frontAxle)) / (rear * rearAxle),
                FourWheelMatch.HighSpeed(1609.344 / front, 1609.344 / rear, frontAxle, rearAxle).Value, 1e-9));

    [Fact]
    public void Four_tyres_of_one_set_cancel()
    {
        var tyre = InventedCar.Of(2, 0.05, "roll-out");

        Assert.True(FourWheelMatch.HighSpeed(tyre, tyre, 4.10, 4.11).IsExact);
    }

    // A transfer case maker's manual, p. 37: ± 1.0 and 1.5 % through-shaft, 1.5 and 2.0 declutch, 3.0 centre differential; the clutch pack's is the trade press's.
    [Theory]
    [InlineData(FrontDrive.ThroughShaft, 0.010, 0.015, true)]
    [InlineData(FrontDrive.Declutch, 0.015, 0.020, true)]
    [InlineData(FrontDrive.CentreDifferential, 0.030, 0.030, true)]
    [InlineData(FrontDrive.ClutchPack, 0.0016, 0.0016, false)]
    public void The_limits_are_the_manuals(FrontDrive drive, double low, double high, bool read)
    {
        Assert.Equal((low, high), FourWheelMatch.Limits(drive));
        Assert.Equal(read, FourWheelMatch.LimitIsVerified(drive));
    }

    [Fact]
    public void Every_drive_has_a_limit() => Assert.All(Enum.GetValues<FrontDrive>(), drive => Assert.True(FourWheelMatch.Limits(drive).High > 0));
}
