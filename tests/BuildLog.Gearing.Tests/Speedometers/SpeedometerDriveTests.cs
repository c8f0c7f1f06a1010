using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Speedometers;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Speedometers;

public sealed class SpeedometerDriveTests
{
    private const double Mile = 1609.344;

    // Worked examples G3 and G5: 8 drive teeth, 3.73, 780 wheel turns a mile, dial 1000 a mile → 23.2752 teeth; 16 pulses → 46 550.4 a mile.
    [Fact]
    public void Driven_teeth_and_pulses()
    {
        Assert.Equal(23.2752, DrivenGear.Exactly(SpeedometerDrive.Gears(8, 20), 3.73, 1, Mile / 780, 1000 / Mile).Value, 1e-4);
        Assert.Equal(46550.4, Mile * CableTurns.PerMetre(SpeedometerDrive.Pulses(16), 3.73, 1, Mile / 780).Value, 0.01);
    }

    // By hand: 23.2752 / 23 reads 1.2 % high, / 24 3.0 % low.
    [Fact]
    public void The_gears_beside_the_exact_one_have_their_errors()
    {
        var gears = DrivenGear.Beside(23.2752);

        Assert.Equal([23, 24], gears.Select(gear => gear.Teeth));
        Assert.Equal(0.0120, gears[0].Reading.OdometerError.Value, 5e-5);
        Assert.Equal(-0.0302, gears[1].Reading.OdometerError.Value, 5e-5);
        Assert.Equal([23], DrivenGear.Beside(23).Select(gear => gear.Teeth));
    }

    // 23.2752 teeth: 23, 22 and 21 read 1.2, 5.8 and 10.8 % high, all lawful; 20 would be 16 %.
    [Fact]
    public void The_lawful_gears_are_those_with_too_few_teeth_but_not_far_too_few()
        => Assert.Equal([23, 22, 21], DrivenGear.Within(23.2752, SpeedometerLaw.Share()).Select(gear => gear.Teeth));

    // The limits of the window belong to it: 22 over 20 is 1.1, 23 over 23 is 1; from 1.05 to 1.12 only 22 and 21 teeth read.
    [Fact]
    public void A_gear_inside_a_window_reads_what_it_reads()
    {
        Assert.Equal([22, 21, 20], DrivenGear.Within(22, new(1, 1.1)).Select(gear => gear.Teeth));
        Assert.Equal(23, DrivenGear.Within(23, new(1, 1.1)).First().Teeth);
        Assert.Equal([22, 21], DrivenGear.Within(23.2752, new(1.05, 1.12)).Select(gear => gear.Teeth));
        Assert.Equal(23.2752 / 22, DrivenGear.Within(23.2752, new(1.05, 1.12)).First().Reading.Share.Value, 1e-12);
    }

    [Theory]
    [InlineData(17.59, 17)]
    [InlineData(17.60, 18)]
    [InlineData(17.0, 17)]
    public void The_makers_rule_rounds_up_from_six_tenths(double exactly, int teeth) => Assert.Equal(teeth, DrivenGear.ByMakersRule(exactly));

    // Drive teeth 8, driven 21, box 0.9: 0.342857 cable turns a shaft turn.
    [Fact]
    public void A_correction_box_is_in_the_drive()
        => Assert.Equal(8 / 21.0 * 0.9, SpeedometerDrive.Gears(8, 21, correction: 0.9).PerTurn.Value, 1e-12);

    [Fact]
    public void Where_the_drive_sits_decides_what_it_turns_with()
    {
        double At(Pickup pickup) => CableTurns.PerMetre(SpeedometerDrive.Pulses(1, pickup), 4, 1.25, 2).Value;

        Assert.Equal(2, At(Pickup.Propshaft), 1e-12);
        Assert.Equal(2.5, At(Pickup.GearboxOutput), 1e-12);
        Assert.Equal(0.5, At(Pickup.Wheel), 1e-12);
    }

    // With the exact number of teeth, were it one, the speedometer is right: the two formulas are each other's inverse.
    [Fact]
    public void The_exact_gear_reads_right()
        => Gen.Select(Gen.Int[4, 20], Gen.Double[2.5, 6], Gen.Double[1.6, 3], Gen.Double[0.4, 1.6]).Sample((drive, axle, tyre, wanted) =>
        {
            var teeth = DrivenGear.Exactly(SpeedometerDrive.Gears(drive, 20), axle, 1, tyre, wanted).Value;
            var with20 = Reading.Of(CableTurns.PerMetre(SpeedometerDrive.Gears(drive, 20), axle, 1, tyre), wanted).Share.Value;

            Assert.Equal(teeth / 20, with20, 1e-9);
            Assert.Equal(teeth, DrivenGear.Exactly(20, new(with20)).Value, 1e-9);
        });

    [Fact]
    public void Impossible_gears_are_refused_with_the_range()
    {
        Assert.Contains("1 to 60", Assert.Throws<RefusedException>(() => SpeedometerDrive.Gears(0, 20)).Message, StringComparison.Ordinal);
        Assert.Contains("3 to 99", Assert.Throws<RefusedException>(() => SpeedometerDrive.Gears(8, 2)).Message, StringComparison.Ordinal);
        Assert.Contains("1000", Assert.Throws<RefusedException>(() => SpeedometerDrive.Pulses(0)).Message, StringComparison.Ordinal);
        Assert.Contains("0.01 to 100", Assert.Throws<RefusedException>(() => SpeedometerDrive.Pulses(4, correction: 0)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => DrivenGear.Exactly(SpeedometerDrive.Pulses(4), 4, 1, 2, 1));
    }

    [Fact]
    public void The_last_gears_pulses_and_corrections_of_a_range_belong_to_it()
    {
        Assert.Equal(1 / 99.0, SpeedometerDrive.Gears(1, 99).PerTurn.Value, 1e-12);
        Assert.Equal(20, SpeedometerDrive.Gears(60, 3).PerTurn.Value, 1e-12);
        Assert.Equal(1000, SpeedometerDrive.Pulses(1000).PerTurn.Value, 1e-9);
        Assert.Equal(16 * 0.01, SpeedometerDrive.Pulses(16, correction: 0.01).PerTurn.Value, 1e-12);
        Assert.Equal(16 * 100, SpeedometerDrive.Pulses(16, correction: 100).PerTurn.Value, 1e-9);
    }

    [Fact]
    public void A_drive_says_what_it_was_made_of()
    {
        var gears = SpeedometerDrive.Gears(8, 21, Pickup.Wheel, 0.9);

        Assert.Equal((8, 21, Pickup.Wheel, 0.9), (gears.DriveTeeth, gears.DrivenTeeth, gears.Pickup, gears.Correction.Value));
        Assert.Equal((null, 0.9), (SpeedometerDrive.Pulses(4, correction: 0.9).DriveTeeth, SpeedometerDrive.Pulses(4, correction: 0.9).Correction.Value));
    }

    // Below three teeth there is no gear: 3.5 exactly leaves 3 and 4, 2.5 only 3.
    [Fact]
    public void No_gear_has_fewer_than_three_teeth()
    {
        Assert.Equal([3, 4], DrivenGear.Beside(3.5).Select(gear => gear.Teeth));
        Assert.Equal([3], DrivenGear.Beside(2.5).Select(gear => gear.Teeth));
        Assert.Equal([4, 3], DrivenGear.Within(4, new(1, 2)).Select(gear => gear.Teeth));
    }

    // A correction box of 0.9 makes ten teeth do the work of nine; on a case of 1.25 the gearbox's own drive turns as much more.
    [Fact]
    public void The_exact_gear_follows_the_box_and_the_case()
    {
        var plain = DrivenGear.Exactly(SpeedometerDrive.Gears(8, 20), 4, 1.25, 2, 0.6).Value;

        Assert.Equal(plain * 0.9, DrivenGear.Exactly(SpeedometerDrive.Gears(8, 20, correction: 0.9), 4, 1.25, 2, 0.6).Value, 1e-9);
        Assert.Equal(plain * 1.25, DrivenGear.Exactly(SpeedometerDrive.Gears(8, 20, Pickup.GearboxOutput), 4, 1.25, 2, 0.6).Value, 1e-9);
    }

    // 52.8 ft pushed and 6.21 turns counted: 1000 times that in ten miles.
    [Fact]
    public void A_push_along_the_floor_gives_the_turns_a_metre()
        => Assert.Equal(621, 1609.344 * CableTurns.Pushed(6.21, 16.09344).Value, 1e-9);

    // The tyre is all there is to be unsure of.
    [Fact]
    public void Its_uncertainty_is_the_tyres()
    {
        var tyre = Measured.From(2, new Input("tyre", 0.02, new Evidence("tyre")));

        Assert.Equal(0.01, CableTurns.PerMetre(SpeedometerDrive.Gears(8, 21), 4.1, 1, tyre).RelativeUncertainty, 1e-12);
    }
}
