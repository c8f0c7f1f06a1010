using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.RunningGear;

public sealed class MassOnAxleTests
{
    private static readonly TransferCase PartTime = new("case", null, null) { FrontDrive = FrontDrive.Declutch };

    [Fact]
    public void A_weighed_axle_is_believed_before_any_share()
        => Assert.Equal(800, MassOnAxle.Of(Car(0.5) with { AxleMasses = new(null, InventedCar.Exactly(800)) }, Position.RearAxle)!.Value);

    [Fact]
    public void The_driven_axle_carries_its_share_and_the_other_the_rest()
    {
        Assert.Equal(840, MassOnAxle.Of(Car(0.6), Position.RearAxle)!.Value, 1e-9);
        Assert.Equal(560, MassOnAxle.Of(Car(0.6), Position.FrontAxle)!.Value, 1e-9);
        Assert.Equal(840, MassOnAxle.Of(Car(0.6) with { TransferCase = PartTime }, Position.RearAxle)!.Value, 1e-9);
    }

    // ± 15 % of 1400 kg, rectangular: 210/√3.
    [Fact]
    public void With_all_wheels_driven_each_axle_carries_about_half()
    {
        var rear = MassOnAxle.Of(Car(1) with { TransferCase = PartTime }, Position.RearAxle)!;

        Assert.Equal(700, rear.Value, 1e-9);
        Assert.Equal(210 / Math.Sqrt(3), rear.StandardUncertainty, 1e-9);
        Assert.Equal(700, MassOnAxle.Of(Car(null) with { TransferCase = PartTime }, Position.FrontAxle)!.Value, 1e-9);
    }

    // A case that always drives both axles: the share that was told of one axle is the road's of a part-time drive only.
    [Fact]
    public void Always_driven_together_each_axle_carries_about_half_whatever_share_was_told()
        => Assert.Equal(700, MassOnAxle.Of(Car(0.6) with { TransferCase = PartTime with { FrontDrive = FrontDrive.ThroughShaft } }, Position.RearAxle)!.Value, 1e-9);

    [Fact]
    public void Each_axle_is_its_own_weighing()
    {
        var weighed = Car(0.5) with { AxleMasses = new(InventedCar.Exactly(640), InventedCar.Exactly(800)) };

        Assert.Equal(640, MassOnAxle.Of(weighed, Position.FrontAxle)!.Value);
        Assert.Equal(800, MassOnAxle.Of(weighed, Position.RearAxle)!.Value);
    }

    // All of it on one driven axle leaves nothing to say of the other.
    [Fact]
    public void A_whole_share_of_a_two_wheel_drive_is_the_driven_axles_alone()
    {
        Assert.Equal(1400, MassOnAxle.Of(Car(1), Position.RearAxle)!.Value, 1e-9);
        Assert.Null(MassOnAxle.Of(Car(1), Position.FrontAxle));
    }

    [Fact]
    public void What_nobody_weighed_is_not_guessed()
    {
        Assert.Null(MassOnAxle.Of(Car(null), Position.RearAxle));
        Assert.Null(MassOnAxle.Of(InventedCar.Plain, Position.RearAxle));
    }

    private static Driveline Car(double? share) => InventedCar.Plain with
    {
        Load = new() { Mass = InventedCar.Exactly(1400), DrivenShare = share is { } known ? new(known, Source.Measured) : null },
    };
}
