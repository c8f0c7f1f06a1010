using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Speedometers;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>
/// The invented car: 8 teeth · 4.10 / 2.00 m over a dial of 1000 a mile (0.62137 a metre) are 26.393 teeth. 26 read 1.5 % high, 27 2.2 % low, 23 14.8 % high.
/// </remarks>
public sealed class SpeedometerCheckTests
{
    [Theory]
    [InlineData(26, Verdict.Fits)]
    [InlineData(24, Verdict.Fits)]
    [InlineData(27, Verdict.Clash)]
    [InlineData(23, Verdict.Clash)]
    public void A_driven_gear_against_the_law(int teeth, Verdict verdict) => Assert.Equal(verdict, Find(teeth).Verdict);

    // 26.393: 26 (1.5 %), 25 (5.6 %), 24 (10.0 %). The correction: 27 / 26.393 = 1.0230 to 1.1308 times that, 1.1568.
    [Fact]
    public void The_gears_and_the_correction_that_would_do_are_named()
    {
        var finding = Find(27);

        Assert.Equal("At a true 100 km/h the speedometer shows 98 km/h; wanted 100 to 114 km/h. The odometer runs 2.2 % behind.", finding.Says);
        Assert.Equal(
            ["a driven gear of 26 teeth: reads 1.5 % high", "a driven gear of 25 teeth: reads 5.6 % high", "a driven gear of 24 teeth: reads 10.0 % high", "speedometer correction factor 1.03 to 1.15"],
            finding.Cures);
    }

    // By hand: 26.393 / 23 = 1.1475 is 149 km/h at a true 130, where 147 may be shown; at 100 km/h it would be 115 of 114.
    [Fact]
    public void What_reads_too_high_is_told_where_that_begins()
        => Assert.StartsWith("At a true 130 km/h the speedometer shows 149 km/h; wanted 130 to 147 km/h.", Find(23).Says, StringComparison.Ordinal);

    // Behind a drive of 4 teeth 13.2 would be right: 13 and 12 would read lawfully, and nobody makes them.
    [Fact]
    public void A_driven_gear_that_nobody_makes_is_no_cure()
        => Assert.StartsWith(
            "speedometer correction factor ",
            Assert.Single(CheckCase.Find(new SpeedometerCheck(), InventedCar.Plain with { Speedometer = new("head", Dial, SpeedometerDrive.Gears(4, 15)) }).Cures), StringComparison.Ordinal);

    // 27 teeth behind a box of 0.9: 0.9 · 26.393/27 = 0.8798 is shown, so the box has to be 0.9/0.8798 = 1.0230 to 1.1308 times that, as without one.
    [Fact]
    public void A_correction_box_that_is_there_is_replaced_not_added_to()
    {
        var boxed = Find(InventedCar.Plain with { Speedometer = new("head", Dial, SpeedometerDrive.Gears(8, 27, correction: 0.9)) });
        var window = Assert.Single(boxed.Windows).Window;

        Assert.Equal(27 / 26.393, window.Low, 1e-4);
        Assert.Equal(Assert.Single(Find(27).Windows).Window.High, window.High, 1e-9);
        Assert.EndsWith("The odometer runs 12.0 % behind.", boxed.Says, StringComparison.Ordinal);
    }

    // A tyre known to 1 % cannot make 1.5 % high a sure thing.
    [Fact]
    public void A_tyre_that_is_not_known_well_enough_is_what_settles_it()
    {
        var finding = Find(26, InventedCar.Plain with { Tyres = InventedCar.Rolling(InventedCar.Of(2, 0.02, "tyre label", _ => "roll the tyres out")) });

        Assert.Equal((Verdict.Watch, Because.Uncertainty), (finding.Verdict, finding.Because));
        Assert.StartsWith("roll the tyres out", finding.SettledBy, StringComparison.Ordinal);
    }

    // 4 % at 95 %: 26 teeth (1.5 % high) may read low and 24 (10 %) too high by the law, 25 (5.6 %) is sure. At 16 % nothing is, and that is said.
    [Fact]
    public void Only_gears_that_would_surely_do_are_named()
    {
        Driveline Rolling(double u) => InventedCar.Plain with { Tyres = InventedCar.Rolling(InventedCar.Of(2, u, "tyre label", _ => "roll the tyres out")) };

        Assert.Equal("a driven gear of 25 teeth", Assert.Single(Find(28, Rolling(0.04)).Cures, cure => cure.StartsWith("a driven gear", StringComparison.Ordinal)).Split(':')[0]);

        var unsure = Find(30, Rolling(0.08)).Cures;
        Assert.All(unsure.SkipLast(1), cure => Assert.EndsWith(", though not surely", cure, StringComparison.Ordinal));
        Assert.EndsWith(", though not surely: roll the tyres out first", unsure[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void At_the_gearbox_the_transfer_case_is_in_the_chain()
    {
        var car = InventedCar.Plain with { TransferCase = new("case", InventedCar.Exactly(1.05), null) };
        var drive = SpeedometerDrive.Gears(8, 27, Pickup.GearboxOutput);

        Assert.Equal(26.393 * 1.05 / 27, Find(car with { Speedometer = new("head", Dial, drive) }).Value!.Value, 1e-4);
        Assert.Equal(Verdict.Open, Find(InventedCar.Plain with { TransferCase = new("case", null, null), Speedometer = new("head", Dial, drive) }).Verdict);
    }

    [Fact]
    public void At_a_wheel_no_axle_is_needed()
        => Assert.Equal(Verdict.Fits, Find(InventedCar.Plain with { RearAxle = null, Speedometer = new("head", InventedShaft.Known(2), SpeedometerDrive.Pulses(4.1, Pickup.Wheel)) }).Verdict);

    [Fact]
    public void What_is_missing_is_asked_for()
    {
        var finding = Find(new Driveline { Speedometer = new("head") });

        Assert.Equal(Verdict.Open, finding.Verdict);
        Assert.Equal(4, finding.Cures.Count);
    }

    [Fact]
    public void A_vehicle_without_one_says_nothing() => Assert.Empty(new SpeedometerCheck().Look(InventedCar.Plain, OwnersGoals.None));

    // 10.4 km over 10.0 km: the finding no longer asks for gears or teeth, and a driven gear is named from the one that is in: 20 · 1.04 = 20.8.
    [Fact]
    public void A_measured_distance_is_enough()
    {
        var finding = Find(DrivenWith(new Driveline { Speedometer = new("head", Drive: SpeedometerDrive.Gears(8, 20)) }, 1.04));

        Assert.Equal(Verdict.Fits, finding.Verdict);
        Assert.Equal("At a true 100 km/h the speedometer shows 104 km/h; wanted 100 to 114 km/h. The odometer runs 4.0 % ahead. So found by the run.", finding.Says);
        Assert.Equal(Verdict.Fits, Find(DrivenWith(new Driveline { Speedometer = new("head") }, 1.04)).Verdict);
    }

    // Made to read 1.5 % high by its gears, found 5 % low: the road is believed.
    [Fact]
    public void A_measured_distance_counts_before_gears_and_tyres()
    {
        var car = DrivenWith(InventedCar.Plain with { Speedometer = new("head", Dial, SpeedometerDrive.Gears(8, 26)) }, 0.95);

        Assert.Equal(Verdict.Clash, Find(car).Verdict);
        Assert.Contains(new MeasuredTwiceCheck().Look(car, OwnersGoals.None), finding => finding.Says.Contains("share of the true distance", StringComparison.Ordinal));
    }

    [Fact]
    public void A_distance_driven_with_another_axle_or_other_tyres_says_nothing()
    {
        var car = DrivenWith(InventedCar.Plain with { Speedometer = new("head", Dial, SpeedometerDrive.Gears(8, 26)) }, 0.95);

        Assert.Equal(Verdict.Fits, Find(car with { Tyres = InventedCar.Rolling(2.01) }).Verdict);
        Assert.Equal(Verdict.Fits, Find(car with { RearAxle = car.RearAxle! with { Ratio = InventedCar.Exactly(4.11) } }).Verdict);
        Assert.Equal(Verdict.Clash, Find(car with { Engine = null }).Verdict);
    }

    private static Driveline DrivenWith(Driveline car, double share) => car with { Driven = new(new(InventedCar.Of(share, 0.001, "run", _ => "drive further"), Source.Measured, "run"), car) };

    private static Known Dial => InventedShaft.Known(1000 / 1609.344);

    private static Finding Find(int teeth, Driveline? car = null) => Find((car ?? InventedCar.Plain) with { Speedometer = new("head", Dial, SpeedometerDrive.Gears(8, teeth)) });

    private static Finding Find(Driveline car) => Assert.Single(new SpeedometerCheck().Look(car, OwnersGoals.None));
}
