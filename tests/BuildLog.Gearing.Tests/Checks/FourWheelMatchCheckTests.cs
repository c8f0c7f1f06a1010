using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tyres;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>
/// Tyres of one set: 3.70 in front of 3.73 is 0.80 %, 4.10 in front of 4.00 is −2.5 %.
/// Source of the limit: a transfer case maker's manual; of a clutch pack, the trade press.
/// </remarks>
public sealed class FourWheelMatchCheckTests
{
    [Theory]
    [InlineData(3.70, 3.73, FrontDrive.ThroughShaft, Verdict.Fits)]
    [InlineData(4.10, 4.00, FrontDrive.ThroughShaft, Verdict.Clash)]
    [InlineData(4.10, 4.00, FrontDrive.Declutch, Verdict.Clash)]
    [InlineData(4.10, 4.00, FrontDrive.CentreDifferential, Verdict.Fits)]
    [InlineData(3.70, 3.73, FrontDrive.ClutchPack, Verdict.Watch)]
    public void By_the_kind_of_drive(double front, double rear, FrontDrive drive, Verdict verdict) => Assert.Equal(verdict, Find(front, rear, drive).Verdict);

    // Tyres of one set cancel in both formulas, so the crawl's limit counts. Within ±1.0 %: 4.00 · 0.99 and 4.00 · 1.01; behind a front axle that stays, 4.10 / 1.01 and 4.10 / 0.99;
    // each kept off by 0.566 of the last digit.
    [Fact]
    public void The_ratios_that_would_do_are_named_for_either_axle()
    {
        var finding = Find(4.10, 4.00, FrontDrive.ThroughShaft);

        Assert.Equal(["front axle ratio 3.97 to 4.03", "axle ratio 4.07 to 4.13"], finding.Cures);
        Assert.Equal("In a turn of the transfer case the rear wheels go 2.5 % further than the front ones at any speed; wanted -1 to 1 %.", finding.Says);
    }

    // Both axles counted to half a per cent; an end that is entered as it is named is known to half its last digit.
    [Theory]
    [InlineData("3.99")]
    [InlineData("4.01")]
    public void An_end_that_is_named_fits_when_it_is_typed(string typed)
    {
        var car = Car(4.10, 4.00, FrontDrive.ThroughShaft) with { RearAxle = InventedCar.Axle(InventedCar.Of(4.00, 0.01)), FrontAxle = InventedCar.Axle(InventedCar.Of(4.10, 0.01)) };
        Assert.Equal("front axle ratio 3.99 to 4.01", Assert.Single(new FourWheelMatchCheck().Look(car, OwnersGoals.None)).Cures[0]);

        var cured = car with { FrontAxle = InventedCar.Axle(QuotedRatio.ReadMeasured(typed, RatioRange.Axle, "front axle ratio").OrRefuse()) };
        Assert.Equal(Verdict.Fits, Assert.Single(new FourWheelMatchCheck().Look(cured, OwnersGoals.None)).Verdict);
    }

    [Fact]
    public void A_drive_nobody_named_fits_if_it_fits_the_strictest_and_is_asked_for_if_not()
    {
        Assert.Equal(Verdict.Fits, Find(3.70, 3.73, null).Verdict);
        Assert.Equal(Verdict.Open, Find(4.10, 4.00, null).Verdict);
    }

    // Roll-outs of 2.458 m at both ends, axles of 41/11: 0.0 %. By radii of 370 and 358 mm it would be 1 − 370/358 = −3.4 %, but a roll-out was done at walking pace.
    [Fact]
    public void Rolled_out_at_both_ends_the_roll_outs_tell_the_crawl_too()
    {
        var rear = InventedCar.Rolling(2.458) with { LoadedRadius = InventedShaft.Known(0.370) };
        var car = Car(41.0 / 11, 41.0 / 11, FrontDrive.Declutch) with { Tyres = rear with { FrontPair = InventedCar.Rolling(2.458) with { LoadedRadius = InventedShaft.Known(0.358) } } };
        var finding = Assert.Single(new FourWheelMatchCheck().Look(car, OwnersGoals.None));

        Assert.Equal((Verdict.Fits, 0.0), (finding.Verdict, finding.Value!.Value));
        Assert.EndsWith("than the front ones by the roll-outs, at walking pace; wanted -1.5 to 1.5 %.", finding.Says, StringComparison.Ordinal);
    }

    // 1 − 2.260/2.232 = −1.25 %: more than crawling allows, which the source has for loaded radii; 2.2 % is more than it allows at speed.
    [Theory]
    [InlineData(2.250, Verdict.Fits)]
    [InlineData(2.232, Verdict.Watch)]
    [InlineData(2.211, Verdict.Clash)]
    public void A_roll_out_is_held_against_the_crawl_and_condemned_by_the_limit_at_speed(double front, Verdict verdict)
    {
        var car = Car(3.73, 3.73, FrontDrive.ThroughShaft) with { Tyres = InventedCar.Rolling(2.260) with { FrontPair = InventedCar.Rolling(front) } };

        Assert.Equal(verdict, Assert.Single(new FourWheelMatchCheck().Look(car, OwnersGoals.None)).Verdict);
    }

    // 1.2 % of tyres of one set: within the limit at speed, and not within the crawl's.
    [Fact]
    public void Tyres_of_one_set_do_not_excuse_gears_that_wind_up_crawling() => Assert.Equal(Verdict.Clash, Find(3.73, 3.73 / 0.988, FrontDrive.ThroughShaft).Verdict);

    // Worked example H3: radii of 365 and 360 mm on equal ratios are 1.37 % crawling: too much for a through shaft, not for a declutch.
    [Theory]
    [InlineData(FrontDrive.ThroughShaft, Verdict.Watch)]
    [InlineData(FrontDrive.Declutch, Verdict.Fits)]
    public void Crawling_on_tyres_not_rolled_out_the_loaded_radii_may_warn(FrontDrive drive, Verdict verdict)
        => Assert.Equal([Verdict.Fits, verdict], new FourWheelMatchCheck().Look(Car(3.73, 3.73, drive) with { Tyres = Told(2.26, 0.360, Told(2.27, 0.365)) }, OwnersGoals.None).Select(finding => finding.Verdict));

    // 365 mm in front of 360 mm, alike at speed: crawling a front axle of 3.744 to 3.820 would do, at speed one of 3.674 to 3.786.
    [Fact]
    public void What_cures_the_crawl_keeps_the_match_at_speed()
    {
        var car = Car(3.73, 3.73, FrontDrive.ThroughShaft) with { Tyres = Told(2.26, 0.360, Told(2.26, 0.365)) };
        var crawling = new FourWheelMatchCheck().Look(car, OwnersGoals.None).Last();

        Assert.Equal((Verdict.Watch, 3.744, 3.786), (crawling.Verdict, Math.Round(crawling.Windows[0].Window.Low, 3), Math.Round(crawling.Windows[0].Window.High, 3)));
        Assert.Equal(["one size of tyre on all wheels", "front axle ratio 3.75 to 3.78", "axle ratio 3.69 to 3.71"], crawling.Cures);
        foreach (var ratio in new[] { 3.69, 3.71 })
            Assert.All(new FourWheelMatchCheck().Look(car with { RearAxle = InventedCar.Axle(ratio) }, OwnersGoals.None), finding => Assert.Equal(Verdict.Fits, finding.Verdict));
    }

    // 350 mm in front of 360 mm and gears of 3.73 in front of 3.80 are −1.0 % crawling, and 1.8 % at speed: what mends the one spoils the other.
    [Fact]
    public void Where_no_ratio_does_both_other_tyres_are_the_cure()
    {
        var car = Car(3.73, 3.80, FrontDrive.ThroughShaft) with { Tyres = Told(2.26, 0.360, Told(2.26, 0.350)) };

        Assert.StartsWith("tyres in front and behind that match", Assert.Single(new FourWheelMatchCheck().Look(car, OwnersGoals.None).First().Cures), StringComparison.Ordinal);
    }

    // One size and gears alike, rolled 2.20 m behind 2.26: 2.7 % is a matter of pressure, load or wear, and no axle is to be geared anew for it.
    [Fact]
    public void Tyres_of_one_size_are_cured_at_the_valve_and_not_in_the_axle()
    {
        TyreSet Rolled(double metres) => InventedCar.Rolling(metres) with { Size = TyreSizeText.Read("235/75R15").OrRefuse() };
        var finding = Assert.Single(new FourWheelMatchCheck().Look(Car(3.73, 3.73, FrontDrive.Declutch) with { Tyres = Rolled(2.20) with { FrontPair = Rolled(2.26) } }, OwnersGoals.None));

        Assert.Equal(Verdict.Clash, finding.Verdict);
        Assert.Equal(["tyres of one size, alike in pressure, load and wear: roll-outs in front and behind within 1.5 % of each other"], finding.Cures);
    }

    [Fact]
    public void Two_pairs_that_were_not_rolled_out_are_asked_for()
        => Assert.Equal(Verdict.Open, Assert.Single(new FourWheelMatchCheck().Look(
            Car(3.73, 3.73, FrontDrive.Declutch) with { Tyres = InventedCar.Rolling(2) with { FrontPair = new("front tyres", null, null) } }, OwnersGoals.None)).Verdict);

    [Fact]
    public void A_ratio_nobody_counted_is_asked_for()
        => Assert.Contains("front axle's turns", Assert.Single(Assert.Single(new FourWheelMatchCheck().Look(
            Car(3.73, 3.73, FrontDrive.Declutch) with { FrontAxle = new("front axle", null) }, OwnersGoals.None)).Cures), StringComparison.Ordinal);

    [Fact]
    public void A_vehicle_without_transfer_case_or_front_axle_says_nothing()
    {
        Assert.Empty(new FourWheelMatchCheck().Look(InventedCar.Plain, OwnersGoals.None));
        Assert.Empty(new FourWheelMatchCheck().Look(Car(3.73, 3.73, null) with { FrontAxle = null }, OwnersGoals.None));
    }

    private static TyreSet Told(double circumference, double loadedRadius, TyreSet? front = null)
        => new("tyres", CheckCase.Known(circumference), null) { LoadedRadius = InventedShaft.Known(loadedRadius), FrontPair = front };

    private static Driveline Car(double front, double rear, FrontDrive? drive) => InventedCar.Plain with
    {
        TransferCase = new TransferCase("case", InventedCar.Exactly(1), InventedCar.Exactly(2.5)) { FrontDrive = drive },
        FrontAxle = InventedCar.Axle(front),
        RearAxle = InventedCar.Axle(rear),
    };

    private static Finding Find(double front, double rear, FrontDrive? drive) => Assert.Single(new FourWheelMatchCheck().Look(Car(front, rear, drive), OwnersGoals.None));
}
