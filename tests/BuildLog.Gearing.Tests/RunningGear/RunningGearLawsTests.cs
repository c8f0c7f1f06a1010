using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
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

    // The pull at slip is μ times what stands there then, and moves h/L of itself: the answer is in its own equation.
    [Fact]
    public void What_stands_on_a_driven_axle_at_slip_is_what_stands_there_at_rest_and_what_its_own_pull_moves()
        => Gen.Select(Gen.Double[400, 1500], Gen.Double[400, 1500], Gen.Double[0.4, 0.9], Gen.Double[2, 3.5], Gen.Double[0.3, 1], Gen.Enum<Way>()).Sample((front, rear, height, wheelbase, grip, way) =>
        {
            var car = Slipping(front, rear, height, wheelbase, grip);
            var load = LoadAtSlip.Of(car, Position.RearAxle, way)!.Value;

            Assert.Equal(load, rear + ((way == Way.Forwards ? 1 : -1) * grip * load * height / wheelbase), 1e-9 * load);
        });

    [Fact]
    public void With_all_wheels_driven_slip_takes_from_one_axle_what_it_gives_to_the_other()
        => Gen.Select(Gen.Double[400, 1500], Gen.Double[400, 1500], Gen.Double[0.4, 0.9], Gen.Double[2, 3.5], Gen.Double[0.3, 1], Gen.Enum<Way>()).Sample((front, rear, height, wheelbase, grip, way) =>
        {
            var truck = Slipping(front, rear, height, wheelbase, grip) with { FrontAxle = InventedCar.Axle(4.1), TransferCase = new("case", InventedCar.Exactly(1), null) };

            Assert.Equal(front + rear, LoadAtSlip.Of(truck, Position.FrontAxle, way)!.Value + LoadAtSlip.Of(truck, Position.RearAxle, way)!.Value, 1e-9 * (front + rear));
        });

    // Whatever the three displays say: they are told as they are, and none is surer than the gap between them where that is more than the displays leave.
    [Fact]
    public void A_weighing_tells_what_was_displayed_and_is_no_surer_than_its_gap()
        => Gen.Select(Gen.Double[300, 1500], Gen.Double[300, 1500], Gen.Double[-200, 200], Gen.Double[5, 50])
            .Where((_, _, off, step) => Math.Abs(Math.Abs(off) - (3 * step)) > 1e-9) // at the very limit the last bit of a sum decides
            .Sample((front, rear, off, step) =>
        {
            var weighing = Weighing.Of([Display(OnThePlate.Front, front), Display(OnThePlate.Rear, rear), Display(OnThePlate.Whole, front + rear + off)], step);
            var contradicted = weighing.Agrees ? 0 : weighing.Gap!.Value;

            Assert.Equal(Math.Abs(off), weighing.Gap!.Value, 1e-9);
            Assert.Equal(Math.Abs(off) <= 3 * step, weighing.Agrees);
            Assert.Equal((front, rear, front + rear + off), (weighing.Front!.Value, weighing.Rear!.Value, weighing.Whole!.Value));
            Assert.All([weighing.Front, weighing.Rear, weighing.Whole], mass =>
                Assert.Equal(((step * step / 4) + (contradicted * contradicted)) / 3, mass.StandardUncertainty * mass.StandardUncertainty, 1e-6 * step * step));
        });

    private static WeighReading Display(OnThePlate on, double kilograms) => new(on, new Typed(kilograms, Units.Kilogram, ""), "");

    private static Driveline Slipping(double front, double rear, double height, double wheelbase, double grip) => InventedCar.Plain with
    {
        AxleMasses = new(InventedCar.Exactly(front), InventedCar.Exactly(rear)),
        Load = new() { GravityHeight = InventedCar.Exactly(height), Wheelbase = InventedCar.Exactly(wheelbase), Grip = InventedCar.Exactly(grip) },
    };

    private static Driveline Car(double? share) => InventedCar.Plain with
    {
        FrontAxle = InventedCar.Axle(4.1),
        Load = new() { DrivenShare = share is { } told ? InventedCar.Exactly(told) : null },
    };
}
