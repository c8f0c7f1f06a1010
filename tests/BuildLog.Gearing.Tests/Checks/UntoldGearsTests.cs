using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <summary>What hangs on gears that nobody told is left open, and the rest is judged.</summary>
public sealed class UntoldGearsTests
{
    private static readonly OwnersGoals Goals = CheckCase.Cruise("100 km/h", "2780") with
    {
        Hill = HillGoal.Read("1 %", "90 km/h").OrRefuse(),
        HillStart = HillStartGoal.Read("10 %").OrRefuse(),
        OverallLow = OverallLowGoal.Read("13").OrRefuse(),
        TopSpeed = TopSpeedGoal.Read("190 km/h").OrRefuse(),
    };

    // 100 km/h are 27.78 m/s: over 2.00 m and times 4.10 · 0.8 they are 45.56 rev/s, 2733 rev/min. First gear makes 3.3 · 4.10 = 13.53 of 13.
    [Fact]
    public void Cruise_and_start_are_judged_by_the_gears_that_were_counted_and_the_steps_are_not()
    {
        var findings = Look("counted 1:3.3±0.001 5:0.8±0.001");

        Assert.Equal(100 / 3.6 / 2 * 4.10 * 0.8, findings["cruise"].Value!.Value, 1e-9);
        Assert.Equal(13.53, findings["overall-low"].Value!.Value, 1e-9);
        Assert.All((string[])["cruise", "overall-low", "hill", "hill-start"], check => Assert.NotEqual(Verdict.Open, findings[check].Verdict));
        Assert.All((string[])["gear-steps", "top-speed"], check => Assert.Equal((Verdict.Open, "count gears 2, 3 and 4: ten output turns in each"), (findings[check].Verdict, Assert.Single(findings[check].Cures))));
        Assert.Equal("Whether the steps get smaller from gear to gear cannot be said: gears 2, 3 and 4 of the gearbox are not told.", findings["gear-steps"].Says);
    }

    // 203 km/h by peak power are above what 0.8 turns out at, below what 0.6 does: there the gear below top decides.
    [Theory]
    [InlineData("1:3.3 5:0.8", Verdict.Watch)]
    [InlineData("1:3.3 5:0.6", Verdict.Open)]
    public void The_gear_below_top_is_asked_for_where_it_decides(string claim, Verdict verdict) => Assert.Equal(verdict, Look(claim)["top-gear"].Verdict);

    [Fact]
    public void Of_a_top_gear_alone_neither_start_nor_crawl_is_said()
    {
        var findings = Look("counted 0.8±0.001");

        Assert.Equal(Verdict.Fits, findings["cruise"].Verdict);
        Assert.StartsWith("At 100 km/h in top gear the engine turns ", findings["cruise"].Says, StringComparison.Ordinal);
        Assert.All((string[])["overall-low", "hill-start"], check => Assert.Equal((Verdict.Open, "count the other gears: ten output turns in each"), (findings[check].Verdict, Assert.Single(findings[check].Cures))));
    }

    [Fact]
    public void Of_a_first_gear_alone_no_cruise_is_said()
    {
        var findings = Look("counted 1:3.3±0.001");

        Assert.Equal(13.53, findings["overall-low"].Value!.Value, 1e-9);
        Assert.All((string[])["cruise", "hill"], check => Assert.Equal(Verdict.Open, findings[check].Verdict));
        Assert.Contains("the other gears of the gearbox are not told", findings["cruise"].Says, StringComparison.Ordinal);
    }

    // 146.34 km/h end gear 4 of ratio 1, see TopSpeedCheckTests: what is reached in the gears that are told is reached at least.
    [Fact]
    public void A_top_speed_that_the_told_gears_reach_is_reached()
    {
        var car = Car("1:3.3 4:1.0");
        var reached = TopSpeed.Of(InventedLoad.Pull(car))!;
        var finding = Assert.Single(new TopSpeedCheck().Look(car, OwnersGoals.None with { TopSpeed = TopSpeedGoal.Read("140 km/h").OrRefuse() }));

        Assert.Equal((146.3415, TopSpeedLimit.Unknown, null), (Math.Round(reached.Speed.Value * 3.6, 4), reached.Limit, reached.Most));
        Assert.Equal(Verdict.Fits, finding.Verdict);
        Assert.Contains("at least: gears 2 and 3 of the gearbox are not told", finding.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void A_goal_in_a_gear_that_nobody_told_is_open_and_says_so()
    {
        var finding = Assert.Single(new CruiseCheck().Look(Car("1:3.3 5:0.8"), new([InventedCar.Goal("100 km/h", "2780", gear: "4")])));

        Assert.Equal((Verdict.Open, "count gears 2, 3 and 4: ten output turns in each"), (finding.Verdict, Assert.Single(finding.Cures)));
    }

    [Theory]
    [InlineData("1 2 3 4", null)]
    [InlineData("1 5", "gears 2, 3 and 4")]
    [InlineData("2 3", "gear 1")]
    [InlineData("L 2 3", null)]
    [InlineData("low high", null)]
    public void The_numbers_of_the_gears_say_which_are_left_out(string names, string? left)
        => Assert.Equal(left, UntoldGears.Between([.. names.Split(' ').Select((name, k) => InventedCar.Gear(name, 5 - k))])?.InWords);

    private static Driveline Car(string claim) => InventedLoad.Car with { Transmission = ToldPart.Gearbox(Claim.Read(claim), "box", InventedCar.Plain.Transmission).OrRefuse() };

    private static Dictionary<string, Finding> Look(string claim) => AllChecks.Look(Car(claim), Goals).GroupBy(finding => finding.Check).ToDictionary(check => check.Key, check => check.First());
}
