using BuildLog.Gearing.Measurements;
using BuildLog.Sheet.Papers.Cards;
using BuildLog.Tui.Bench;
using BuildLog.Tui.YardCards;

namespace BuildLog.Tui.Tests.YardCards;

public sealed class CardBlanksTests
{
    private static readonly IReadOnlyList<CardBlank> Blanks = [new("bolt circle", "mm", "wheels 5 x 114.3 mm"), new("teeth, ring / pinion")];

    [Fact]
    public void A_must_have_stands_at_the_line_it_is_about()
        => Assert.Equal(new("bolt circle", "mm", "must 5 × 120"), CardBlanks.With(Blanks, [new("Bolt circle", "5 × 120")])[0]);

    // Half a millimetre over √3, and half a hundredth: as it was read.
    [Theory]
    [InlineData("1070 mm", 1.07, 0.000289)]
    [InlineData("15.05 mm", 0.01505, 0.00000289)]
    public void A_length_to_match_has_the_figures_that_hold(string words, double metres, double uncertainty)
        => Assert.Equal(words, CardBlanks.Length(new(Measured.From(metres, new Input("length", uncertainty, new("length", _ => "measure it again"))), Source.Measured, words), UnitSystem.Metric));

    [Fact]
    public void A_must_have_of_its_own_gets_a_line_of_its_own()
        => Assert.Equal([.. Blanks, new("drain plug", "", "must be there")], CardBlanks.With(Blanks, [new("drain plug", "be there")]));

    [Fact]
    public void The_neighbour_counts_before_the_part_that_goes()
    {
        Assert.Equal("springs 1070 mm", CardBlanks.Matching(("springs", "1070 mm"), ("ours", "1068 mm")));
        Assert.Equal("ours 1068 mm", CardBlanks.Matching(("springs", null), ("ours", "1068 mm")));
        Assert.Equal("", CardBlanks.Matching(("springs", null)));
    }
}
