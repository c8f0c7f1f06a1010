using System.Globalization;
using System.Text.RegularExpressions;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tyres;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>
/// By hand, the invented car at 108 km/h = 30 m/s in top: n = 30 · 1 · 4.10 / 2.00 = 61.5 rev/s = 3690 rev/min.
/// Source of the limit: the owner's goal and its tolerance.
/// </remarks>
public sealed class CruiseCheckTests
{
    [Fact]
    public void An_engine_speed_inside_the_window_fits_and_needs_no_cure()
    {
        var finding = Find(InventedCar.Plain, InventedCar.Goal("108 km/h", "3700"));

        Assert.Equal((Verdict.Fits, Because.Inside), (finding.Verdict, finding.Because));
        Assert.Equal(3690, finding.Value!.Value * 60, 1e-9);
        Assert.Equal("At 108 km/h in top (4) the engine turns 3690 rev/min; wanted 3515 to 3885 rev/min.", finding.Says);
        Assert.Empty(finding.Cures);
        Assert.Null(finding.SettledBy);
        Assert.Equal([Position.RearAxle, Position.Tyres], finding.Between);
    }

    // Nobody compared engine and road speed: 3690 / (1 − 0.055) = 3905.
    [Fact]
    public void A_slip_that_is_only_usual_is_named_as_assumed()
    {
        var box = InventedCar.Plain.Transmission! with { Converter = new(LocksUp: false) };

        Assert.EndsWith(" Assumed: a converter slip of 6 ± 3 %.", Find(InventedCar.Plain with { Transmission = box }, InventedCar.Goal("108 km/h", "3700")).Says, StringComparison.Ordinal);
        Assert.DoesNotContain("Assumed", Find(InventedCar.Plain with { Transmission = box with { Converter = new(LocksUp: true) } }, InventedCar.Goal("108 km/h", "3700")).Says, StringComparison.Ordinal);
    }

    // 2400 ± 5 % wanted: axle i = n C / v: 38 · 2/30 = 2.5333 to 42 · 2/30 = 2.8; tyre C = v i / n: 123/42 = 2.9286 to 123/38 = 3.2368;
    // top gear: n C / (v · 4.10): 0.6179 to 0.6829. Printed rounded inwards, 0.566 of a last digit kept for an end that is typed.
    [Fact]
    public void An_engine_speed_outside_clashes_and_each_part_that_would_do_is_a_cure()
    {
        var finding = Find(InventedCar.Plain, InventedCar.Goal("108 km/h", "2400"));

        Assert.Equal((Verdict.Clash, Because.Outside), (finding.Verdict, finding.Because));
        Assert.Equal(
            ["axle ratio 2.54 to 2.79", "tyre rolling circumference 2.930 to 3.236 m", "ratio of top (4) 0.63 to 0.67"],
            finding.Cures);
        Assert.Equal([Position.RearAxle, Position.Tyres, Position.Transmission], finding.Windows.Select(window => window.Position));
        Assert.Equal(38 * 2 / 30.0, finding.Windows[0].Window.Low, 1e-9);
        Assert.Equal(42 * 2 / 30.0, finding.Windows[0].Window.High, 1e-9);
    }

    // 3000 ± 5 %: a tyre of 123/52.5 = 2.3429 to 123/47.5 = 2.5895; a quarter above the one fitted is 1.25 · 2.00 = 2.500.
    [Fact]
    public void A_cure_is_as_wide_as_the_window_of_all_wishes_and_both_say_how_far_such_parts_are_made()
    {
        var goals = new OwnersGoals([InventedCar.Goal("108 km/h", "3000")]);

        Assert.Contains("tyre rolling circumference 2.344 to 2.588 m, in practice 2.500 m or less", AllChecks.Look(InventedCar.Plain, goals).First(finding => finding.Check == "cruise").Cures);
        var tyres = DrivelineWindows.Of(InventedCar.Plain, goals).Single(window => window.Position == Position.Tyres);
        Assert.Equal(("2.344 to 2.588 m", ", in practice 2.500 m or less"), (tyres.SureInWords(tyres.Unit), tyres.InPractice(tyres.Unit)));
        var axle = DrivelineWindows.OfAxle(InventedCar.Plain, goals)!;
        Assert.Empty(axle.InPractice(axle.Unit));
    }

    // Entered as it is named, an end is known to half its last digit; it fits all the same.
    [Theory]
    [InlineData("2.54")]
    [InlineData("2.79")]
    public void An_end_that_is_named_fits_when_it_is_typed(string typed)
    {
        var axle = QuotedRatio.ReadMeasured(typed, RatioRange.Axle, "axle ratio").OrRefuse();

        Assert.Equal(Verdict.Fits, Find(InventedCar.Plain with { RearAxle = InventedCar.Axle(axle) }, InventedCar.Goal("108 km/h", "2400")).Verdict);
    }

    // 60 km/h in third, 1.4, behind a case of 1.25: n = 16.667 · 1.4 · 1.25 · 4.10/2.00 = 59.79 rev/s; 45 to 55 are wanted. Axle n C/(v · 1.75), gear n C/(v · 1.25 · 4.10),
    // tyre v · 1.75 · 4.10/n.
    [Fact]
    public void What_stands_between_engine_and_axle_is_in_every_window()
    {
        var car = InventedCar.Plain with { TransferCase = new("case", InventedCar.Exactly(1.25), null) };
        var windows = Find(car, InventedCar.Goal("60 km/h", "3000", "10 %", "3")).Windows.ToDictionary(window => window.Position, window => window.Window);

        Same(45 * 2 / (60 / 3.6 * 1.75), 55 * 2 / (60 / 3.6 * 1.75), windows[Position.RearAxle]);
        Same(45 * 2 / (60 / 3.6 * 1.25 * 4.10), 55 * 2 / (60 / 3.6 * 1.25 * 4.10), windows[Position.Transmission]);
        Same(60 / 3.6 * 1.75 * 4.10 / 55, 60 / 3.6 * 1.75 * 4.10 / 45, windows[Position.Tyres]);

        static void Same(double low, double high, Window window)
        {
            Assert.Equal(low, window.Low, 1e-9);
            Assert.Equal(high, window.High, 1e-9);
        }
    }

    // An overdrive of 0.8: the gear of the box behind it may be as much longer.
    [Fact]
    public void Before_an_overdrive_the_top_gear_has_a_window_of_its_own()
    {
        var finding = Find(InventedCar.Plain with { Overdrive = new("unit", InventedCar.Exactly(0.8)) }, InventedCar.Goal("108 km/h", "2400"));

        Assert.Equal(38 * 2 / (30 * 0.8 * 4.10), finding.Windows.Single(window => window.Position == Position.Transmission).Window.Low, 1e-9);
        Assert.Contains("ratio of gear 4, without the overdrive 0.78 to 0.84", finding.Cures);
    }

    // The tyre to 1 % (95 %: 1.96 %): sure axle 38 · 2 / 30 / (1 − 0.0196) … 42 · 2 / 30 / (1 + 0.0196).
    [Fact]
    public void A_sure_window_is_narrower_by_what_is_not_known_of_the_others()
    {
        var car = InventedCar.Plain with { Tyres = InventedCar.Rolling(InventedCar.Of(2.00, 0.02, "roll-out")) };
        var axle = Find(car, InventedCar.Goal("108 km/h", "2400")).Windows[0];

        Assert.Equal(2.533333 / (1 - 0.01959964), axle.SureWindow!.Value.Low, 1e-5);
        Assert.Equal(2.8 / (1 + 0.01959964), axle.SureWindow.Value.High, 1e-5);
    }

    // 3690 rev/min ± 1.96 % is 3618 to 3762; wanted 3750 ± 50: 3700 to 3800.
    [Fact]
    public void An_interval_across_a_limit_is_a_watch_with_the_measurement_that_settles_it()
    {
        var car = InventedCar.Plain with { Tyres = InventedCar.Rolling(InventedCar.Of(2.00, 0.02, "roll-out", _ => "roll further")) };
        var finding = Find(car, InventedCar.Goal("108 km/h", "3750", "50 rpm"));

        Assert.Equal((Verdict.Watch, Because.Uncertainty), (finding.Verdict, finding.Because));
        Assert.Equal("roll further", finding.SettledBy);
        Assert.Equal("At 108 km/h in top (4) the engine turns 3690 ± 80 rev/min; wanted 3700 to 3800 rev/min.", finding.Says);
        Assert.NotEmpty(finding.Cures);
    }

    // Axle counted once over ten turns, tyres rolled loaded over ten: the count dominates. The turns asked for are counted, and it is settled.
    [Fact]
    public void The_count_it_asks_for_settles_the_cruise()
    {
        var tyres = RollOut.Of([RollReading.Read("10:20m").OrRefuse()], new RollOutPrecision(Loaded: true, Tape: 0.005)).RollingCircumference;
        Finding Counted(string turns) => Find(
            InventedCar.Plain with { Tyres = InventedCar.Rolling(tyres), RearAxle = InventedCar.Axle(TurnCount.Of([TurnReading.Read(turns, Wheels.OneHeld).OrRefuse()], new CountPrecision()).Ratio) },
            InventedCar.Goal("108 km/h", "3640", "65 rpm"));

        var watch = Counted("10:20.5");
        Assert.Equal(Verdict.Watch, watch.Verdict);

        var turns = int.Parse(Regex.Match(watch.SettledBy!, "count ([0-9]+) wheel turns").Groups[1].Value, CultureInfo.InvariantCulture);
        Assert.InRange(turns, 11, 60);
        Assert.Equal(Verdict.Fits, Counted(FormattableString.Invariant($"{turns}:{2.05 * turns}")).Verdict);
    }

    [Fact]
    public void A_typed_uncertainty_of_the_road_speed_counts()
        => Assert.Equal(0.01, Find(InventedCar.Plain, InventedCar.Goal("108 km/h u=1.08", "3750")).Value!.RelativeUncertainty, 1e-9);

    // 3690 rev/min locked; 5.5 % slip make 3690/0.945 = 3904.8. For 2400 ± 5 % the axle may be 0.945 times what it might be locked.
    [Fact]
    public void A_converter_that_does_not_lock_turns_the_engine_faster()
    {
        var box = InventedCar.Plain.Transmission!;
        var slipping = Find(InventedCar.Plain with { Transmission = box with { Converter = new(LocksUp: false) } }, InventedCar.Goal("108 km/h", "2400"));
        var locked = Find(InventedCar.Plain with { Transmission = box with { Converter = new(LocksUp: true) } }, InventedCar.Goal("108 km/h", "2400"));

        Assert.Equal(3690 / 0.945, slipping.Value!.Value * 60, 1e-6);
        Assert.Equal(3690, locked.Value!.Value * 60, 1e-9);
        Assert.Equal(0.945 * 2.8, slipping.Windows[0].Window.High, 1e-9);
    }

    [Theory]
    [InlineData("3700", Verdict.Fits)]
    [InlineData("3690", Verdict.Fits)]
    [InlineData("3600", Verdict.Clash)]
    public void At_most_has_no_lower_side(string engineSpeed, Verdict verdict)
    {
        var finding = Find(InventedCar.Plain, InventedCar.Goal("108 km/h", engineSpeed, "at most"));

        Assert.Equal(verdict, finding.Verdict);
        Assert.EndsWith($"wanted {engineSpeed} rev/min or less.", finding.Says, StringComparison.Ordinal);
    }

    // In third: 3690 · 1.4 = 5166.
    [Fact]
    public void A_gear_is_judged_by_its_name()
    {
        var finding = Find(InventedCar.Plain, InventedCar.Goal("108 km/h", "5166", "", "3"));

        Assert.Equal(Verdict.Fits, finding.Verdict);
        Assert.Contains("in gear 3", finding.Says, StringComparison.Ordinal);
    }

    // With an overdrive of 0.8, top is 4+OD: 3690 · 0.8 = 2952; through a transfer case of 1.25 it is 3690 again.
    [Fact]
    public void Overdrive_and_transfer_case_are_in_the_chain()
    {
        var overdriven = InventedCar.Plain with { Overdrive = new("unit", InventedCar.Exactly(0.8)) };
        var fourByFour = overdriven with { TransferCase = new("case", InventedCar.Exactly(1.25), InventedCar.Exactly(2.5)) };

        Assert.Equal(2952, Find(overdriven, InventedCar.Goal("108 km/h", "2952")).Value!.Value * 60, 1e-9);
        Assert.Equal(3690, Find(fourByFour, InventedCar.Goal("108 km/h", "3690")).Value!.Value * 60, 1e-9);
        Assert.Equal(3690, Find(overdriven, InventedCar.Goal("108 km/h", "3690", "", "4")).Value!.Value * 60, 1e-9);
    }

    [Fact]
    public void A_front_driven_vehicle_is_judged_by_its_front_axle()
    {
        var finding = Find(InventedCar.Plain with { FrontAxle = InventedCar.Axle(4.0), DrivesInFront = true }, InventedCar.Goal("108 km/h", "2400"));

        Assert.Equal(3600, finding.Value!.Value * 60, 1e-9);
        Assert.Equal([Position.FrontAxle, Position.Tyres], finding.Between);
        Assert.StartsWith("front axle ratio ", finding.Cures[0], StringComparison.Ordinal);
    }

    public static TheoryData<string, string, string> Missing => new()
    {
        { "gearbox", "no gearbox is fitted", "fit a gearbox" },
        { "gears", "the gearbox has no ratios", "enter the gear ratios" },
        { "transfer", "the transfer case's high ratio is not known", "enter the transfer case's high ratio" },
        { "overdrive", "the overdrive's ratio is not known", "enter the overdrive's ratio" },
        { "axle", "no axle is fitted", "fit the axle" },
        { "axle ratio", "the axle ratio is not known", "count the axle's turns" },
        { "tyres", "no tyres are fitted", "fit tyres" },
        { "circumference", "the tyres' circumference is not known", "roll the tyres out" },
    };

    [Theory]
    [MemberData(nameof(Missing))]
    public void A_missing_number_leaves_it_open_and_is_named_with_its_cure(string missing, string says, string cure)
    {
        var car = InventedCar.Plain;
        var half = missing switch
        {
            "gearbox" => car with { Transmission = null },
            "gears" => car with { Transmission = new("empty", []) },
            "transfer" => car with { TransferCase = new("case", null, null) },
            "overdrive" => car with { Overdrive = new("unit", null) },
            "axle" => car with { RearAxle = null },
            "axle ratio" => car with { RearAxle = new("axle", null) },
            "tyres" => car with { Tyres = null },
            _ => car with { Tyres = new("tyres", null, null) },
        };

        var finding = Find(half, InventedCar.Goal("108 km/h", "2400"));

        Assert.Equal((Verdict.Open, Because.MissingInput), (finding.Verdict, finding.Because));
        Assert.Null(finding.Value);
        Assert.Equal($"The engine speed at 108 km/h cannot be said: {says}.", finding.Says);
        Assert.StartsWith(cure, finding.Cures[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Everything_that_is_missing_is_named_at_once()
    {
        var nothing = new Driveline { TransferCase = new("case", null, null) };

        Assert.Equal(
            "The engine speed at 108 km/h cannot be said: no gearbox is fitted and the transfer case's high ratio is not known and no axle is fitted and no tyres are fitted.",
            Find(nothing, InventedCar.Goal("108 km/h", "2400")).Says);
    }

    // With gears and tyres known, the axle that would do can be named before it is there.
    [Fact]
    public void While_it_is_open_the_part_that_would_do_is_named()
        => Assert.Contains("axle ratio 2.54 to 2.79 would do", Find(InventedCar.Plain with { RearAxle = null }, InventedCar.Goal("108 km/h", "2400")).Cures);

    [Fact]
    public void A_gear_that_is_not_there_is_named_with_those_that_are()
    {
        var finding = Find(InventedCar.Plain, InventedCar.Goal("108 km/h", "2400", "", "5"));

        Assert.Equal(Verdict.Open, finding.Verdict);
        Assert.Contains("there is no gear '5' among 1, 2, 3, 4", finding.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_goal_there_is_nothing_to_judge()
    {
        var finding = Assert.Single(AllChecks.Look(InventedCar.Plain with { DrivesInFront = true }, OwnersGoals.None), finding => finding.Check == "cruise");

        Assert.Equal((Verdict.Open, Because.MissingInput), (finding.Verdict, finding.Because));
        Assert.Equal([Position.FrontAxle, Position.Tyres], finding.Between);
        Assert.NotEmpty(finding.Cures);
    }

    [Fact]
    public void Each_goal_has_its_finding_and_the_worst_comes_first()
    {
        CruiseGoal[] goals = [InventedCar.Goal("108 km/h", "3690"), InventedCar.Goal("108 km/h", "2400"), InventedCar.Goal("108 km/h", "3690", "", "5")];

        var findings = AllChecks.Look(InventedCar.Plain, new(goals));

        Assert.Equal([Verdict.Clash, Verdict.Open, Verdict.Fits], findings.Where(finding => finding.Check == "cruise").Select(finding => finding.Verdict));
        Assert.Equal(findings.OrderBy(finding => finding.Verdict), findings);
    }

    // 3 ± 1 % at 120 km/h is 2.43 ± 0.81 % at 108: ± 0.92 % at 95 %, rounded up; 3690/1.0243 = 3602 ± 32.
    [Fact]
    public void What_a_bias_tyre_would_grow_is_told_and_not_judged()
    {
        var goal = InventedCar.Goal("108 km/h", "3700");
        var car = InventedCar.Plain with { Tyres = InventedCar.Plain.Tyres! with { Size = TyreSizeText.Read("6.40-15").OrRefuse() } };
        var finding = Find(car, goal);

        Assert.EndsWith("A bias tyre grows by some 2.4 ± 1.0 % at that speed: then 3600 ± 40 rev/min.", finding.Says, StringComparison.Ordinal);
        Assert.Equal(Find(InventedCar.Plain, goal).Value!.Value, finding.Value!.Value);
    }

    // 4.10 on 2.00 m turns it 3690 rev/min at 108 km/h; 2280 to 2520 would take tyres of 2.929 to 3.236 m, half again as tall as the ones fitted.
    [Fact]
    public void No_cure_is_a_tyre_more_than_a_quarter_taller_than_the_one_fitted()
    {
        var goals = new OwnersGoals([InventedCar.Goal("108 km/h", "2400 rpm")]);
        var clash = AllChecks.Look(InventedCar.Plain, goals).First(finding => finding.Check == "cruise");

        Assert.Equal(["axle ratio 2.54 to 2.79", "ratio of top (4) 0.63 to 0.67"], clash.Cures);
        Assert.False(DrivelineWindows.Of(InventedCar.Plain, goals).Single(window => window.Position == Position.Tyres).IsMade);
        Assert.True(DrivelineWindows.OfAxle(InventedCar.Plain, goals)!.IsMade);
    }

    // 54 km/h on 2.00 m are 450 wheel turns a minute: 2000 rev/min leave 4.44, 1900 leave 4.22, and hubs of 2.00 behind 2.2 make 4.40.
    [Theory]
    [InlineData("2000 rpm", true)]
    [InlineData("1900 rpm", false)]
    public void An_axle_with_hubs_is_made_for_what_they_leave(string most, bool isMade)
    {
        var portal = InventedCar.Plain with { RearAxle = InventedCar.Axle(8.20) with { HubReduction = InventedCar.Exactly(2) } };
        var clash = AllChecks.Look(portal, new([InventedCar.Goal("54 km/h", most, "at most")])).First(finding => finding.Check == "cruise");

        Assert.Equal(isMade, clash.Cures.Any(cure => cure.StartsWith("axle ratio", StringComparison.Ordinal)));
    }

    private static Finding Find(Driveline driveline, CruiseGoal goal) => Assert.Single(new CruiseCheck().Look(driveline, new([goal])));
}
