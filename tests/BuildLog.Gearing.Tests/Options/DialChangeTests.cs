using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Speedometers;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Options;

public sealed class DialChangeTests
{
    // By hand: 8/22 · 3.08 / 2.00 = 0.56 cable turns a metre where 0.7 read right: 0.8 of the truth. 22 · 0.8 = 17.6: 18 teeth still read low, 17 read 1.035.
    [Fact]
    public void The_truest_gear_that_does_not_read_low_is_taken()
        => Assert.Equal(17, DialChange.For(With(SpeedometerDrive.Gears(8, 22)))!.DrivenTeeth);

    // 1/0.78873 = 1.2679 makes it read just right, to two places and not low 1.27.
    [Fact]
    public void Without_gears_the_correction_is_changed()
    {
        var change = DialChange.For(With(SpeedometerDrive.Pulses(8 / 22.0), wanted: 0.71))!;

        Assert.Null(change.DrivenTeeth);
        Assert.Equal(1.27, change.Drive.Correction.Value, 1e-12);
    }

    // 8/22 · 4.10 / 2.00 / 0.7 = 1.065 is inside 1 to 1.131; of 0.2 of the truth a gear of 14 teeth, the smallest made, still makes too little.
    [Theory]
    [InlineData(4.10)]
    [InlineData(0.77)]
    public void Where_it_fits_and_where_nothing_that_is_made_helps_it_stays(double axle)
        => Assert.Null(DialChange.For(With(SpeedometerDrive.Gears(8, 22)) with { RearAxle = InventedCar.Axle(axle) }));

    [Fact]
    public void What_nobody_knows_enough_of_is_not_set_right()
        => Assert.Null(DialChange.For(With(SpeedometerDrive.Gears(8, 22)) with { Speedometer = new("dial", null, SpeedometerDrive.Gears(8, 22)) }));

    // The cruise is met, only the dial reads low: its gear alone comes first, at a price nobody named, and goes with any axle that needs one.
    [Fact]
    public void The_gear_alone_is_a_way_out_and_goes_with_the_others()
    {
        var car = With(SpeedometerDrive.Gears(8, 22));
        var here = CandidateParts.InPlace(car);

        // 15.28 wheel turns a second · 3.08 are 2823 rev/min, and · 3.055 exactly the 2800 that are wanted.
        var parts = here with { Axles = [.. here.Axles, new("nearer", InventedCar.Axle(3.055), Pool.Owned)] };
        var options = OptionSearch.Run(car, new([InventedCar.Goal("110 km/h", "2800 rpm")]), parts, cancel: TestContext.Current.CancellationToken).Options;

        Assert.Equal([(true, 1, 17), (false, 2, 17)], options.Select(option => (option.Axle.IsInPlace, option.Changes, option.Dial!.DrivenTeeth!.Value)));
        Assert.All(options, option => Assert.Equal((0.0, null, 17), (option.Score.Clash, option.CostMinor, option.Driveline.Speedometer!.Drive!.DrivenTeeth)));
        Assert.Equal(0, options[1].PartsCostMinor);
    }

    // By 4.10 it reads right, so the axle that the cruise wants is judged with the gear that sets it right again: 22 · 0.8 · 2.618 / 3.08 = 14.96, so 14 teeth.
    [Fact]
    public void An_axle_that_would_make_it_read_low_is_judged_with_its_gear()
    {
        var car = With(SpeedometerDrive.Gears(8, 22)) with { RearAxle = InventedCar.Axle(4.10) };
        var here = CandidateParts.InPlace(car);
        var parts = here with { Axles = [.. here.Axles, new("long", InventedCar.Axle(2.618), Pool.Owned)] };

        var option = Assert.Single(OptionSearch.Run(car, new([InventedCar.Goal("110 km/h", "2400 rpm")]), parts, cancel: TestContext.Current.CancellationToken).Options);

        Assert.Equal((0.0, 2, 14), (option.Score.Clash, option.Changes, option.Dial!.DrivenTeeth));
        Assert.Equal(1, option.Robustness);
    }

    private static Driveline With(SpeedometerDrive drive, double wanted = 0.7)
        => InventedCar.Plain with { RearAxle = InventedCar.Axle(3.08), Speedometer = new("dial", InventedCar.Exactly(wanted), drive) };
}
