using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

public sealed class TagCheckTests
{
    // 29/19 · 31/14 = 3.3797: the sheet's 3.32 is another box's.
    [Fact]
    public void A_typed_gear_is_held_against_its_teeth()
    {
        var first = new Gear("1", new(3.3797, Source.TeethCounted, "29/19 x 31/14")) { Quoted = Quoted(3.32) };
        var fourth = new Gear("4", new(1, Source.TeethCounted, "direct")) { Quoted = Quoted(1) };
        var apart = Assert.Single(new TagCheck().Look(new Driveline { Transmission = new("box", [first, fourth]) }, OwnersGoals.None));

        Assert.Equal((Verdict.Watch, Position.Transmission), (apart.Verdict, Assert.Single(apart.Between)));
        Assert.StartsWith("Gear 1: The maker's 3.32 does not agree with 3.380", apart.Says, StringComparison.Ordinal);
        Assert.Equal(["strike the 3.32 of gear 1 off: the teeth are exact"], apart.Cures);
        Assert.Equal(Verdict.Fits, Assert.Single(new TagCheck().Look(new Driveline { Transmission = new("box", [fourth]) }, OwnersGoals.None)).Verdict);
    }

    // A count is doubtful where teeth are not: it is done again. What was said without a word of evidence is called by its number.
    [Fact]
    public void A_gear_that_was_only_counted_is_counted_again()
    {
        var counted = new Gear("1", new(InventedCar.Of(3.40, 0.01, "count"), Source.Measured)) { Quoted = new(3.32, Source.MakersData) };
        var teeth = counted with { Ratio = new(3.40, Source.TeethCounted) };

        Assert.Equal(["count gear 1 again over ten output turns, or its teeth"], Cures(counted));
        Assert.Equal(["strike the 3.32 of gear 1 off: the teeth are exact"], Cures(teeth));

        static IEnumerable<string> Cures(Gear gear) => Assert.Single(new TagCheck().Look(new Driveline { Transmission = new("box", [gear]) }, OwnersGoals.None)).Cures;
    }

    // R 78, S 22: 78/100 = 0.78.
    [Fact]
    public void An_overdrive_is_held_against_its_teeth()
        => Assert.Equal(Verdict.Watch, Assert.Single(new TagCheck().Look(new Driveline { Overdrive = new("unit", new(0.78, Source.TeethCounted)) { Quoted = Quoted(0.70) } }, OwnersGoals.None)).Verdict);

    private static Known Quoted(double ratio)
        => new(InventedCar.Of(ratio, 0.003, "last digit"), Source.MakersData, FormattableString.Invariant($"{ratio:0.00}"));

    private static readonly Known Counted = new(InventedCar.Of(4.74, 0.0154, "count"), Source.Measured, "count of 3 May");

    [Fact]
    public void A_tag_that_agrees_with_the_count_fits()
    {
        var finding = Find(Counted, Tag("4.77"));

        Assert.Equal((Verdict.Fits, Because.Inside), (finding.Verdict, finding.Because));
        Assert.Equal("The tag's 4.77 agrees with 4.74 ± 0.04 (measured).", finding.Says);
        Assert.Empty(finding.Cures);
    }

    [Fact]
    public void A_tag_that_does_not_is_a_watch_never_a_clash_and_the_teeth_decide()
    {
        var finding = Find(Counted, Tag("3.90"));

        Assert.Equal((Verdict.Watch, Because.UnverifiedLimit), (finding.Verdict, finding.Because));
        Assert.StartsWith("The tag's 3.90 does not agree with 4.74 ± 0.04 (measured).", finding.Says, StringComparison.Ordinal);
        Assert.Equal(["count the teeth: they decide between 3.90 and 4.74"], finding.Cures);
    }

    // 2.05 counted is half of the tag's 4.10, 8.20 twice: the forgotten wheel.
    [Theory]
    [InlineData(2.05, "Did one wheel stand still")]
    [InlineData(8.20, "Did both wheels turn")]
    public void A_count_of_half_or_twice_the_tag_asks_after_the_wheel(double counted, string asks)
        => Assert.StartsWith(asks, Find(Counted with { Value = InventedCar.Of(counted, 0.01) }, Tag("4.10")).Cures[0], StringComparison.Ordinal);

    // 9.04 over 6.50 is 1.391, a two-speed axle's step; 4.74 over 3.90 is not.
    [Theory]
    [InlineData(9.04, "6.50")]
    [InlineData(6.50, "9.04")]
    public void A_two_speed_axle_counted_in_its_other_speed_is_asked_about(double counted, string tag)
        => Assert.Equal(
            "Is it a two-speed axle, one told in low and one in high? The step would be 1.391.",
            Find(Counted with { Value = InventedCar.Of(counted, 0.01) }, Tag(tag)).Cures[0]);

    [Fact]
    public void Counted_teeth_strike_the_tag_off()
        => Assert.Equal(["strike the 3.90 off: the teeth are exact"], Find(new(new Teeth(43, 9).ToMeasured(), Source.TeethCounted, "43/9"), Tag("3.90")).Cures);

    [Fact]
    public void A_tag_that_nobody_counted_against_is_open()
    {
        var finding = Find(Tag("3.90"), null);

        Assert.Equal((Verdict.Open, Because.MissingInput), (finding.Verdict, finding.Because));
        Assert.StartsWith("count the axle's turns", finding.Cures[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_tag_or_an_axle_nothing_is_said()
    {
        Assert.Empty(new TagCheck().Look(InventedCar.Plain, OwnersGoals.None));
        Assert.Empty(new TagCheck().Look(new Driveline(), OwnersGoals.None));
        Assert.Empty(new TagCheck().Look(new Driveline { RearAxle = new("axle", null) }, OwnersGoals.None));
    }

    [Fact]
    public void Each_axle_has_its_own_tag()
    {
        var axle = new Axle("axle", Counted) { Quoted = Tag("3.90") };
        var findings = new TagCheck().Look(new Driveline { RearAxle = axle, FrontAxle = axle }, OwnersGoals.None);

        Assert.Equal([Position.RearAxle, Position.FrontAxle], findings.Select(finding => Assert.Single(finding.Between)));
    }

    private static Known Tag(string text) => new(QuotedRatio.Read(text, RatioRange.Axle).OrRefuse().ToMeasured("axle"), Source.Tag, text);

    private static Finding Find(Known ratio, Known? quoted)
        => Assert.Single(new TagCheck().Look(InventedCar.Plain with { RearAxle = new("axle", ratio) { Quoted = quoted } }, OwnersGoals.None));
}
