using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using BuildLog.Gearing.Tyres;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>S is 180 km/h. The rule 1.01 v + 6.5 asks for 180 at 171.8 km/h.</remarks>
public sealed class TyreSpeedCheckTests
{
    // What is only wanted is what it reaches at least: nobody knows that it fits.
    [Theory]
    [InlineData("170 km/h", Verdict.Open)]
    [InlineData("175 km/h", Verdict.Watch)]
    [InlineData("185 km/h", Verdict.Clash)]
    public void The_symbol_against_the_top_speed(string top, Verdict verdict) => Assert.Equal(verdict, Find("205/65R15 94S", top).Verdict);

    // P is 150: (150 − 3.5)/1.03 = 142.2 km/h. Q is 160: (160 − 6.5)/1.01 = 151.98, T 190: 181.7.
    [Theory]
    [InlineData("205/65R15 94P", "142 km/h", Verdict.Open)]
    [InlineData("205/65R15 94P", "143 km/h", Verdict.Watch)]
    [InlineData("205/65R15 94Q", "151 km/h", Verdict.Open)]
    [InlineData("205/65R15 94Q", "153 km/h", Verdict.Watch)]
    [InlineData("205/65R15 94T", "181 km/h", Verdict.Open)]
    [InlineData("205/65R15 94T", "182 km/h", Verdict.Watch)]
    public void The_usual_margin_has_two_branches(string size, string top, Verdict verdict) => Assert.Equal(verdict, Find(size, top).Verdict);

    // 5000 rev/min end it at 146 km/h, whatever is wanted.
    [Theory]
    [InlineData("225/45ZR17", "80 km/h")]
    [InlineData("205/70VR15", "80 km/h")]
    [InlineData("225/45ZR17 (94Y)", "80 km/h")]
    public void A_marking_of_more_than_a_speed_fits_below_it(string size, string top)
    {
        var finding = Reaching(size, top, 5000);

        Assert.Equal(Verdict.Fits, finding.Verdict);
        Assert.StartsWith("The tyres are made for more than ", finding.Says, StringComparison.Ordinal);
    }

    // 240 km/h by the gears: 5000 rev/min is 146 km/h in top 1.00, 250 km/h in 0.585.
    [Theory]
    [InlineData("225/45ZR17", 0.62, Verdict.Fits)]
    [InlineData("225/45ZR17", 0.585, Verdict.Open)]
    [InlineData("225/45ZR17 94V", 0.585, Verdict.Clash)]
    [InlineData("225/45ZR17 (94Y)", 0.585, Verdict.Fits)]
    [InlineData("225/45ZR17 (94Y)", 0.47, Verdict.Open)]
    [InlineData("225/45ZR17 94Y", 0.47, Verdict.Clash)]
    public void Above_the_speed_it_is_made_for_more_than_its_maker_is_asked(string size, double top, Verdict verdict)
        => Assert.Equal(verdict, Geared(size, top).Verdict);

    [Fact]
    public void What_would_do_is_said_beside_the_makers_word()
    {
        Assert.Equal(["ask the tyre maker what speed they are made for; W or faster would do"], Geared("225/45ZR17", 0.585).Cures);
        Assert.Equal(["tyres of speed symbol (Y)"], Geared("225/45ZR17 94Y", 0.47).Cures);
        Assert.Equal(["ask the tyre maker what speed they are made for"], Geared("225/45ZR17 (94Y)", 0.47).Cures);
        Assert.Contains("the tyres' marking says only more than 240 km/h", Geared("225/45ZR17", 0.585).Says, StringComparison.Ordinal);
    }

    // V is 240 km/h and no more; ZR of the other axle is more than that.
    [Fact]
    public void Of_V_and_ZR_V_is_the_slower()
    {
        var car = Fast("225/45ZR17", 0.585);
        var finding = Assert.Single(new TyreSpeedCheck().Look(car with { Tyres = car.Tyres! with { FrontPair = Car("225/45R17 94V").Tyres } }, OwnersGoals.None));

        Assert.Equal(Verdict.Clash, finding.Verdict);
    }

    // E is 70 km/h from memory, F 80 read.
    [Theory]
    [InlineData("205/65R15 94E", Verdict.Watch)]
    [InlineData("205/65R15 94A8", Verdict.Watch)]
    [InlineData("205/65R15 94F", Verdict.Clash)]
    public void A_symbol_from_memory_warns_and_never_clashes(string size, Verdict verdict)
    {
        var finding = Reaching(size, "80 km/h", 5000);

        Assert.Equal((verdict, verdict == Verdict.Clash), (finding.Verdict, finding.LimitIsVerified));
        Assert.Equal(verdict == Verdict.Watch, finding.Source.EndsWith(" from memory", StringComparison.Ordinal));
    }

    // The slower pair counts, whichever axle it is on; one whose symbol nobody read is asked for.
    [Fact]
    public void Of_two_pairs_the_slower_one_counts()
    {
        Assert.Equal(Verdict.Clash, Both("205/65R15 94S", "205/65R15 94P"));
        Assert.Equal(Verdict.Clash, Both("205/65R15 94P", "205/65R15 94S"));
        Assert.Equal(Verdict.Open, Both("205/65R15 94S", "205/65R15"));
        Assert.Equal(Verdict.Open, Both("205/65R15", "205/65R15 94S"));

        static Verdict Both(string rear, string front)
            => Assert.Single(new TyreSpeedCheck().Look(
                Car(rear) with { Tyres = Car(rear).Tyres! with { FrontPair = Car(front).Tyres } }, OwnersGoals.None with { TopSpeed = TopSpeedGoal.Read("170 km/h").OrRefuse() })).Verdict;
    }

    // 1.01 · 185 + 6.5 = 193.4: U (200).
    [Fact]
    public void The_symbol_that_would_do_is_named()
        => Assert.Equal(["tyres of speed symbol U or faster", "a top speed of 171 km/h or less"], Find("205/65R15 94S", "185 km/h").Cures);

    [Fact]
    public void A_cruise_goal_alone_is_enough_to_judge_by()
        => Assert.Equal(Verdict.Clash, Assert.Single(new TyreSpeedCheck().Look(Car("175/80R14 88F"), new([InventedCar.Goal("110 km/h", "2400")]))).Verdict);

    [Fact]
    public void A_symbol_that_was_not_read_is_asked_for_with_what_would_do()
        => Assert.Contains("Q or faster would do", Assert.Single(Reaching("205/65R15", "80 km/h", 5000).Cures), StringComparison.Ordinal);

    // What is only wanted it may go beyond: no symbol is enough then.
    [Fact]
    public void Where_only_a_wish_is_known_no_symbol_is_said_to_do()
        => Assert.DoesNotContain(Find("205/65R15", "145 km/h").Cures, cure => cure.Contains("would do", StringComparison.Ordinal));

    // 5000 rev/min end it at 146.34 km/h (TopSpeedCheckTests), whatever is wanted: P is good to 150, with the margin to 142; M to 130.
    [Theory]
    [InlineData("205/65R15 94Q", "80 km/h", Verdict.Fits)]
    [InlineData("205/65R15 94P", "80 km/h", Verdict.Watch)]
    [InlineData("205/65R15 94M", "80 km/h", Verdict.Clash)]
    [InlineData("205/65R15 94P", "170 km/h", Verdict.Watch)]
    public void What_it_reaches_counts_more_than_what_is_wanted(string size, string top, Verdict verdict)
    {
        var finding = Reaching(size, top, 5000);

        Assert.Equal(verdict, finding.Verdict);
        Assert.EndsWith("; it reaches 146 km/h in gear 4.", finding.Says, StringComparison.Ordinal);
        if (verdict == Verdict.Clash) Assert.Equal(["tyres of speed symbol Q or faster"], finding.Cures);
    }

    [Fact]
    public void What_was_assumed_for_the_speed_it_reaches_is_said()
    {
        var load = InventedLoad.Exact with { DragArea = new(InventedCar.Of(0.8, 0.05), Source.Assumed) };
        var car = InventedLoad.Car with { Load = load, Tyres = InventedCar.Rolling(2.00) with { Size = TyreSizeText.Read("205/65R15 94Q").OrRefuse() } };

        Assert.EndsWith(" Assumed: a drag area of 0.80 ± 0.10 m².", Assert.Single(new TyreSpeedCheck().Look(car, OwnersGoals.None)).Says, StringComparison.Ordinal);
        Assert.EndsWith(" Assumed: a drag area of 0.80 ± 0.10 m².", Assert.Single(new PropshaftSpeedCheck().Look(car with { Propshaft = InventedShaft.Plain }, OwnersGoals.None)).Says, StringComparison.Ordinal);
    }

    // Flat to 5000 rev/min, redline 6000: 146.3 to 175.6 km/h. S is good to 180, with the margin to 171.8.
    [Fact]
    public void Beyond_the_torque_curve_both_ends_have_to_agree()
    {
        Assert.Equal(Verdict.Watch, Reaching("205/65R15 94S", "80 km/h", 6000).Verdict);
        Assert.Equal(Verdict.Fits, Reaching("205/65R15 94H", "80 km/h", 6000).Verdict);
        Assert.Equal(Verdict.Open, Reaching("205/65R15 94H", "80 km/h", null).Verdict);
        Assert.Equal(Verdict.Clash, Reaching("205/65R15 94M", "80 km/h", null).Verdict);
    }

    [Fact]
    public void A_speed_that_is_only_wanted_is_said_to_be()
        => Assert.Contains("; 170 km/h is wanted, and what it reaches is not known.", Find("205/65R15 94S", "170 km/h").Says, StringComparison.Ordinal);

    // 5000 rev/min end it at 146.3 km/h by gear, whatever engine and road can do.
    [Fact]
    public void Where_gears_and_redline_leave_no_more_a_wish_fits()
    {
        var car = InventedLoad.Car with { Load = null, Engine = new("four", Redline: InventedCar.Exactly(5000 / 60.0)), Tyres = InventedCar.Rolling(2.00) with { Size = TyreSizeText.Read("205/65R15 94Q").OrRefuse() } };
        var finding = Assert.Single(new TyreSpeedCheck().Look(car, OwnersGoals.None with { TopSpeed = TopSpeedGoal.Read("100 km/h").OrRefuse() }));

        Assert.Equal(Verdict.Fits, finding.Verdict);
        Assert.EndsWith("; its redline ends it at 146 km/h in gear 4.", finding.Says, StringComparison.Ordinal);
        var slow = car with { Tyres = InventedCar.Rolling(2.00) with { Size = TyreSizeText.Read("205/65R15 94L").OrRefuse() } };
        Assert.Equal(Verdict.Open, Assert.Single(new TyreSpeedCheck().Look(slow, OwnersGoals.None with { TopSpeed = TopSpeedGoal.Read("100 km/h").OrRefuse() })).Verdict);
    }

    [Fact]
    public void Without_a_speed_there_is_nothing_to_judge_by() => Assert.Empty(new TyreSpeedCheck().Look(Car("205/65R15 94S"), OwnersGoals.None));

    private static Driveline Car(string size) => InventedCar.Plain with { Tyres = new("tyres", null, TyreSizeText.Read(size).OrRefuse()) };

    private static Finding Reaching(string size, string top, double? redline)
    {
        var engine = InventedLoad.Car.Engine! with { Redline = redline is { } rpm ? InventedCar.Exactly(rpm / 60) : null };
        var tyres = InventedCar.Rolling(2.00) with { Size = TyreSizeText.Read(size).OrRefuse() };
        return Assert.Single(new TyreSpeedCheck().Look(InventedLoad.Car with { Engine = engine, Tyres = tyres }, OwnersGoals.None with { TopSpeed = TopSpeedGoal.Read(top).OrRefuse() }));
    }

    // Hardly any drag or rolling resistance: what the gears allow is what it reaches.
    private static Driveline Fast(string size, double top) => InventedLoad.Car with
    {
        Transmission = new("fast", [InventedCar.Gear("1", 3.5), InventedCar.Gear("2", top)]),
        Load = InventedLoad.Exact with { DragArea = InventedCar.Exactly(0.01), RollingResistance = InventedCar.Exactly(0.001) },
        Tyres = InventedCar.Rolling(2.00) with { Size = TyreSizeText.Read(size).OrRefuse() },
    };

    private static Finding Geared(string size, double top) => Assert.Single(new TyreSpeedCheck().Look(Fast(size, top), OwnersGoals.None));

    private static Finding Find(string size, string top)
        => Assert.Single(new TyreSpeedCheck().Look(Car(size), OwnersGoals.None with { TopSpeed = TopSpeedGoal.Read(top).OrRefuse() }));
}
