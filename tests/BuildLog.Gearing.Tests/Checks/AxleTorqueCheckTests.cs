using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

public sealed class AxleTorqueCheckTests
{
    // By hand: low gear 200 · 3.5 · 4.10 · 0.85 · 0.95 = 2317.5 N·m; wheel slip 0.80 · 750 · 9.80665 · 2.00/2π = 1872.9 N·m: the tyres give way first.
    [Theory]
    [InlineData(2000, Source.MakersData, Verdict.Fits)]
    [InlineData(1500, Source.MakersData, Verdict.Clash)]
    [InlineData(1500, Source.OwnersWord, Verdict.Watch)]
    public void The_smaller_of_the_two_meets_the_rating(double rating, Source source, Verdict verdict)
    {
        var finding = Assert.Single(Look(Car(CheckCase.Known(rating, source))));

        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(1872.9, finding.Value!.Value, 0.1);
        Assert.Contains("the tyres hold", finding.Says, StringComparison.Ordinal);
    }

    // Nobody said more of the road: 0.80 ± 0.098 make 1873 ± 229 N·m, as on the hill it starts on.
    [Theory]
    [InlineData(2200, Verdict.Fits)]
    [InlineData(2000, Verdict.Watch)]
    [InlineData(1600, Verdict.Clash)]
    public void The_grip_is_assumed_and_all_of_it_counts(double rating, Verdict verdict)
    {
        var car = Car(CheckCase.Known(rating)) with { Load = InventedLoad.Exact with { Grip = DryRoad.Grip } };
        var finding = Assert.Single(Look(car));

        Assert.Equal(verdict, finding.Verdict);
        Assert.Contains(" Assumed: a grip of 0.80 ± 0.10 (dry road).", finding.Says, StringComparison.Ordinal);
    }

    // 620 kg behind, a centre of gravity 550 mm up, a wheelbase of 2600 mm, r 298.4 mm: 0.80 · 9.80665 · 620 · 0.2984 = 1451 N·m at rest, over 1 − 0.8 · 0.55/2.6 1747 N·m under pull.
    [Fact]
    public void The_load_that_the_pull_moves_to_the_rear_is_in_it_or_said_not_to_be()
    {
        var car = Car(CheckCase.Known(1600)) with { AxleMasses = new(InventedCar.Exactly(820), InventedCar.Exactly(620)), Tyres = InventedCar.Rolling(0.2984 * 2 * Math.PI) };
        var known = Assert.Single(Look(car with { Load = InventedLoad.Exact with { GravityHeight = InventedCar.Exactly(0.55), Wheelbase = InventedCar.Exactly(2.6) } }));
        var unknown = Assert.Single(Look(car));

        Assert.Equal((Verdict.Clash, 1747, Verdict.Fits, 1451), (known.Verdict, Math.Round(known.Value!.Value), unknown.Verdict, Math.Round(unknown.Value!.Value)));
        Assert.DoesNotContain("is not in it", known.Says, StringComparison.Ordinal);
        Assert.EndsWith(" The load that moves to the rear under pull is not in it: enter the height of the centre of gravity and the wheelbase.", unknown.Says, StringComparison.Ordinal);
    }

    // 100 · 6.0 · 0.85 · 4.10 · 0.95 = 1986 N·m in reverse, of which the tyres hold 1873; first makes 1159.
    [Fact]
    public void Reverse_counts_where_it_asks_more_than_first()
    {
        var car = Car(CheckCase.Known(1500)) with { Engine = InventedLoad.WithTorque(100).Engine };
        var finding = Assert.Single(Look(car with { Transmission = car.Transmission! with { Reverse = CheckCase.Known(6.0) } }));

        Assert.Equal((Verdict.Clash, 1872.9), (finding.Verdict, Math.Round(finding.Value!.Value, 1)));
        Assert.StartsWith("At the wheels in reverse the tyres hold", finding.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void A_weak_engine_never_gets_to_the_slip()
    {
        var finding = Assert.Single(Look(Car(CheckCase.Known(1000)) with { Engine = InventedLoad.WithTorque(100).Engine }));

        Assert.Equal(1158.7, finding.Value!.Value, 0.1);
        Assert.Contains("low gear makes", finding.Says, StringComparison.Ordinal);
        Assert.Equal("an axle rated for 1159 N·m or more at the wheels", Assert.Single(finding.Cures));
    }

    // One of the two is an upper bound: it can pass alone, not fail alone.
    [Fact]
    public void One_of_the_two_alone_may_pass_and_else_asks_for_the_other()
    {
        var unweighed = Car(CheckCase.Known(2400)) with { Load = null };

        Assert.Equal(Verdict.Fits, Assert.Single(Look(unweighed)).Verdict);
        var open = Assert.Single(Look(Car(CheckCase.Known(2000)) with { Load = null }));
        Assert.Equal(Verdict.Open, open.Verdict);
        Assert.Contains("weigh the axles one by one", open.Cures);
        Assert.Contains("fit an engine", Assert.Single(Look(Car(CheckCase.Known(1500)) with { Engine = null })).Cures);
    }

    // Through a transfer case of 2.5, both axles: low gear is 2317.5 · 2.5 · 0.95; slip at half the mass ± 15 % is the same 1872.9.
    [Fact]
    public void With_a_transfer_case_the_front_axle_is_judged_too()
    {
        var car = Car(CheckCase.Known(3000)) with
        {
            TransferCase = new("case", InventedCar.Exactly(1), InventedCar.Exactly(2.5)),
            FrontAxle = new("front", InventedCar.Exactly(4.10)) { TorqueRating = CheckCase.Known(1700) },
        };
        var front = Look(car)[1];

        Assert.Equal((Verdict.Watch, Because.Uncertainty), (front.Verdict, front.Because));
        Assert.StartsWith("weigh the axles one by one", front.SettledBy, StringComparison.Ordinal);
        Assert.Single(Look(car with { TransferCase = null }));
    }

    // Low gear is 2317.5 · 2.5 · 0.95 and may not be asked; the slip it would come to lacks a circumference of its own.
    [Fact]
    public void A_front_axle_lacks_its_own_tyres_circumference()
    {
        var car = Car(CheckCase.Known(9000)) with
        {
            TransferCase = new("case", InventedCar.Exactly(1), InventedCar.Exactly(2.5)),
            FrontAxle = new("front", InventedCar.Exactly(4.10)) { TorqueRating = CheckCase.Known(1700) },
        };

        Assert.Equal(["roll the front tyres out, or enter their size"], Look(car with { Tyres = car.Tyres! with { FrontPair = new("narrow", null, null) } })[1].Cures);
    }

    [Fact]
    public void Without_a_rating_there_is_nothing_to_judge() => Assert.Empty(Look(InventedLoad.Car));

    private static Driveline Car(Known rating) => InventedLoad.Car with { RearAxle = new("axle", InventedCar.Exactly(4.10)) { TorqueRating = rating } };

    private static IReadOnlyList<Finding> Look(Driveline car) => [.. new AxleTorqueCheck().Look(car, CheckCase.NoGoals)];
}
