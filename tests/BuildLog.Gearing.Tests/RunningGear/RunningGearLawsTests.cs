using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Tests.Drivelines;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.RunningGear;

/// <summary>What holds of axles and their loads whatever the numbers are.</summary>
public sealed class RunningGearLawsTests
{
    [Fact]
    public void What_braking_moves_forward_accelerating_moves_back()
        => Gen.Select(Gen.Double[800, 3000], Gen.Double[0, 8], Gen.Double[0.4, 0.9], Gen.Double[2, 3.5]).Sample((mass, acceleration, height, wheelbase) =>
            Assert.Equal(
                WeightTransfer.ToRear(mass, acceleration, height, wheelbase).Value, -WeightTransfer.ToRear(mass, -acceleration, height, wheelbase).Value, 1e-9));

    // Standing on a grade moves what an acceleration of g · sin θ would.
    [Fact]
    public void A_grade_moves_load_like_the_acceleration_it_asks_for()
        => Gen.Select(Gen.Double[-0.4, 0.4], Gen.Double[0.4, 0.9]).Sample((grade, height) =>
            Assert.Equal(WeightTransfer.ToRear(1500, 9.80665 * Math.Sin(grade), height, 2.6).Value, WeightTransfer.ToRear(1500, 0, height, 2.6, grade).Value, 1e-9));

    [Fact]
    public void A_bolt_circle_is_the_same_from_whichever_chord()
        => Gen.Select(Gen.Double[0.09, 0.25], Gen.Int[2, 5]).Sample((circle, half) =>
            Assert.All(
                (Chord[])[Chord.Adjacent, Chord.SkipOne, Chord.Across],
                chord => Assert.Equal(circle, BoltCircle.FromChord(circle / BoltCircle.Factor(2 * half, chord), 2 * half, chord).Value, 1e-9)));

    // What a wider tyre gains it gains on both sides, and an offset only moves it.
    [Fact]
    public void A_wheel_grows_by_its_width_however_it_is_offset()
        => Gen.Select(Gen.Double[-0.1, 0.1], Gen.Double[-0.05, 0.05]).Sample((width, offset) =>
            Assert.Equal(width, (WheelPlace.OuterEdgeMoves(width, offset) + WheelPlace.InnerEdgeMoves(width, offset)).Value, 1e-12));

    [Fact]
    public void Backspace_and_offset_are_one_measurement()
        => Gen.Select(Gen.Double[0.1, 0.3], Gen.Double[-0.06, 0.06]).Sample((rim, offset) =>
            Assert.Equal(offset, WheelPlace.OffsetFromBackspace(rim, WheelPlace.Backspace(rim, offset)).Value, 1e-12));

    [Fact]
    public void A_faster_vehicle_never_needs_a_slower_tyre_nor_a_heavier_one_a_weaker()
        => Gen.Select(Gen.Double[60, 240], Gen.Double[0, 40], Gen.Double[400, 1500], Gen.Double[0, 500]).Sample((speed, faster, mass, more) =>
        {
            Assert.True(TyreSpeed.Required(speed + faster) >= TyreSpeed.Required(speed));
            Assert.True(TyreLoad.IndexFor(mass + more) >= TyreLoad.IndexFor(mass));
        });

    [Fact]
    public void Both_axles_of_a_told_share_carry_the_whole()
        => Gen.Select(Gen.Double[800, 3000], Gen.Double[0.3, 0.7], Gen.Bool).Sample((mass, share, inFront) =>
        {
            var car = Car(share) with { DrivesInFront = inFront, Load = new() { Mass = InventedCar.Exactly(mass), DrivenShare = InventedCar.Exactly(share) } };

            Assert.Equal(mass, MassOnAxle.Of(car, Position.FrontAxle)!.Value + MassOnAxle.Of(car, Position.RearAxle)!.Value, 1e-9);
        });

    [Fact]
    public void The_low_range_never_drives_less_of_the_mass_than_the_road()
        => Gen.Select(Gen.Double[0.05, 1], Gen.Double[500, 1500], Gen.Double[500, 1500], Gen.Enum<FrontDrive>(), Gen.Bool).Sample((share, front, rear, drive, told) =>
        {
            var truck = Car(told ? share : null) with
            {
                TransferCase = new("case", null, null) { FrontDrive = drive },
                AxleMasses = new(InventedCar.Exactly(front), InventedCar.Exactly(rear)),
            };
            var (road, low) = (DrivenWheels.ShareOnTheRoad(truck)!.Value, DrivenWheels.ShareInLowRange(truck)!.Value);

            Assert.InRange(road, 0, low);
            Assert.True(low <= 1);
        });

    // 1 − q turned about: the axles exchanged are 1 − 1/q.
    [Fact]
    public void Front_and_rear_exchanged_mismatch_the_other_way()
        => Gen.Select(Gen.Double[2, 2.5], Gen.Double[2, 2.5], Gen.Double[3, 5], Gen.Double[3, 5]).Sample((front, rear, frontAxle, rearAxle) =>
        {
            var one = FourWheelMatch.HighSpeed(front, rear, frontAxle, rearAxle).Value;
            var other = FourWheelMatch.HighSpeed(rear, front, rearAxle, frontAxle).Value;

            Assert.Equal(1, (1 - one) * (1 - other), 1e-9);
        });

    private static Driveline Car(double? share) => InventedCar.Plain with
    {
        FrontAxle = InventedCar.Axle(4.1),
        Load = new() { DrivenShare = share is { } told ? InventedCar.Exactly(told) : null },
    };
}
