using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Options;

/// <remarks>108 km/h on 2.00 m are 15 wheel turns a second: 4.10 turns 3690 rev/min, 2500 ± 5 % leaves 2.64 to 2.92.</remarks>
public sealed class BothAxlesTests
{
    private static readonly OwnersGoals Goals = new([InventedCar.Goal("108 km/h", "2500 rpm")]);

    private static readonly Driveline Truck = InventedCar.Plain with
    {
        TransferCase = new TransferCase("case", InventedCar.Exactly(1), InventedCar.Exactly(2.5)) { FrontDrive = FrontDrive.Declutch },
        FrontAxle = InventedCar.Axle(4.10),
    };

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_way_out_of_a_four_wheel_drive_changes_the_gears_of_both_axles_and_counts_both(bool inFront)
    {
        var truck = Truck with { DrivesInFront = inFront };
        var here = CandidateParts.InPlace(truck);
        var parts = here with { Axles = [.. here.Axles, new("long", InventedCar.Axle(2.78), Pool.Offered) { Price = new(10_000, "EUR") }] };

        var option = Assert.Single(OptionSearch.Run(truck, Goals, parts, cancel: TestContext.Current.CancellationToken).Options);

        Assert.Equal((2.78, 2.78), (option.Driveline.FrontAxle!.Ratio!.Value.Value, option.Driveline.RearAxle!.Ratio!.Value.Value));
        Assert.Equal((2, null), (option.Changes, option.CostMinor));
        Assert.All(option.Findings.Where(finding => finding.Check is "cruise" or "four-wheel-match"), finding => Assert.Equal(Verdict.Fits, finding.Verdict));
    }

    // 4.05 in front of 4.10 is 1.2 %, and a shaft that is engaged by hand takes 2.
    [Fact]
    public void An_axle_that_matches_the_other_one_is_changed_alone()
    {
        var here = CandidateParts.InPlace(Truck);
        var parts = here with { Axles = [.. here.Axles, new("alike", InventedCar.Axle(4.05), Pool.Owned)] };

        var option = Assert.Single(OptionSearch.Run(Truck, Goals, parts, cancel: TestContext.Current.CancellationToken).Options);

        Assert.Equal((1, 0L, 4.10), (option.Changes, option.CostMinor!.Value, option.Driveline.FrontAxle!.Ratio!.Value.Value));
    }

    // The front axle's 4.10 would leave 4.02 to 4.18 alone, which no cruise wants; it is geared alike.
    [Fact]
    public void The_other_axle_does_not_hold_the_window_and_the_cure_names_both()
    {
        var axle = DrivelineWindows.OfAxle(Truck, Goals)!;
        var cruise = AllChecks.Look(Truck, Goals).First(finding => finding.Check == "cruise");

        Assert.Equal("axle ratio of both axles 2.64 to 2.91", axle.InWords());
        Assert.StartsWith("axle ratio of both axles 2.65", cruise.Cures[0], StringComparison.Ordinal);
    }

    [Fact]
    public void An_offered_axle_is_judged_with_the_other_one_geared_alike()
    {
        var judged = Offers.Judge(Truck, Goals, new Candidate<Axle>("offer", InventedCar.Axle(2.78), Pool.Offered));

        Assert.Equal((Verdict.Fits, Position.FrontAxle), (judged.Verdict, judged.GearedAlike!.Value));
        Assert.Null(Offers.Judge(InventedCar.Plain, Goals, new Candidate<Axle>("offer", InventedCar.Axle(2.78), Pool.Offered)).GearedAlike);
    }

    // A plan that names the driving axle alone is judged as a search judges it; who names both has his way.
    [Fact]
    public void Another_driving_axle_is_completed_by_its_like_unless_something_is_said_of_the_other()
    {
        var alone = Truck with { RearAxle = InventedCar.Axle(2.78) };

        Assert.Equal(2.78, BothAxles.Completed(Truck, alone).FrontAxle!.Ratio!.Value.Value);
        Assert.Equal(3.00, BothAxles.Completed(Truck, alone with { FrontAxle = InventedCar.Axle(3.00) }).FrontAxle!.Ratio!.Value.Value);
        Assert.Equal(4.10, BothAxles.Completed(Truck, Truck with { RearAxle = InventedCar.Axle(4.05) }).FrontAxle!.Ratio!.Value.Value);
        Assert.Equal(Truck, BothAxles.Completed(Truck, Truck));
    }

    // Front tyres of 2.20 m beside 2.00 m, neither rolled out, do not match at speed; the radii, which are alike, say that it crawls well enough.
    [Fact]
    public void Axles_match_only_where_nothing_says_that_they_do_not()
    {
        var told = new TyreSet("tyres", new(2.00, Source.OwnersWord), null) { LoadedRadius = InventedCar.Exactly(0.31) };
        var crawling = Truck with { Tyres = told with { FrontPair = told with { RollingCircumference = new(2.20, Source.OwnersWord) } } };

        Assert.Equal([Verdict.Clash, Verdict.Fits], AllChecks.Look(crawling, OwnersGoals.None).Where(finding => finding.Check == "four-wheel-match").Select(finding => finding.Verdict));
        Assert.False(BothAxles.Match(crawling));
        Assert.True(BothAxles.Match(Truck));
        Assert.False(BothAxles.Match(InventedCar.Plain));
    }

    // 4.05 behind 4.10 is 1.2 %, 2.78 far from it; neither is a matter of the cruise.
    [Theory]
    [InlineData(4.05, Verdict.Fits)]
    [InlineData(2.78, Verdict.Clash)]
    public void An_axle_for_the_other_end_is_judged_by_its_match(double ratio, Verdict verdict)
    {
        var judged = Offers.JudgeOther(Truck, OwnersGoals.None, new Candidate<Axle>("offer", InventedCar.Axle(ratio), Pool.Offered));

        Assert.Equal(verdict, judged.Findings.Single(finding => finding.Check == "four-wheel-match").Verdict);
        Assert.Equal((4.10, ratio), (judged.Driveline.RearAxle!.Ratio!.Value.Value, judged.Driveline.FrontAxle!.Ratio!.Value.Value));
        Assert.Equal(VerdictCounts.Of(AllChecks.Look(judged.Driveline, OwnersGoals.None)), judged.Whole);
    }
}
