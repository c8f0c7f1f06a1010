using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
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
}
