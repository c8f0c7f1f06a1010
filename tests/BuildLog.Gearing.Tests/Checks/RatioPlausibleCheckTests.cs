using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

public sealed class RatioPlausibleCheckTests
{
    [Fact]
    public void Usual_ratios_fit() => Assert.All(Look(InventedCar.Plain), finding => Assert.Equal((Verdict.Fits, Because.Inside), (finding.Verdict, finding.Because)));

    [Fact]
    public void Where_nothing_is_fitted_nothing_is_said() => Assert.Empty(Look(new Driveline()));

    // 1.95 is half of 3.90: the wheel that stood still.
    [Fact]
    public void An_axle_below_the_usual_is_a_watch_that_asks_after_the_wheel()
    {
        var finding = At(InventedCar.Plain with { RearAxle = InventedCar.Axle(InventedCar.Of(1.95, 0.01)) }, Position.RearAxle);

        Assert.Equal((Verdict.Watch, Because.UnverifiedLimit), (finding.Verdict, finding.Because));
        Assert.Contains("one wheel stand still", finding.Cures[0], StringComparison.Ordinal);
        Assert.Contains("3.90", finding.Cures[0], StringComparison.Ordinal);
    }

    [Fact]
    public void An_overdrive_of_one_is_asked_whether_it_was_engaged()
        => Assert.StartsWith("is 1 its ratio with the unit out?", At(InventedCar.Plain with { Overdrive = new("unit", InventedCar.Exactly(1)) }, Position.Overdrive).Cures[0], StringComparison.Ordinal);

    // Somebody's word warns, and where nobody counted no count is spoken of.
    [Theory]
    [InlineData(Source.OwnersWord)]
    [InlineData(Source.MakersData)]
    public void What_was_only_told_was_not_counted(Source source)
    {
        var finding = At(InventedCar.Plain with { RearAxle = new("axle", new(8.2, source, "8.20")) }, Position.RearAxle);

        Assert.Equal((Verdict.Watch, Because.UnverifiedLimit), (finding.Verdict, finding.Because));
        Assert.Equal("Was it once counted with both wheels turning, and taken as if one had been held? Then it is 4.10.", finding.Cures[0]);
        Assert.Equal("count it: twenty wheel turns, and note how the other wheel turned", finding.Cures[^1]);
        Assert.DoesNotContain(finding.Cures, cure => cure.Contains("the count says", StringComparison.Ordinal) || cure.Contains("once more", StringComparison.Ordinal));
    }

    // Fewer than 2.2 from teeth: nobody is asked to turn wheels.
    [Fact]
    public void Teeth_are_not_settled_by_turning_wheels()
        => Assert.DoesNotContain(At(InventedCar.Plain with { RearAxle = new("axle", new(2.1, Source.TeethCounted, "21/10")) }, Position.RearAxle).Cures, cure => cure.Contains("wheel turns", StringComparison.Ordinal));

    // However far off, the limit is only from memory.
    [Fact]
    public void No_ratio_is_so_unusual_that_it_clashes()
        => Assert.All(
            Look(new Driveline { RearAxle = InventedCar.Axle(11.9), Transmission = new("box", [InventedCar.Gear("1", 19), InventedCar.Gear("2", 18), InventedCar.Gear("3", 17)]), TransferCase = new("case", InventedCar.Exactly(5), InventedCar.Exactly(6)), Overdrive = new("unit", InventedCar.Exactly(0.99)) }),
            finding => Assert.Equal(Verdict.Watch, finding.Verdict));

    [Fact]
    public void Counted_teeth_are_not_asked_after_a_wheel()
    {
        var finding = At(InventedCar.Plain with { RearAxle = new("axle", new(8.2, Source.TeethCounted, "41/5")) }, Position.RearAxle);

        Assert.DoesNotContain(finding.Cures, cure => cure.Contains("Did", StringComparison.Ordinal));
        Assert.StartsWith("Is there a reduction in the hubs?", finding.Cures[0], StringComparison.Ordinal);
    }

    // 3.90 through hubs of 2.00 is 7.80: the differential is judged, not the product.
    [Fact]
    public void A_known_hub_reduction_is_taken_out_first()
    {
        var axle = InventedCar.Axle(7.80) with { HubReduction = new(2.00, Source.MakersData) };

        Assert.Equal(Verdict.Watch, At(InventedCar.Plain with { RearAxle = axle with { HubReduction = null } }, Position.RearAxle).Verdict);
        Assert.Equal(Verdict.Fits, At(InventedCar.Plain with { RearAxle = axle }, Position.RearAxle).Verdict);
        Assert.Equal(3.90, At(InventedCar.Plain with { RearAxle = axle }, Position.RearAxle).Value!.Value, 1e-12);
    }

    // 7.1 with u = 0.1: 6.90 to 7.30 reaches over 7.2.
    [Fact]
    public void An_axle_on_the_edge_says_what_settles_it()
    {
        var finding = At(InventedCar.Plain with { RearAxle = InventedCar.Axle(InventedCar.Of(7.1, 0.1, settle: _ => "count further")) }, Position.RearAxle);

        Assert.Equal((Verdict.Watch, Because.Uncertainty, "count further"), (finding.Verdict, finding.Because, finding.SettledBy));
    }

    [Fact]
    public void A_ratio_is_said_to_be_usual_or_not_surely_so_and_counted_once_more()
    {
        var edge = At(InventedCar.Plain with { RearAxle = InventedCar.Axle(InventedCar.Of(7.1, 0.1)) }, Position.RearAxle);
        var wide = At(InventedCar.Plain with { Overdrive = new("unit", InventedCar.Exactly(InventedCar.Of(0.9, 0.05))) }, Position.Overdrive);

        Assert.Equal("The axle ratio 4.10 is a usual one: 2.20 to 7.20.", At(InventedCar.Plain, Position.RearAxle).Says);
        Assert.StartsWith("The axle ratio 7.10 ± 0.20 may be no usual one: ", edge.Says, StringComparison.Ordinal);
        Assert.Contains("count it once more: twenty wheel turns, and note how the other wheel turned", edge.Cures);
        Assert.Contains("count it once more: ten output turns", wide.Cures);
        Assert.Empty(At(InventedCar.Plain, Position.RearAxle).Cures);
    }

    [Fact]
    public void Both_axles_of_a_four_by_four_are_judged()
        => Assert.Equal(2, Look(InventedCar.Plain with { FrontAxle = InventedCar.Axle(4.10) }).Count(finding => finding.Between[0] is Position.RearAxle or Position.FrontAxle));

    // 1/1.22 = 0.82 would be the overdrive gear it was meant to be.
    [Fact]
    public void A_gear_that_rises_is_asked_whether_it_was_written_the_other_way_round()
    {
        var box = new Transmission("five-speed", [.. InventedCar.Plain.Transmission!.Gears, InventedCar.Gear("5", 1.22)]);
        var finding = At(InventedCar.Plain with { Transmission = box }, Position.Transmission);

        Assert.Equal("Gear 5 is not faster than the gear before it.", finding.Says);
        Assert.Equal("Was gear 5 written output over input? Then it is 0.82.", finding.Cures[0]);
    }

    [Theory]
    [InlineData(1.9, 1.0, Verdict.Watch)]
    [InlineData(3.5, 1.3, Verdict.Watch)]
    [InlineData(3.5, 0.45, Verdict.Watch)]
    [InlineData(2.2, 0.50, Verdict.Fits)]
    [InlineData(7.1, 1.10, Verdict.Fits)]
    public void The_ends_of_a_gearbox_are_judged(double first, double top, Verdict verdict)
        => Assert.Equal(verdict, At(InventedCar.Plain with { Transmission = new("box", [InventedCar.Gear("1", first), InventedCar.Gear("2", 1.5), InventedCar.Gear("3", top)]) }, Position.Transmission).Verdict);

    // 1.45 + 0.45 · 1.7 … 2.7 = 2.215 … 2.665: a common three-speed's 2.45 lies in it, 2.92 does not. A clutch or counted teeth say nothing of it.
    [Theory]
    [InlineData(2.45, true, Verdict.Fits)]
    [InlineData(2.92, true, Verdict.Watch)]
    [InlineData(2.92, false, Verdict.Fits)]
    public void A_three_speed_automatic_binds_its_first_gear(double first, bool converter, Verdict verdict)
    {
        var box = new Transmission("three-speed", [InventedCar.Gear("1", first), InventedCar.Gear("2", 1.45), InventedCar.Gear("3", 1)]) { Converter = converter ? new(false) : null };
        var finding = At(InventedCar.Plain with { Transmission = box }, Position.Transmission);

        Assert.Equal(verdict, finding.Verdict);
        if (verdict == Verdict.Watch) Assert.StartsWith("Beside a second gear of 1.45 a three-speed automatic has a first of 2.22 to 2.66, not 2.92", finding.Says, StringComparison.Ordinal);
    }

    // 1.45 + 0.45 · 2.20 = 2.44: 2.45 agrees to its last digit, 2.92 would ask for a reverse of 1.47/0.45 = 3.27. Typed beside counted teeth it is held against them.
    [Theory]
    [InlineData("2.45", Source.MakersData, Verdict.Fits)]
    [InlineData("2.92", Source.MakersData, Verdict.Watch)]
    [InlineData("2.92", Source.TeethCounted, Verdict.Watch)]
    public void A_typed_reverse_binds_first_and_second(string first, Source source, Verdict verdict)
    {
        var box = new Transmission("three-speed", [Quoted("1", first) with { Ratio = Quoted("1", first).Ratio with { Source = source } }, Quoted("2", "1.45"), InventedCar.Gear("3", 1)])
        {
            Converter = new(false),
            Reverse = Quoted("R", "2.20").Ratio,
        };
        var finding = At(InventedCar.Plain with { Transmission = box }, Position.Transmission);

        Assert.Equal(verdict, finding.Verdict);
        if (verdict == Verdict.Fits) return;
        Assert.Contains("a reverse of 2.20", finding.Says, StringComparison.Ordinal);
        Assert.Contains("first = 2.44", finding.Cures[0], StringComparison.Ordinal);
        Assert.Contains("a reverse of 3.2", finding.Cures[0], StringComparison.Ordinal);
    }

    // 9.04 over 6.50 is 1.391, and 2.0 is no two-speed axle's usual step.
    [Theory]
    [InlineData(1.391, Verdict.Fits)]
    [InlineData(2.0, Verdict.Watch)]
    public void The_step_of_a_two_speed_axle_is_judged_beside_its_ratio(double step, Verdict verdict)
    {
        var axle = InventedCar.Axle(6.50) with { LowStep = InventedCar.Exactly(step) };
        var findings = Look(InventedCar.Plain with { RearAxle = axle }).Where(finding => finding.Between[0] == Position.RearAxle).ToList();

        Assert.Equal([Verdict.Fits, verdict], findings.Select(finding => finding.Verdict));
        Assert.StartsWith("The axle's low over high ratio", findings[1].Says, StringComparison.Ordinal);
    }

    // 28 % off one is 0.72; 1/1.28 = 0.78.
    [Fact]
    public void An_overdrive_sold_by_its_share_is_asked_which_share()
    {
        var finding = At(InventedCar.Plain with { Overdrive = new("unit", new(0.72, Source.Tag, "28 %")) }, Position.Overdrive);

        Assert.Equal(Verdict.Watch, finding.Verdict);
        Assert.EndsWith("It is sold as 28 %.", finding.Says, StringComparison.Ordinal);
        Assert.Equal("Is 28 % the gain in road speed rather than the drop in engine speed? Then it is 0.78.", finding.Cures[0]);
    }

    [Fact]
    public void Two_speed_boxes_are_not_judged_by_their_ends()
        => Assert.Equal(Verdict.Fits, At(InventedCar.Plain with { Transmission = new("two-speed", [InventedCar.Gear("low", 1.76), InventedCar.Gear("high", 1)]) }, Position.Transmission).Verdict);

    // Read in a service manual: 1.98 low, and 1.078 high to the front axle.
    [Fact]
    public void A_transfer_case_is_judged_in_both_ranges()
        => Assert.All(
            Look(InventedCar.Plain with { TransferCase = new("case", InventedCar.Exactly(1.078), InventedCar.Exactly(1.98)) }).Where(finding => finding.Between[0] == Position.TransferCase),
            finding => Assert.Equal(Verdict.Fits, finding.Verdict));

    public static TheoryData<Position, string> Unknown => new()
    {
        { Position.Transmission, "The gearbox ratio is not known." },
        { Position.Overdrive, "The overdrive ratio is not known." },
        { Position.TransferCase, "The transfer case's high ratio is not known." },
        { Position.RearAxle, "The axle ratio is not known." },
        { Position.FrontAxle, "The front axle ratio is not known." },
    };

    [Theory]
    [MemberData(nameof(Unknown))]
    public void A_part_without_its_number_is_open_with_the_way_to_it(Position position, string says)
    {
        var bare = new Driveline { Transmission = new("box", []), Overdrive = new("unit", null), TransferCase = new("case", null, null), RearAxle = new("rear", null), FrontAxle = new("front", null) };
        var finding = At(bare, position);

        Assert.Equal((Verdict.Open, Because.MissingInput, says), (finding.Verdict, finding.Because, finding.Says));
        Assert.NotEmpty(finding.Cures[0]);
    }

    private static List<Finding> Look(Driveline driveline) => [.. new RatioPlausibleCheck().Look(driveline, OwnersGoals.None)];

    private static Finding At(Driveline driveline, Position position) => Look(driveline).Single(finding => finding.Between.Contains(position));

    private static Gear Quoted(string name, string ratio) => new(name, new(QuotedRatio.ReadMeasured(ratio, RatioRange.Gear, $"gear {name}").OrRefuse(), Source.MakersData, ratio));
}
