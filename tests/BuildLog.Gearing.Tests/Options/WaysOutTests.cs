using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Options;

/// <summary>Which ways out are told and which of two alike.</summary>
/// <remarks>108 km/h on 2.00 m are 15 wheel turns a second: 4.10 turns the engine at 3690 rev/min, 3.28 at 2952, and 4.10 on 2.50 m at 2952 too.</remarks>
public sealed class WaysOutTests
{
    private static readonly CandidateParts Here = CandidateParts.InPlace(InventedCar.Plain);

    [Fact]
    public void Two_parts_that_do_exactly_the_same_stand_as_in_the_lists_and_of_one_list_the_first_is_told()
    {
        var parts = Here with
        {
            Axles = [.. Here.Axles, Axle("first", 3.28), Axle("second", 3.28)],
            Tyres = [.. Here.Tyres, new("tall", InventedCar.Rolling(2.50), Pool.Owned)],
        };

        Assert.Equal(["tall", "first"], Run("3000 rpm", parts).Select(option => option.Axle.IsInPlace ? option.Tyres.Name : option.Axle.Name));
    }

    // 4.15 turns 3735: as good as 3690 for who wants 3700 ± 5 %, and a part more.
    [Fact]
    public void A_part_that_is_better_in_nothing_is_no_way_out() => Assert.Empty(Run("3690 rpm", Here with { Axles = [.. Here.Axles, Axle("other", 4.15)] }));

    // 2.17 m turn 3401, which is nearer to 3000 ± 5 % than 3690, and clashes as that does.
    [Fact]
    public void Where_one_part_meets_the_wish_another_that_only_comes_nearer_is_no_way_out()
        => Assert.Equal(
            ["first"],
            Run("3000 rpm", Here with { Axles = [.. Here.Axles, Axle("first", 3.28)], Tyres = [.. Here.Tyres, new("tall", InventedCar.Rolling(2.17), Pool.Owned)] }).Select(option => option.Axle.Name));

    // 3.55 ± 0.1 (u) turns 3195 ± 90, half a u above 3150: it rather misses, and still comes before 3.80, which turns 3420 for sure and costs nothing.
    [Fact]
    public void What_is_unlikely_comes_before_what_surely_clashes()
    {
        var unlikely = new Candidate<Axle>("unlikely", InventedCar.Axle(InventedCar.Of(3.55, 0.1)), Pool.Offered) { Price = new(10_000, "EUR") };
        var options = Run("3000 rpm", Here with { Axles = [.. Here.Axles, unlikely, Axle("clash", 3.80)] });

        Assert.Equal([("unlikely", true, 0), ("clash", false, 1)], options.Select(option => (option.Axle.Name, option.IsUnlikely, (int)option.Score.Clash)));
    }

    [Theory]
    [InlineData(3, false)]
    [InlineData(3.001, true)]
    public void As_likely_as_not_is_not_unlikely(double value, bool unlikely)
    {
        var cruise = AllChecks.Look(InventedCar.Plain, new([InventedCar.Goal("108 km/h", "3000 rpm")])).First(finding => finding.Check == "cruise");
        var finding = cruise with { Verdict = Verdict.Watch, Value = InventedCar.Of(value, 0.1), Wanted = Window.AtMost(3), Reaches = null };

        Assert.Equal(unlikely, new Option(Here.Gearboxes[0], Here.Overdrives[0], Here.Axles[0], Here.Tyres[0], InventedCar.Plain, default) { Findings = [finding] }.IsUnlikely);
    }

    [Fact]
    public void One_part_of_four_outside_its_hunt_is_enough()
    {
        var option = new Option(Here.Gearboxes[0], Here.Overdrives[0], Here.Axles[0], Here.Tyres[0], InventedCar.Plain, default) { Findings = [] };

        Assert.False(option.IsOutsideTheHunt);
        Assert.All(
            [
                option with { Gearbox = option.Gearbox with { IsOutsideTheHunt = true } }, option with { Overdrive = option.Overdrive with { IsOutsideTheHunt = true } },
                option with { Axle = option.Axle with { IsOutsideTheHunt = true } }, option with { Tyres = option.Tyres with { IsOutsideTheHunt = true } },
            ],
            outside => Assert.True(outside.IsOutsideTheHunt));
    }

    [Fact]
    public void All_that_was_thrown_out_is_counted_together()
        => Assert.Equal(7, new SearchAnswer([], 0, 0, [new(4, "too high"), new(3, "too wide")], TimeSpan.Zero).ThrownOut);

    // What dominated once is asked first: of many thousands most are thrown out by the same few.
    [Fact]
    public void A_front_asks_first_what_threw_out_last()
    {
        var front = new Front<Combination>();
        front.Add(new(0, 0, 0, 1, 0, 0), new(0, 0, 0, 1));
        front.Add(new(0, 0, 0, 0, 1, 0), new(0, 0, 0, 2));
        front.Add(new(0, 0, 0, 0, 0, 1), new(0, 0, 0, 3));
        front.Add(new(0, 0, 0, 0, 1, 2), new(0, 0, 0, 4));

        Assert.Equal([2, 1, 3], front.Members.Select(member => member.What.Tyres));
    }

    private static IReadOnlyList<Option> Run(string wanted, CandidateParts parts)
        => OptionSearch.Run(InventedCar.Plain, new([InventedCar.Goal("108 km/h", wanted)]), parts, cancel: TestContext.Current.CancellationToken).Options;

    private static Candidate<Axle> Axle(string name, Measured ratio) => new(name, InventedCar.Axle(ratio), Pool.Owned);
}
