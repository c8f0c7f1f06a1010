using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Speedometers;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using Xunit;

namespace BuildLog.Gearing.Tests.Options;

/// <summary>What is an offer's doing, and what stood already.</summary>
public sealed class OffersTests
{
    private static readonly OwnersGoals Goals = new([InventedCar.Goal("108 km/h", "3000 rpm", "10 %")]);

    private static readonly Driveline Truck = InventedCar.Plain with
    {
        TransferCase = new TransferCase("case", InventedCar.Exactly(1), InventedCar.Exactly(2.5)) { FrontDrive = FrontDrive.Declutch },
        FrontAxle = InventedCar.Axle(4.10),
    };

    [Fact]
    public void Of_several_goals_and_of_several_troubles_the_worst_is_told()
    {
        var goal = AllChecks.Look(InventedCar.Plain, Goals).First(finding => finding.Check == "cruise");
        var other = goal with { Source = "a maker's rating" };
        OfferJudged judged = new(
            Verdict.Watch, "",
            [goal with { Verdict = Verdict.Fits }, goal with { Verdict = Verdict.Clash }, other with { Verdict = Verdict.Fits }, other with { Verdict = Verdict.Watch }, other with { Verdict = Verdict.Clash }, other with { Verdict = Verdict.Open }],
            [])
        { Driveline = InventedCar.Plain, Whole = default };

        Assert.Equal((Verdict.Clash, Finding.OwnersGoal), (judged.Goal!.Verdict, judged.Goal.Source));
        Assert.Equal((Verdict.Clash, "a maker's rating"), (judged.Worse!.Verdict, judged.Worse.Source));
    }

    // 4.05 against 4.10 is 1.2 % and does; 2.78 against 4.10 does not, and without a transfer case nothing joins them. 2.78 and 2.79 turn 2500 rev/min at 108 km/h.
    [Fact]
    public void Two_axles_offered_apart_are_judged_where_they_match()
    {
        var judged = Pair(Truck, 2.78, 2.79)!;

        Assert.Equal((2.78, 2.79), (judged.Driveline.RearAxle!.Ratio!.Value.Value, judged.Driveline.FrontAxle!.Ratio!.Value.Value));
        Assert.Equal((Verdict.Fits, "cruise"), (judged.Goal!.Verdict, judged.Goal.Check));
        Assert.Null(Pair(Truck, 2.78, 4.10));
        Assert.Null(Pair(InventedCar.Plain, 2.78, 2.79));

        static OfferJudged? Pair(Driveline car, double driving, double other)
            => Offers.JudgePair(car, new([InventedCar.Goal("108 km/h", "2500 rpm")]), Axle(driving), Axle(other));
    }

    // 4.10 on 2.00 m turn a cable of 8 to 22 teeth 0.7455 times a metre: a dial that wants 0.5 shows 49 % too much, one that wants 1.2 shows 38 % too little. Another axle is no cure of
    // the dial, but it moves it.
    [Theory]
    [InlineData(0.5, 4.30, true)]
    [InlineData(0.5, 3.30, false)]
    [InlineData(0.5, 4.10, false)]
    [InlineData(1.2, 3.30, true)]
    [InlineData(1.2, 4.30, false)]
    public void A_clash_that_stood_may_be_taken_further_out(double wants, double ratio, bool isFurtherOut)
    {
        var car = InventedCar.Plain with { Speedometer = new("dial", InventedCar.Exactly(wants), SpeedometerDrive.Gears(8, 22)) };

        var standing = Assert.Single(Offers.Judge(car, Goals, Axle(ratio)).Standing, standing => standing.Finding.Check == "speedometer");

        Assert.Equal(isFurtherOut, standing.IsFurtherOut);
    }

    // 200 N·m are too much for a box of 80 N·m and for one of 90: no number of it cures that, but the sentence is about it and says something new. One of 80 N·m says what stood already.
    [Theory]
    [InlineData(90, true)]
    [InlineData(80, false)]
    public void A_clash_without_a_number_to_cure_is_its_doing_where_it_says_something_new(double rating, bool isItsDoing)
    {
        var box = InventedCar.Plain.Transmission! with { TorqueRating = InventedCar.Exactly(80) };
        var offer = box with { TorqueRating = InventedCar.Exactly(rating), Gears = [.. box.Gears.SkipLast(1), InventedCar.Gear("4", 0.8)] };

        var judged = Offers.Judge(InventedLoad.Car with { Transmission = box }, Goals, new Candidate<Transmission>("offer", offer, Pool.Offered));

        Assert.Equal(isItsDoing, judged.Findings.Any(finding => finding.Check == "gearbox-torque"));
        Assert.Equal(!isItsDoing, judged.Standing.Any(standing => standing.Finding.Check == "gearbox-torque"));
    }

    // By their circumferences 4.05 and 4.10 match; by the loaded radii of 300 and 312 mm the front wheels run ahead by 2.7 %.
    [Fact]
    public void An_axle_that_matches_in_one_way_and_not_in_another_is_geared_alike()
    {
        var (rear, front) = (Set(0.312), Set(0.300));

        Assert.Null(BothAxles.Alike(Truck with { Tyres = rear with { FrontPair = rear with { Name = "front" } } }, InventedCar.Axle(4.05)));
        Assert.Equal(4.05, BothAxles.Alike(Truck with { Tyres = rear with { FrontPair = front } }, InventedCar.Axle(4.05))!.Ratio!.Value.Value);

        static TyreSet Set(double radius) => new("set", new(2.0, Source.MakersData), null) { LoadedRadius = InventedCar.Exactly(radius) };
    }

    private static Candidate<Axle> Axle(double ratio) => new("offer", InventedCar.Axle(ratio), Pool.Offered);
}
