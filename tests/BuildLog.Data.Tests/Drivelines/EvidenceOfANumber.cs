using BuildLog.Data.Components;
using BuildLog.Data.Drivelines;
using BuildLog.Data.Sessions;
using BuildLog.Data.Specs;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Speedometers;
using Xunit;
using RoadTest = BuildLog.Data.RoadTests.RoadTest;

namespace BuildLog.Data.Tests.Drivelines;

public sealed class EvidenceOfANumber : IDisposable
{
    private static readonly DateOnly Day = new(2026, 5, 3);
    private readonly TestShop test = new();
    private readonly Vehicle vehicle;

    public EvidenceOfANumber() => vehicle = test.Vehicle("Brindle");

    public void Dispose() => test.Dispose();

    [Fact]
    public void A_tag_counts_while_there_is_nothing_better_and_is_as_sure_as_its_last_digit()
    {
        Fit(test.Axle("a", "3.90"), Position.RearAxle);
        var known = Ratio.Used;
        Assert.Equal((3.90, Source.Tag, "3.90"), (known.Value.Value, known.Source, known.Says));

        // Half the last digit over √3.
        Assert.Equal(0.005 / Math.Sqrt(3), known.Value.StandardUncertainty, 1e-12);
        Assert.Null(Ratio.Session);
    }

    [Fact]
    public void The_latest_count_beats_the_tag_and_older_counts()
    {
        var axle = test.Axle("a", "3.90");
        Fit(axle, Position.RearAxle);
        Count(axle, new(2026, 3, 1), "10:23.5");
        var latest = Count(axle, new(2026, 4, 1), "10:23.7");
        Count(axle, new(2026, 2, 1), "10:23");
        Assert.Equal((4.74, Source.Measured, "count of 1 April 2026"), (Math.Round(Ratio.Used.Value.Value, 12), Ratio.Used.Source, Ratio.Used.Says));
        Assert.Equal(latest.Id, Ratio.Session!.Id);
        Assert.Equal(["count of 1 March 2026", "count of 1 February 2026", "3.90"], Ratio.PassedOver.Select(known => known.Says));
    }

    // Ten turns read to a quarter, then one turn: 4.75 ± 0.03, then 4.5 ± 0.3, which is no reason to forget the first. 4.0 ± 0.3 is.
    [Fact]
    public void An_earlier_count_that_is_better_known_speaks_while_the_latest_agrees()
    {
        var axle = test.Axle("a");
        Fit(axle, Position.RearAxle);
        Count(axle, new(2026, 3, 1), "10:23.75");
        Count(axle, new(2026, 4, 1), "1:2.25");
        Assert.Equal(("count of 1 March 2026", 4.75), (Ratio.Used.Says, Math.Round(Ratio.Used.Value.Value, 12)));
        Assert.Equal(["count of 1 April 2026"], Ratio.PassedOver.Select(known => known.Says));

        Count(axle, new(2026, 5, 1), "1:2");
        Assert.Equal("count of 1 May 2026", Ratio.Used.Says);
    }

    // A rule across the bead seats is good to 3 mm: u = 3/√3 mm, not half of an inch. What is stamped is meant as it stands, and a typed ± counts.
    [Theory]
    [InlineData("6 in", Source.Measured, 0.003)]
    [InlineData("152.4 mm", Source.Measured, 0.00005)]
    [InlineData("6 in", Source.Tag, 0)]
    public void A_rim_is_as_sure_as_a_rule_reads_it_and_exact_as_stamped(string typed, Source source, double half)
    {
        Fit(test.Shop.Add(new WheelSetComponent { Name = "wheels", RimWidth = Noted.Of(Spec.RimWidth, typed, source) }), Position.Tyres);

        Assert.Equal(half / Math.Sqrt(3), Number(Position.Tyres, "rim width").Used.Value.StandardUncertainty, 1e-12);
    }

    // 3 turns loose over 6.3 m: 2.1 m a turn without load, however well the loaded way is known besides.
    [Fact]
    public void A_loose_wheel_tells_the_free_tyre_beside_a_loaded_roll_out_that_counts()
    {
        var tyres = test.Wheels();
        Fit(tyres, Position.Tyres);
        RollOut(tyres, new(2026, 3, 1), loaded: false, "3:6.3m");
        RollOut(tyres, new(2026, 4, 1), loaded: true, "3:6.12m");
        var set = test.Shop.DrivelineOn(vehicle, Day).Driveline.Tyres!;

        Assert.Equal((2.1, 2.04), (Math.Round(set.FreeCircumference!.Value.Value, 9), Math.Round(set.RollingCircumference!.Value.Value, 9)));
    }

    [Fact]
    public void What_a_dial_wants_names_its_distance()
    {
        Fit(test.Shop.Add(new SpeedometerComponent { Name = "dial", TurnsWanted = Noted.Of(Spec.TurnsWanted, "870", Source.Tag), Per = OdometerUnit.Miles }), Position.Speedometer);
        var wanted = Number(Position.Speedometer, "turns the dial wants");

        Assert.Equal("870 a mile", Rounded.WithInterval(wanted.Used.Value, wanted.Unit));
    }

    [Fact]
    public void Of_two_counts_on_one_day_the_one_entered_last_is_used()
    {
        var axle = test.Axle("a");
        Fit(axle, Position.RearAxle);
        Count(axle, Day, "10:20");
        Count(axle, Day, "10:20.5");
        Assert.Equal(4.1, Ratio.Used.Value.Value, 1e-12);
    }

    [Fact]
    public void Teeth_beat_everything()
    {
        var axle = test.Shop.Add(new AxleComponent { Name = "a", Teeth = new Teeth(43, 9), StatedRatio = Noted.Ratio("3.90", RatioRange.Axle, Source.Tag) });
        Fit(axle, Position.RearAxle);
        Count(axle, Day, "10:23.7");
        Assert.Equal((Source.TeethCounted, "43/9", true), (Ratio.Used.Source, Ratio.Used.Says, Ratio.Used.Value.IsExact));
        Assert.Equal(43 / 9.0, Ratio.Used.Value.Value);
    }

    // By hand: 30/15 = 2 in the differential, 1.5 in the hubs: 3 together. A count of 10:30 with both wheels turning is 3 already.
    [Fact]
    public void A_hub_reduction_comes_on_top_of_teeth_but_is_inside_a_count()
    {
        var axle = test.Shop.Add(new AxleComponent { Name = "a", Teeth = new Teeth(30, 15), HubReduction = Noted.Ratio("1.50", RatioRange.Hub, Source.MakersData) });
        Fit(axle, Position.RearAxle);
        test.Shop.Add(new TurnCountSession(axle) { Date = Day, Wheels = Wheels.Together, Readings = ["10:30"], Hub = "1.50" });
        Assert.Equal(3, Ratio.Used.Value.Value, 1e-12);
        Assert.Equal("30/15, hub 1.50", Ratio.Used.Says);
        Assert.Equal(3, Ratio.PassedOver.Single().Value.Value, 1e-12);
    }

    [Fact]
    public void A_tyre_goes_from_loaded_to_loose_to_stated_to_label()
    {
        var tyres = test.Shop.Add(new WheelSetComponent { Name = "w", SizeText = "205/65R15", StatedCircumference = Noted.Length("1.97 m", Source.MakersData) });
        Fit(tyres, Position.Tyres);
        Assert.Equal("1.97 m", Circumference.Used.Says);
        Assert.Equal(0.005 / Math.Sqrt(3), Circumference.Used.Value.StandardUncertainty, 1e-12);

        RollOut(tyres, new(2026, 4, 2), loaded: false);
        Assert.Equal("roll-out of 2 April 2026, loose wheel", Circumference.Used.Says);

        RollOut(tyres, new(2026, 4, 1), loaded: true);
        Assert.Equal("roll-out of 1 April 2026, loaded", Circumference.Used.Says);
        Assert.Equal(["roll-out of 2 April 2026, loose wheel", "1.97 m", "label 205/65R15"], Circumference.PassedOver.Select(known => known.Says));
    }

    // Tape and chalk leave 6.15 and 6.45 m in three turns some 0.008 m a turn each: 2.05 and 2.15 exclude each other, and nobody knows which is wrong.
    [Fact]
    public void Roll_outs_that_exclude_each_other_leave_room_for_both_until_a_third_decides()
    {
        var tyres = test.Shop.Add(new WheelSetComponent { Name = "w" });
        Fit(tyres, Position.Tyres);
        RollOut(tyres, new(2026, 4, 1), loaded: true, "3:6.15m");
        RollOut(tyres, new(2026, 4, 2), loaded: true, "3:6.45m");
        Assert.True(Circumference.Used.Value.Interval95 is { Low: < 2.05, High: > 2.15 });
        Assert.Equal(["roll-out of 2 April 2026, loaded", "roll-out of 1 April 2026, loaded"], Circumference.PassedOver.Select(known => known.Says));
        Assert.Equal("roll-outs that exclude each other", Circumference.Used.Says);
        var again = Assert.Single(test.Shop.DrivelineOn(vehicle, Day).Driveline.MeasuredAgain);
        Assert.False(again.Agrees);
        Assert.Equal(Circumference.Used.Value.Value, again.RoomForAll!.Value.Value);

        RollOut(tyres, new(2026, 4, 3), loaded: true, "3:6.45m");
        Assert.Equal("roll-out of 3 April 2026, loaded", Circumference.Used.Says);
        Assert.True(Circumference.Used.Value.Interval95.Low > 2.1);
    }

    // By hand: D = 381 + 2 · 0.65 · 205 = 647.5 mm; worn by 4 mm: 639.5 mm; 0.971 π D.
    [Fact]
    public void A_label_is_taken_with_the_wear()
    {
        var tyres = test.Shop.Add(new WheelSetComponent { Name = "w", SizeText = "205/65R15", Worn = Noted.Length("4 mm", Source.Measured) });
        Fit(tyres, Position.Tyres);
        Assert.Equal(0.971 * Math.PI * 0.6395, Circumference.Used.Value.Value, 1e-9);
    }

    [Fact]
    public void What_is_known_today_holds_for_days_long_past()
    {
        var axle = test.Axle("a", "3.90");
        Fit(axle, Position.RearAxle);
        Count(axle, new(2026, 12, 24), "10:23.7");
        Assert.Equal("count of 24 December 2026", Ratio.Used.Says);
    }

    // 82 / 20 = 4.1 with the finer count of the later day.
    [Fact]
    public void A_counted_gear_is_its_evidence_before_what_is_printed()
    {
        var box = test.Shop.Add(new TransmissionComponent { Name = "box", Gears = TransmissionComponent.GearsFrom(Gearing.Measurements.Source.MakersData, "4.05", "2.22") });
        Fit(box, Position.Transmission);
        test.Shop.Add(new GearCountSession(box, "1", vehicle) { Date = new(2026, 2, 1), Readings = ["10:41"] });
        var gear = Number(Position.Transmission, "gear 1");

        Assert.Equal((4.1, Gearing.Measurements.Source.Measured, "count of 1 February 2026"), (gear.Used.Value.Value, gear.Used.Source, gear.Used.Says));
        Assert.Equal("4.05", Assert.Single(gear.PassedOver).Says);
        Assert.Equal("2.22", Number(Position.Transmission, "gear 2").Used.Says);
        Assert.Equal("gear count", Assert.Single(test.Shop.Sessions(vehicle)).Method);
    }

    // 33.25 / 10 and 8 / 10: it has five gears, and three of them nobody counted.
    [Fact]
    public void Gears_between_those_that_were_counted_are_not_known()
    {
        var box = test.Shop.Add(new TransmissionComponent { Name = "yard box" });
        Fit(box, Position.Transmission);
        test.Shop.Add(new GearCountSession(box, "1", vehicle) { Date = new(2026, 2, 1), Readings = ["10:33.25"] });
        test.Shop.Add(new GearCountSession(box, "5", vehicle) { Date = new(2026, 2, 1), Readings = ["10:8"] });
        var fitted = test.Shop.DrivelineOn(vehicle, Day).Driveline.Transmission!;

        Assert.Equal(3.325, fitted.First!.Ratio.Value.Value, 1e-12);
        Assert.Equal(0.8, fitted.Top!.Ratio.Value.Value, 1e-12);
        Assert.Equal("gears 2, 3 and 4", fitted.Untold!.InWords);
    }

    // 7.75 / 10 = 0.775, before what is printed; ten for ten with it out says nothing of its ratio.
    [Fact]
    public void An_overdrive_that_was_counted_engaged_is_its_evidence()
    {
        var unit = test.Shop.Add(new OverdriveComponent { Name = "unit", OverdriveRatio = Noted.Overdrive("0.78", Source.OwnersWord) });
        Fit(unit, Position.Overdrive);
        test.Shop.Add(new GearCountSession(unit, engaged: true) { Date = new(2026, 2, 1), Readings = ["10:7.75"] });
        test.Shop.Add(new GearCountSession(unit, engaged: false) { Date = new(2026, 2, 2), Readings = ["10:10"] });
        var ratio = Number(Position.Overdrive, "ratio");

        Assert.Equal((0.775, Source.Measured, "count of 1 February 2026"), (ratio.Used.Value.Value, ratio.Used.Source, ratio.Used.Says));
        Assert.Equal("0.78", Assert.Single(ratio.PassedOver).Says);
    }

    // Engaged it turns its input less than its output.
    [Fact]
    public void An_overdrive_counted_the_wrong_way_round_is_a_sentence()
    {
        var unit = test.Shop.Add(new OverdriveComponent { Name = "unit" });

        Assert.Contains("A ratio of 1.28 is no overdrive ratio", Assert.Throws<RefusedException>(() => test.Shop.Add(new GearCountSession(unit, engaged: true) { Date = new(2026, 2, 1), Readings = ["10:12.8"] })).Message, StringComparison.Ordinal);
        Assert.Empty(test.Shop.Sessions(unit));
    }

    [Fact]
    public void Gears_that_were_only_counted_stand_from_the_lowest_to_the_top()
    {
        var box = test.Shop.Add(new TransmissionComponent { Name = "box" });
        Fit(box, Position.Transmission);
        foreach (var (gear, reading) in ((string, string)[])[("4", "10:10"), ("2", "10:21"), ("1", "10:36")])
            test.Shop.Add(new GearCountSession(box, gear) { Date = new(2026, 2, 1), Readings = [reading] });

        Assert.Equal(["1", "2", "4"], test.Shop.DrivelineOn(vehicle, Day).Driveline.Transmission!.Gears.Select(gear => gear.Name));
    }

    [Fact]
    public void A_part_without_any_is_there_but_its_number_is_not()
    {
        Fit(test.Axle("a"), Position.RearAxle);
        var then = test.Shop.DrivelineOn(vehicle, Day);
        Assert.Empty(then.Numbers);
        Assert.NotNull(then.Driveline.RearAxle);
        Assert.Null(then.Driveline.RearAxle.Ratio);
    }

    [Theory]
    [InlineData("2.04 m", 0.01)]
    [InlineData("2040 mm", 0.001)]
    [InlineData("82 in", 0.0254)]
    [InlineData("82 1/4 in", 0.00635)]
    [InlineData("6 ft 8 in", 0.0254)]
    [InlineData("6' 8 1/2\"", 0.0127)]
    public void A_stated_length_is_as_sure_as_its_last_digit(string text, double lastDigit)
        => Assert.Equal(lastDigit, QuantityText.Read(text, Kind.Length).OrRefuse().LastDigit, 1e-12);

    // The forms take a bare angle as degrees.
    [Theory]
    [InlineData("3", 1)]
    [InlineData("3.5", 0.1)]
    [InlineData("3.5 deg", 0.1)]
    public void A_bare_number_is_as_sure_as_its_last_digit_in_the_unit_taken_for_granted(string text, double degrees)
        => Assert.Equal(degrees * Math.PI / 180, SpecSheet.ShaftSide.Read(text).OrRefuse().LastDigit, 1e-12);

    // 10.4 km over 10.0 km: with these tyres, until they are changed.
    [Fact]
    public void A_measured_distance_speaks_of_the_parts_it_was_driven_with()
    {
        var (meter, axle) = (test.Shop.Add(new SpeedometerComponent { Name = "head" }), test.Axle("a", "3.90"));
        Fit(meter, Position.Speedometer);
        Fit(axle, Position.RearAxle);
        test.Shop.Add(new SpeedometerRunSession(vehicle) { Date = Day, Readings = ["10 km: 10.4 km"] });
        Assert.Equal(1.04, Driven(Day)!.Share.Value.Value, 1e-12);
        Assert.Null(Driven(Day.AddDays(-1)));

        _ = test.Shop.Fit(test.Axle("b", "4.10"), vehicle, Position.RearAxle, Day.AddDays(7));
        Assert.Equal(1.04, Driven(Day.AddDays(6))!.Share.Value.Value, 1e-12);
        Assert.Null(Driven(Day.AddDays(7)));
    }

    // 60 km/h on 2.00 m are 8.333 wheel turns a second; at 5550 rpm in 2.22 that is an axle of 92.5/(8.333 · 2.22) = 5.00. It is 3.90, until another one is fitted.
    [Fact]
    public void A_road_test_speaks_of_the_axle_it_was_driven_with()
    {
        Fit(test.Shop.Add(new TransmissionComponent { Name = "box", Gears = TransmissionComponent.GearsFrom(Source.MakersData, "4.05", "2.22") }), Position.Transmission);
        Fit(test.Shop.Add(new WheelSetComponent { Name = "w", StatedCircumference = Noted.Length("2.00 m", Source.Measured) }), Position.Tyres);
        Fit(test.Axle("a", "3.90"), Position.RearAxle);
        Drive(Day.AddDays(-1), "5550 rpm");
        Assert.Empty(Again(Day));

        Drive(Day, "5550 rpm");
        Drive(Day.AddDays(1), "4330 rpm");
        Assert.Equal([(5.00, false), (3.90, true)], Again(Day.AddDays(1)).Select(again => (Math.Round(again.Other.Value.Value, 2), again.Agrees)).OrderDescending());
        Assert.Equal("road test of 3 May 2026", Again(Day).Single().Other.Says);

        _ = test.Shop.Fit(test.Axle("b", "4.10"), vehicle, Position.RearAxle, Day.AddDays(7));
        Assert.Empty(Again(Day.AddDays(7)));
    }

    // 4330 rpm are an axle of 3.90 on 2.00 m, and one of 4.10 on the 2.10 m that the last roll-out says.
    [Fact]
    public void A_tyre_that_nobody_knows_blames_no_axle_for_the_road_test()
    {
        Fit(test.Shop.Add(new TransmissionComponent { Name = "box", Gears = TransmissionComponent.GearsFrom(Source.MakersData, "4.05", "2.22") }), Position.Transmission);
        var tyres = test.Shop.Add(new WheelSetComponent { Name = "w" });
        Fit(tyres, Position.Tyres);
        Fit(test.Axle("a", "3.90"), Position.RearAxle);
        Drive(Day, "4330 rpm");
        RollOut(tyres, new(2026, 4, 2), loaded: true, "3:6.3m");
        Assert.False(Again(Day).Single(again => again.Position == Position.RearAxle).Agrees);

        RollOut(tyres, new(2026, 4, 1), loaded: true, "3:6m");
        Assert.True(Again(Day).Single(again => again.Position == Position.RearAxle).Agrees);
        Assert.False(Again(Day).Single(again => again.Position == Position.Tyres).Agrees);
    }

    private void Drive(DateOnly day, string engineSpeed)
        => test.Shop.Add(new RoadTest(vehicle) { Date = day, Speed = Noted.Speed("60 km/h", Source.Measured), EngineSpeed = Noted.EngineSpeed(engineSpeed, Source.Measured), Gear = "2" });

    private IReadOnlyList<MeasuredAgain> Again(DateOnly day) => test.Shop.DrivelineOn(vehicle, day).Driveline.MeasuredAgain;

    private DrivenDistance? Driven(DateOnly day) => test.Shop.DrivelineOn(vehicle, day).Driveline.Driven;

    private NumberKnown Ratio => Number(Position.RearAxle, "ratio");

    private NumberKnown Circumference => Number(Position.Tyres, "rolling circumference");

    private NumberKnown Number(Position position, string number)
        => test.Shop.DrivelineOn(vehicle, Day).Numbers.Single(known => known.Position == position && known.Number == number);

    private void Fit(Component component, Position position) => test.Shop.Fit(component, vehicle, position, Day);

    private TurnCountSession Count(AxleComponent axle, DateOnly date, string reading)
        => test.Shop.Add(new TurnCountSession(axle) { Date = date, Wheels = Wheels.OneHeld, Readings = [reading] });

    private void RollOut(WheelSetComponent tyres, DateOnly date, bool loaded, string reading = "3:6m")
        => test.Shop.Add(new RollOutSession(tyres) { Date = date, Loaded = loaded, Readings = [reading] });
}
