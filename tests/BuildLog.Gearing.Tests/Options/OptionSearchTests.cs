using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Speedometers;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using BuildLog.Gearing.Tyres;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Options;

public sealed class OptionSearchTests
{
    private static readonly OwnersGoals Goals = new([InventedCar.Goal("110 km/h", "2400 rpm")])
    {
        OverallLow = OverallLowGoal.Read("11").OrRefuse(),
        TyreDiameter = LengthLimit.ReadTyreDiameter("700 mm").OrRefuse(),
    };

    // The oracle: every combination through the public checks one by one, and every pair of options compared.
    [Fact]
    public void The_front_is_the_plain_loops_on_random_shops()
        => Gen.Int[1, 100_000].Sample(
            seed =>
            {
                var parts = Shop(seed, 3, 2, 7, 9);
                var search = new SeparableSearch(InventedCar.Plain, Goals, parts);
                var plain = All(parts).Select(at => (Score: search.Plain(at), At: at)).ToList();
                var expected = plain.Where(option => !plain.Any(other => other.Score.Dominates(option.Score))).Select(option => option.Score).Distinct();

                var found = search.Run(null, 2, CancellationToken.None).Members.Select(member => member.Score).ToList();

                Assert.Equal(Words(expected), Words(found));
            },
            iter: 50);

    // As above on a car with engine and load, so that top speed, hill and hill start have their say; the wishes lie where the shops' parts reach over them.
    [Fact]
    public void The_front_is_the_plain_loops_where_pull_is_wanted_too()
        => Gen.Int[1, 100_000].Sample(
            seed =>
            {
                var random = new Random(seed);
                var car = InventedLoad.WithTorque(random.Next(120, 260)) with { Tyres = InventedCar.Rolling(2) };
                var goals = Goals with
                {
                    TopSpeed = TopSpeedGoal.Read(FormattableString.Invariant($"{random.Next(100, 190)} km/h")).OrRefuse(),
                    Hill = random.Next(3) == 0 ? null : HillGoal.Read(FormattableString.Invariant($"{random.Next(1, 12)} %"), "90 km/h").OrRefuse(),
                    HillStart = HillStartGoal.Read(FormattableString.Invariant($"{random.Next(15, 45)} %")).OrRefuse(),
                };
                var parts = Shop(seed, 2, 1, 6, 8);
                var search = new SeparableSearch(car, goals, parts);
                var plain = All(parts).Select(search.Plain).ToList();
                var expected = plain.Where(score => !plain.Any(other => other.Dominates(score)));

                Assert.Equal(Words(expected), Words(search.Run(null, 2, CancellationToken.None).Members.Select(member => member.Score)));
            },
            iter: 25);

    // As above with a speedometer that is driven from the propshaft or a wheel, of which too little is known, or that was held against a measured distance.
    [Fact]
    public void The_front_is_the_plain_loops_where_a_speedometer_has_its_say_too()
        => Gen.Int[1, 100_000].Sample(
            seed =>
            {
                var random = new Random(seed);
                var drive = SpeedometerDrive.Gears(random.Next(7, 11), random.Next(18, 26), random.Next(2) == 0 ? Pickup.Propshaft : Pickup.Wheel);
                var car = InventedCar.Plain with
                {
                    Speedometer = random.Next(4) == 0
                        ? new("dial", null, drive)
                        : new("dial", InventedCar.Exactly(InventedCar.Of(0.7, 0.005)), drive),
                };
                if (random.Next(3) == 0) car = car with { Driven = new(InventedCar.Exactly(InventedCar.Of(0.97 + (0.2 * random.NextDouble()), 0.01)), car) };
                var parts = Shop(seed, 2, 1, 7, 9);
                var search = new SeparableSearch(car, Goals, parts);
                var plain = All(parts).Select(search.Plain).ToList();
                var expected = plain.Where(score => !plain.Any(other => other.Dominates(score)));

                Assert.Equal(Words(expected), Words(search.Run(null, 2, CancellationToken.None).Members.Select(member => member.Score)));
            },
            iter: 50);

    // By hand: 200 N·m · 0.95 · π · i on 2.00 m, less 136 N of drag at 60 km/h, on 1500 kg: 15.7 %, 14.9 % and 20.2 % less 1.4 % rolling. Only 5.2 holds 17 %,
    // although it is the furthest from the cruise.
    [Fact]
    public void An_axle_that_only_the_hill_favours_is_kept()
    {
        var here = CandidateParts.InPlace(InventedLoad.Car);
        var parts = here with { Axles = [.. here.Axles, Candidate("short", 5.2), Candidate("nearly", 3.9)] };
        var goals = new OwnersGoals([InventedCar.Goal("110 km/h", "2400 rpm")]) { Hill = HillGoal.Read("17 %", "60 km/h").OrRefuse() };

        var answer = OptionSearch.Run(InventedLoad.Car, goals, parts, cancel: TestContext.Current.CancellationToken);

        Assert.Contains(answer.Options, option => option.Axle.Name == "short" && option.Findings.Any(finding => finding is { Check: "hill", Verdict: BuildLog.Gearing.Checks.Verdict.Fits }));
    }

    [Fact]
    public void No_option_dominates_another()
    {
        var answer = Run(Goals, Shop(7, 3, 2, 30, 40));

        Assert.NotEmpty(answer.Options);
        Assert.All(answer.Options, option => Assert.DoesNotContain(answer.Options, other => other.Score.Dominates(option.Score)));
        Assert.Equal(answer.Options.Select(option => option.Score).Order(), answer.Options.Select(option => option.Score));
    }

    // By hand: at 110 km/h on 2.00 m the wheels turn 15.28 times a second; 40 rev/s want an axle of 2.618: the 2.62 one is nearest and fits.
    [Fact]
    public void An_axle_on_the_shelf_that_meets_the_goal_comes_first()
    {
        var here = CandidateParts.InPlace(InventedCar.Plain);
        var parts = here with { Axles = [.. here.Axles, Candidate("shelf 2.62", 2.62), Candidate("shelf 3.08", 3.08)] };

        var answer = Run(new([Goals.Cruise[0]]), parts);

        var best = Assert.Single(answer.Options);
        Assert.Equal("shelf 2.62", best.Axle.Name);
        Assert.Equal((1, 0L), (best.Changes, best.CostMinor));
        Assert.Equal(1, best.Robustness);
        Assert.Equal(3, answer.Tried);
    }

    // 2.62 is a hair nearer to the 2.618 that is wanted, but it serves another vehicle, or lies there with a cracked housing.
    [Theory]
    [InlineData("Wren", false)]
    [InlineData(null, true)]
    public void A_free_part_stays_before_one_of_the_same_effect_that_is_not_free(string? fittedTo, bool isDoubtful)
    {
        var here = CandidateParts.InPlace(InventedCar.Plain);
        var parts = here with { Axles = [.. here.Axles, Candidate("not free", 2.62) with { FittedTo = fittedTo, IsDoubtful = isDoubtful }, Candidate("free", 2.63)] };

        var answer = Run(new([Goals.Cruise[0]]), parts);

        Assert.Equal(["free", "not free"], answer.Options.Select(option => option.Axle.Name));
        Assert.All(answer.Options, option => Assert.Equal(1, option.Changes));
    }

    // Two of three tyre sizes stand higher than 700 mm; each would have been combined with two axles.
    [Fact]
    public void What_is_thrown_out_is_counted_with_its_reason()
    {
        var here = CandidateParts.InPlace(InventedCar.Plain);
        var parts = here with { Axles = [.. here.Axles, Candidate("other", 3.08)], Tyres = [.. here.Tyres, Tyre("195/65R15"), Tyre("235/85R16"), Tyre("285/75R16")] };

        var answer = Run(Goals, parts);

        var thrown = Assert.Single(answer.Exclusions);
        Assert.Equal("4 thrown out: Tyre diameter over the limit", thrown.InWords);
        Assert.Equal(4, answer.Tried);
    }

    [Fact]
    public void An_empty_list_is_a_sentence()
    {
        var refused = Assert.Throws<RefusedException>(() => Run(Goals, CandidateParts.InPlace(InventedCar.Plain) with { Axles = [] }));

        Assert.Equal("There is no axle to choose from.", refused.Message);
    }

    [Fact]
    public void A_search_says_how_far_it_is_and_ends_where_it_is_called_off()
    {
        using var cancel = new CancellationTokenSource();
        var said = new List<double>();
        var progress = new Halfway(share =>
        {
            said.Add(share);
            if (share > 0.5) cancel.Cancel();
        });

        Assert.Throws<OperationCanceledException>(() => OptionSearch.Run(InventedCar.Plain, Goals, Shop(5, 20, 4, 60, 5), progress, cores: 1, cancel.Token));

        Assert.Equal(said.Order(), said);
        Assert.InRange(said[^1], 0.5, 0.99);
    }

    private sealed class Halfway(Action<double> hear) : IProgress<double>
    {
        public void Report(double value) => hear(value);
    }

    [Fact]
    public void A_search_can_be_called_off()
    {
        using var cancel = new CancellationTokenSource();
        cancel.Cancel();

        Assert.Throws<OperationCanceledException>(() => OptionSearch.Run(InventedCar.Plain, Goals, Shop(1, 2, 1, 3, 3), cancel: cancel.Token));
    }

    private static SearchAnswer Run(OwnersGoals goals, CandidateParts parts)
        => OptionSearch.Run(InventedCar.Plain, goals, parts, cancel: TestContext.Current.CancellationToken);

    private static IEnumerable<Combination> All(CandidateParts parts)
        => from box in Enumerable.Range(0, parts.Gearboxes.Count)
           from overdrive in Enumerable.Range(0, parts.Overdrives.Count)
           from axle in Enumerable.Range(0, parts.Axles.Count)
           from tyres in Enumerable.Range(0, parts.Tyres.Count)
           select new Combination(box, overdrive, axle, tyres);

    // Distances of the two routes differ in the last bits.
    private static List<string> Words(IEnumerable<OptionScore> scores)
        => [.. scores.Select(score => FormattableString.Invariant($"{score.Clash} {score.Open} {score.Watch} {score.Cost} {score.Changes} {score.Distance:0.00000000}")).Distinct().Order(StringComparer.Ordinal)];

    private static CandidateParts Shop(int seed, int boxes, int overdrives, int axles, int tyres)
    {
        var random = new Random(seed);
        Measured About(double low, double high, double most) => random.Next(3) switch
        {
            0 => Math.Round(low + (random.NextDouble() * (high - low)), 2),
            1 => InventedCar.Of(low + (random.NextDouble() * (high - low)), random.NextDouble() * most),
            _ => Measured.From(low + (random.NextDouble() * (high - low)), new Input("count", random.NextDouble() * most, new Evidence("count"), random.Next(2, 9))),
        };
        Price? Price() => random.Next(2) == 0 ? null : new(random.Next(1, 500) * 100, "EUR");

        var here = CandidateParts.InPlace(InventedCar.Plain);
        return new(
            [.. here.Gearboxes, .. Enumerable.Range(1, boxes).Select(k => new Candidate<Transmission>($"box {k}", new($"box {k}", [InventedCar.Gear("1", About(2.5, 4, 0.01)), InventedCar.Gear("2", About(0.6, 1.2, 0.01))]), Pool.Offered) { Price = Price() })],
            [.. here.Overdrives, .. Enumerable.Range(1, overdrives).Select(k => new Candidate<Overdrive>($"overdrive {k}", new($"overdrive {k}", InventedCar.Exactly(About(0.68, 0.85, 0.005))), Pool.Offered) { Price = Price() })],
            [.. here.Axles, .. Enumerable.Range(1, axles).Select(k => new Candidate<Axle>($"axle {k}", InventedCar.Axle(About(2.3, 5, 0.05)), Pool.Owned) { Price = Price() })],
            [.. here.Tyres, .. Enumerable.Range(1, tyres).Select(k => new Candidate<TyreSet>($"tyres {k}", InventedCar.Rolling(About(1.7, 2.4, 0.03)), Pool.Listed) { Price = Price() })]);
    }

    private static Candidate<Axle> Candidate(string name, double ratio) => new(name, InventedCar.Axle(ratio), Pool.Owned);

    private static Candidate<TyreSet> Tyre(string size)
    {
        var read = TyreSizeText.Read(size).OrRefuse();
        return new(size, new(size, new(read.RollingCircumference, Source.MakersData), read), Pool.Listed);
    }
}
