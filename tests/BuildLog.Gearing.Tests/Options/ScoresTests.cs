using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Options;

/// <summary>What an option is ranked by, and which one stays.</summary>
public sealed class ScoresTests
{
    private static readonly OptionScore Even = new(1, 1, 1, 1, 1, 1);

    /// <summary>Each a little worse in one thing, the weightiest first: verdicts, then money, then work, then distance.</summary>
    private static readonly OptionScore[] Worse =
    [
        Even with { Clash = 2 }, Even with { Open = 2 }, Even with { Watch = 2 }, Even with { Cost = 2 }, Even with { Changes = 2 }, Even with { Distance = 2 },
    ];

    [Fact]
    public void Whatever_is_worse_in_one_thing_comes_after_and_is_dominated()
        => Assert.All(Worse, worse =>
        {
            Assert.True(Even < worse && Even <= worse && worse > Even && worse >= Even);
            Assert.False(worse < Even || worse <= Even || Even > worse || Even >= worse);
            Assert.True(Even.Dominates(worse));
            Assert.False(worse.Dominates(Even));
        });

    [Fact]
    public void A_weightier_matter_decides_before_a_lighter_one_and_neither_dominates()
    {
        for (var k = 1; k < Worse.Length; k++)
        {
            Assert.True(Worse[k] < Worse[k - 1]);
            Assert.False(Worse[k].Dominates(Worse[k - 1]) || Worse[k - 1].Dominates(Worse[k]));
        }
    }

    [Fact]
    public void Alike_in_everything_neither_is_before_the_other()
    {
        var same = Even with { };

        Assert.Equal(0, Even.CompareTo(same));
        Assert.True(Even <= same && Even >= same);
        Assert.False(Even < same || Even > same || Even.Dominates(same));
    }

    [Fact]
    public void Of_two_alike_the_first_in_the_lists_stays_in_whichever_order_they_come()
    {
        Combination first = new(0, 0, 0, 1), second = new(0, 0, 1, 0);
        Assert.Equal([first], Held(first, second));
        Assert.Equal([first], Held(second, first));

        static IEnumerable<Combination> Held(params Combination[] added)
        {
            var front = new Front<Combination>();
            foreach (var at in added) front.Add(Even, at);
            return front.Members.Select(member => member.What);
        }
    }

    [Fact]
    public void A_better_one_throws_out_all_it_dominates_and_a_worse_one_does_not_come_in()
    {
        var front = new Front<Combination>();
        front.Add(Even with { Cost = 2, Distance = 0 }, new(0, 0, 0, 1));
        front.Add(Even with { Clash = 2 }, new(0, 0, 0, 2));
        front.Add(Even with { Open = 2 }, new(0, 0, 0, 3));
        Assert.Single(front.Members, member => member.Score.Cost == 2);

        front.Add(Even, new(0, 0, 0, 4));
        Assert.Equal([1, 4], front.Members.Select(member => member.What.Tyres).Order());

        front.Add(Even with { Watch = 2 }, new(0, 0, 0, 5));
        Assert.Equal([1, 4], front.Members.Select(member => member.What.Tyres).Order());
        Assert.True(front.Beats(Even with { Watch = 2 }));
        Assert.False(front.Beats(Even));
    }

    [Fact]
    public void Combinations_stand_by_gearbox_then_overdrive_then_axle_then_tyres()
    {
        Combination[] rising = [new(0, 0, 0, 0), new(0, 0, 0, 9), new(0, 0, 1, 0), new(0, 1, 0, 0), new(1, 0, 0, 0)];

        foreach (var (before, after) in rising.Zip(rising.Skip(1)))
        {
            Assert.True(before < after && before <= after && after > before && after >= before);
            Assert.False(before > after || before >= after || after < before || after <= before);
        }

        Assert.True(rising[1] <= rising[1] with { } && rising[1] >= rising[1] with { } && !(rising[1] < rising[1] with { }) && !(rising[1] > rising[1] with { }));
    }

    // What is in place costs nothing and changes nothing; what nobody priced is not cheap.
    [Fact]
    public void A_part_costs_what_is_known_of_it()
    {
        var axle = InventedCar.Axle(3.08);
        Candidate<Axle> Part(Pool pool) => new("axle", axle, pool);

        Assert.Equal(0, (Part(Pool.Owned) with { IsInPlace = true, Price = new(500, "EUR") }).Cost("EUR"));
        Assert.Equal(0, Part(Pool.Owned).Cost("EUR"));
        Assert.Equal(500, (Part(Pool.Owned) with { Price = new(500, "EUR") }).Cost("EUR"));
        Assert.Equal(500, (Part(Pool.Offered) with { Price = new(500, "EUR") }).Cost("EUR"));
        Assert.Equal(double.PositiveInfinity, (Part(Pool.Offered) with { Price = new(500, "SEK") }).Cost("EUR"));
        Assert.Equal(double.PositiveInfinity, Part(Pool.Offered).Cost("EUR"));
        Assert.Equal(double.PositiveInfinity, Part(Pool.Listed).Cost(null));
        Assert.Equal(0, new Candidate<Overdrive>("no overdrive", null, Pool.Listed).Cost("EUR"));
    }

    [Fact]
    public void A_change_is_one_part_and_a_little_more_where_the_part_is_not_free()
    {
        Candidate<Axle> axle = new("axle", InventedCar.Axle(3.08), Pool.Owned);

        Assert.Equal(0, (axle with { IsInPlace = true, IsDoubtful = true }).Changes);
        Assert.Equal(1, axle.Changes);
        Assert.InRange((axle with { FittedTo = "Wren" }).Changes, 1.0001, 1.01);
        Assert.Equal((axle with { FittedTo = "Wren" }).Changes, (axle with { IsDoubtful = true }).Changes);
        Assert.True(axle.IsFree);
        Assert.False((axle with { IsDoubtful = true }).IsFree || (axle with { FittedTo = "Wren" }).IsFree);
    }

    [Fact]
    public void A_search_starts_from_what_is_in_place_and_counts_what_it_combines()
    {
        var here = CandidateParts.InPlace(InventedCar.Plain);
        var more = here with
        {
            Axles = [.. here.Axles, new("second", InventedCar.Axle(3.7), Pool.Offered) { Price = new(100, "SEK") }, new("third", InventedCar.Axle(3.5), Pool.Owned)],
            Tyres = [.. here.Tyres, new("others", InventedCar.Rolling(2.1), Pool.Offered) { Price = new(100, "EUR") }],
        };

        Assert.Equal((1L, 6L), (here.Count, more.Count));
        Assert.Equal((null, "SEK"), (here.Currency, more.Currency));
        Assert.Equal("EUR", (more with { Axles = here.Axles }).Currency);

        // One price in other money takes none of the others out of the comparison; the shop's own money is what it reckons in where anything costs that.
        var mostlyEuro = more with { Tyres = [.. more.Tyres, new("more", InventedCar.Rolling(2.0), Pool.Offered) { Price = new(200, "EUR") }] };
        Assert.Equal(("EUR", "SEK", "EUR"), (mostlyEuro.Currency, mostlyEuro.In("SEK").Currency, mostlyEuro.In("GBP").Currency));
        Assert.Equal("no overdrive", here.Overdrives[0].Name);
        Assert.All([here.Gearboxes[0].IsInPlace, here.Overdrives[0].IsInPlace, here.Axles[0].IsInPlace, here.Tyres[0].IsInPlace], Assert.True);
        Assert.Contains("No gearbox is fitted", Assert.Throws<RefusedException>(() => CandidateParts.InPlace(InventedCar.Plain with { Transmission = null })).Message, StringComparison.Ordinal);
        Assert.Contains("No axle is fitted", Assert.Throws<RefusedException>(() => CandidateParts.InPlace(InventedCar.Plain with { RearAxle = null })).Message, StringComparison.Ordinal);
        Assert.Contains("No set of tyres is fitted", Assert.Throws<RefusedException>(() => CandidateParts.InPlace(InventedCar.Plain with { Tyres = null })).Message, StringComparison.Ordinal);
    }

    // Two prices that are the same are two all the same.
    [Fact]
    public void Every_price_counts_for_the_commonest_money()
    {
        var here = CandidateParts.InPlace(InventedCar.Plain with { Overdrive = new("unit", InventedCar.Exactly(0.8)) });
        var priced = here with
        {
            Gearboxes = [here.Gearboxes[0] with { Price = new(100, "EUR") }],
            Overdrives = [here.Overdrives[0] with { Price = new(100, "EUR") }],
            Axles = [here.Axles[0] with { Price = new(200, "SEK") }],
        };

        Assert.Equal(("unit", "EUR"), (here.Overdrives[0].Name, priced.Currency));
        Assert.Equal("SEK", (priced with { Gearboxes = here.Gearboxes }).In("SEK").Currency);
        Assert.Equal("EUR", (priced with { Axles = [.. priced.Axles, here.Axles[0] with { Price = new(200, "SEK") }], Tyres = [here.Tyres[0] with { Price = new(100, "EUR") }] }).Currency);
    }

    // Of 40 rev/s: 44 and 36 are a tenth off; below an "at most" there is no distance. Of two cruises the furthest counts, and one that cannot be said is infinitely far.
    [Fact]
    public void The_distance_of_a_cruise_is_a_share_of_what_is_wanted()
    {
        var (about, atMost) = (InventedCar.Goal("110 km/h", "2400 rpm"), InventedCar.Goal("110 km/h", "2400 rpm", "at most"));

        Assert.Equal(0.1, SeparableChecks.Distance(44, about), 1e-12);
        Assert.Equal(0.1, SeparableChecks.Distance(36, about), 1e-12);
        Assert.Equal(0.1, SeparableChecks.Distance(44, atMost), 1e-12);
        Assert.Equal(0, SeparableChecks.Distance(36, atMost));

        // 108 km/h on 2.00 m through 4.10: 61.5 rev/s.
        Assert.Equal(61.5 / 41 - 1, SeparableChecks.Distance(InventedCar.Plain, new([InventedCar.Goal("108 km/h", "3690 rpm"), InventedCar.Goal("108 km/h", "2460 rpm")])), 1e-9);
        Assert.Equal(double.PositiveInfinity, SeparableChecks.Distance(InventedCar.Plain with { Tyres = null }, new([about])));
        Assert.Equal(0, SeparableChecks.Distance(InventedCar.Plain, OwnersGoals.None));
    }

    [Fact]
    public void Findings_are_counted_by_verdict()
    {
        var findings = AllChecks.Look(InventedTruck.Whole, InventedTruck.Goals);
        var counts = VerdictCounts.Of(findings);
        int Of(Verdict verdict) => findings.Count(finding => finding.Verdict == verdict);

        Assert.Equal((Of(Verdict.Clash), Of(Verdict.Open), Of(Verdict.Watch), Of(Verdict.Fits)), (counts.Clash, counts.Open, counts.Watch, counts.Fits));
        Assert.True(counts.Fits > 0);
    }
}
