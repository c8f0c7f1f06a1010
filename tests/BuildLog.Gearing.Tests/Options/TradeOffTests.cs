using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using BuildLog.Gearing.Tyres;
using Xunit;

namespace BuildLog.Gearing.Tests.Options;

public sealed class TradeOffTests
{
    // 108 km/h on 2.00 m are 15 wheel turns a second; 45 to 55 rev/s will do.
    private static readonly OwnersGoals Goals = new([InventedCar.Goal("108 km/h", "3000 rpm", "10 %")]);

    [Theory]
    [InlineData(3.30, Verdict.Fits)]
    [InlineData(4.56, Verdict.Clash)]
    public void An_offered_axle_is_judged_where_it_would_go(double ratio, Verdict verdict)
    {
        var judged = Offers.Judge(InventedCar.Plain, Goals, new Candidate<Axle>("offer", InventedCar.Axle(ratio), Pool.Offered));

        Assert.Equal(verdict, judged.Findings.First(finding => finding.Check == "cruise").Verdict);
        if (verdict == Verdict.Clash) Assert.Equal(Verdict.Clash, judged.Verdict);
        if (verdict == Verdict.Clash) Assert.StartsWith("At 108 km/h in top (4) the engine turns 4104", judged.Reason, StringComparison.Ordinal);
    }

    // 61.5 rev/s in a direct top on 2.00 m: a gearbox of 0.8 or a unit of 0.8 makes 49.2, of 0.7 43.05; tyres of 2.40 m make 51.25, of 1.90 m 64.7.
    [Theory]
    [InlineData(0.8, Verdict.Fits)]
    [InlineData(0.7, Verdict.Clash)]
    public void So_are_a_gearbox_and_an_overdrive_unit(double ratio, Verdict verdict)
    {
        var box = new Candidate<Transmission>("offer", new("offer", [InventedCar.Gear("1", 3.5), InventedCar.Gear("2", ratio)]), Pool.Offered);
        var unit = new Candidate<Overdrive>("offer", new("offer", InventedCar.Exactly(ratio)), Pool.Offered);

        Assert.Equal(verdict, Offers.Judge(InventedCar.Plain, Goals, box).Findings.First(finding => finding.Check == "cruise").Verdict);
        Assert.Equal(verdict, Offers.Judge(InventedCar.Plain, Goals, unit).Findings.First(finding => finding.Check == "cruise").Verdict);
    }

    [Theory]
    [InlineData(2.40, Verdict.Fits)]
    [InlineData(1.90, Verdict.Clash)]
    public void So_is_a_set_of_tyres(double metres, Verdict verdict)
        => Assert.Equal(
            verdict,
            Offers.Judge(InventedCar.Plain, Goals, new Candidate<TyreSet>("offer", InventedCar.Rolling(metres), Pool.Offered)).Findings.First(finding => finding.Check == "cruise").Verdict);

    // What cannot be said of it yet is no reason to buy and none to leave it.
    [Fact]
    public void An_offer_of_which_nothing_is_known_is_a_watch()
    {
        var judged = Offers.Judge(InventedCar.Plain, Goals, new Candidate<Axle>("offer", new("offer", null), Pool.Offered));

        Assert.Equal((Verdict.Watch, Verdict.Open), (judged.Verdict, judged.Findings[0].Verdict));
        Assert.Equal(judged.Findings[0].Says, judged.Reason);
    }

    // 700 mm at most, 205/65R15: π · 0.7 · 0.971 = 2.1353 m. Tyres of one marking leave 1 % and the loaded factor 1.03 %: a tyre of 2.13 m may be higher.
    [Fact]
    public void A_limit_of_diameter_is_on_the_map_too()
    {
        var size = TyreSizeText.Read("205/65R15").OrRefuse();
        var car = InventedCar.Plain with { Tyres = new("tyres", InventedCar.Exactly(2.0), size) };
        var goals = OwnersGoals.None with { TyreDiameter = LengthLimit.ReadTyreDiameter("700 mm").OrRefuse() };
        Verdict At(double length) => FeasibleRegion.At(car, goals, 4, length);

        Assert.Equal([Verdict.Fits, Verdict.Watch, Verdict.Clash], [At(1.9), At(2.13), At(2.14)]);
        Assert.Equal(Verdict.Open, FeasibleRegion.At(car, OwnersGoals.None, 4, 2));
        Assert.Equal(Verdict.Open, FeasibleRegion.At(InventedCar.Plain, goals, 4, 2));
    }

    // 80 N·m at the gearbox's input clash with the 200 N·m of the engine, whichever axle is behind it; 3.30 turns the engine as wanted.
    [Fact]
    public void A_clash_that_stands_without_the_offer_is_not_its_doing()
    {
        var weak = InventedLoad.WithTorque(200) with { Transmission = InventedCar.Plain.Transmission! with { TorqueRating = InventedCar.Exactly(80) } };

        var judged = Offers.Judge(weak, Goals, new Candidate<Axle>("offer", InventedCar.Axle(3.30), Pool.Offered));

        Assert.NotEqual(Verdict.Clash, judged.Verdict);
        Assert.DoesNotContain(judged.Findings, finding => finding.Verdict == Verdict.Clash);
        Assert.Equal(["gearbox-torque"], judged.Standing.Select(standing => standing.Finding.Check));
    }

    // 15 wheel turns a second: 4.10 turns the engine at 61.5 rev/s, 4.30 at 64.5; 55 is the most that is wanted. The axle could meet it, so it is to blame although it clashed before.
    [Fact]
    public void A_wish_that_the_offer_could_meet_and_does_not_is_its_doing()
    {
        var judged = Offers.Judge(InventedCar.Plain, Goals, new Candidate<Axle>("offer", InventedCar.Axle(4.30), Pool.Offered));

        Assert.Equal((Verdict.Clash, "cruise"), (judged.Verdict, judged.Findings[0].Check));
        Assert.Empty(judged.Standing);
    }

    // Torque that peaks at 2000 rev/min wants a cruise of 1200 to 1900: the goal of 3000 quarrels with it, whichever axle makes it.
    [Fact]
    public void A_watch_that_quarrels_with_the_goal_is_not_the_offers_doing()
    {
        var car = InventedCar.Plain with { Engine = new("four") { Torque = InventedLoad.Curve((1000, 180), (2000, 200), (5000, 150)) } };
        var axle = InventedCar.Axle(3.30);
        Assert.Contains(AllChecks.Look(car with { RearAxle = axle }, Goals), finding => finding is { Check: "cruise-band", Verdict: Verdict.Watch });

        var judged = Offers.Judge(car, Goals, new Candidate<Axle>("offer", axle, Pool.Offered));

        Assert.DoesNotContain(judged.Findings, finding => finding.Check == "cruise-band");
        Assert.Equal(("cruise", Verdict.Fits), (judged.Goal!.Check, judged.Goal.Verdict));
        Assert.Null(judged.Worse);
        Assert.Equal(Verdict.Fits, judged.Verdict);
    }

    // Torque that peaks at 4000 wants 2400 to 3800 rev/min: 4.10 turns 3690, 2.50 turns 2250, and both meet a goal of 1500 to 4500.
    [Fact]
    public void What_is_newly_a_watch_is_its_doing()
    {
        var car = InventedCar.Plain with { Engine = new("four") { Torque = InventedLoad.Curve((1000, 180), (4000, 200), (5000, 150)) } };
        var goals = new OwnersGoals([InventedCar.Goal("108 km/h", "3000 rpm", "50 %")]);

        var judged = Offers.Judge(car, goals, new Candidate<Axle>("offer", InventedCar.Axle(2.50), Pool.Offered));

        Assert.Equal((Verdict.Fits, "cruise-band", Verdict.Watch), (judged.Goal!.Verdict, judged.Worse!.Check, judged.Verdict));
    }

    // By hand: n = 30 · axle/C. 3.0 on 2.0 m is 45 and fits; 4.0 on 2.0 is 60 and clashes; on 2.4 m 37.5 and 50.
    [Fact]
    public void The_map_of_axle_and_tyre_has_a_verdict_for_every_pair()
    {
        var map = FeasibleRegion.Of(InventedCar.Plain, Goals, new(3, 4), new(2, 2.4), 2, 2);

        Assert.Equal([3, 4], map.Axles);
        Assert.Equal([2, 2.4], map.Tyres);
        Assert.Equal([[Verdict.Fits, Verdict.Clash], [Verdict.Clash, Verdict.Fits]], map.Verdicts);
    }

    // By hand: 4.10 against 4.10 · 0.8; 15 · 4.1 = 61.5 rev/s against 49.2; 1000/60 · 2/4.1 m/s.
    [Fact]
    public void An_overdrive_beside_none()
    {
        var compared = OptionComparison.Of(
            Goals, new ComparedDriveline("now", InventedCar.Plain, "nothing"), new("overdrive", InventedCar.Plain with { Overdrive = new("unit", InventedCar.Exactly(0.8)) }));

        Assert.Equal(["now", "overdrive"], compared.Names);
        Assert.Equal(["nothing", null], compared.Costs);
        Same([4.10, 3.28], compared, "overall ratio in top");
        Same([61.5, 49.2], compared, "engine at 108 km/h");
        Same([1000 / 60.0 * 2 / 4.1, 1000 / 60.0 * 2 / 3.28], compared, "speed per 1000 rev/min in top");
        Same([14.35, 14.35], compared, "overall low ratio");
        Assert.All(compared.Figures.Single(row => row.What == "top speed").Values, Assert.Null);
        Assert.Equal(
            ["no engine is fitted: fit an engine", "the mass is not known: weigh the vehicle as it is driven, or enter the mass from its papers", "the drag area is not known: choose the kind of body", "the rolling resistance is not known: choose the kind of tyre"],
            compared.Figures.Single(row => row.What == "hill held at 108 km/h").Lacking);
        Assert.Empty(compared.Figures[0].Lacking);
        Assert.Equal(1, compared.Counts[0].Clash - compared.Counts[1].Clash);
    }

    // Only what one of them has, or what differs between them, has a row.
    [Fact]
    public void A_speedometer_of_one_and_tyres_that_differ_have_their_rows()
    {
        var (sized, dial) = (On("205/65R15 94V"), new BuildLog.Gearing.Speedometers.Speedometer("dial", InventedCar.Exactly(0.7), BuildLog.Gearing.Speedometers.SpeedometerDrive.Gears(8, 22)));
        var plain = OptionComparison.Of(Goals, new ComparedDriveline("now", sized), new("same tyres", sized with { RearAxle = InventedCar.Axle(3.3) }));
        var other = OptionComparison.Of(Goals, new ComparedDriveline("now", sized), new("other tyres", On("215/65R15 96H") with { Speedometer = dial }));

        Assert.DoesNotContain(plain.Figures, row => row.What is "speedometer shows, of the truth" or "tyre diameter" or "one tyre carries");
        Assert.Equal([null, 8 / 22.0 * 4.10 / 2 / 0.7], Row("speedometer shows, of the truth"), Near);
        Assert.Equal([0.381 + (2 * 0.65 * 0.205), 0.381 + (2 * 0.65 * 0.215)], Row("tyre diameter"), Near);
        Assert.Equal([240 / 3.6, 210 / 3.6], Row("tyres good for"), Near);
        Assert.Equal([670, 710], Row("one tyre carries"), Near);

        IEnumerable<double?> Row(string what) => other.Figures.Single(row => row.What == what).Values.Select(value => value?.Value);
        static bool Near(double? one, double? other) => one is null ? other is null : Math.Abs(one.Value - other!.Value) < 1e-6;
        static Driveline On(string size) => InventedCar.Plain with { Tyres = new("tyres", InventedCar.Exactly(2), TyreSizeText.Read(size).OrRefuse()) };
    }

    [Fact]
    public void Four_are_compared_and_five_are_not()
    {
        ComparedDriveline[] five = [.. Enumerable.Range(1, 5).Select(k => new ComparedDriveline($"{k}", InventedCar.Plain))];

        Assert.Equal(4, OptionComparison.Of(Goals, five[..4]).Names.Count);
        Assert.Equal("2 to 4 options are compared side by side, not 5.", Assert.Throws<RefusedException>(() => OptionComparison.Of(Goals, five)).Message);
    }

    // 3.5 · 4 is 14 and with the axle's low of 1.391 19.5. Tyres known to 5 % turn 60 rev/s at best known, and 45 to 55 are wanted; of two wishes the worse counts.
    [Fact]
    public void The_map_keeps_what_is_known_of_the_parts_and_says_the_worst()
    {
        var low = OwnersGoals.None with { OverallLow = OverallLowGoal.Read("17").OrRefuse() };
        var two = InventedCar.Plain with { RearAxle = InventedCar.Axle(4.10) with { LowStep = InventedCar.Exactly(1.391) } };
        var rough = InventedCar.Plain with { Tyres = InventedCar.Rolling(InventedCar.Of(2, 0.1)) };

        Assert.Equal((Verdict.Fits, Verdict.Clash), (FeasibleRegion.At(two, low, 4, 2), FeasibleRegion.At(InventedCar.Plain, low, 4, 2)));
        Assert.Equal((Verdict.Watch, Verdict.Fits), (FeasibleRegion.At(rough, Goals, 3.4, 2), FeasibleRegion.At(InventedCar.Plain, Goals, 3.4, 2)));
        Assert.Equal(Verdict.Clash, FeasibleRegion.At(InventedCar.Plain, Goals with { OverallLow = low.OverallLow }, 3.4, 2));
        Assert.Equal([3, 3.5, 4], FeasibleRegion.Of(InventedCar.Plain, Goals, new(3, 4), new(2, 2.4), 3, 2).Axles);
    }

    [Fact]
    public void One_alone_is_no_comparison()
        => Assert.Equal(
            "2 to 4 options are compared side by side, not 1.", Assert.Throws<RefusedException>(() => OptionComparison.Of(Goals, new ComparedDriveline("now", InventedCar.Plain))).Message);

    private static void Same(double[] expected, OptionComparison compared, string what)
    {
        var values = compared.Figures.Single(row => row.What == what).Values;
        Assert.Equal(expected.Length, values.Count);
        for (var k = 0; k < expected.Length; k++) Assert.Equal(expected[k], values[k]!.Value, 1e-9);
    }
}
