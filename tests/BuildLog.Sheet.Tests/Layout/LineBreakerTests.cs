using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Fonts;
using BuildLog.Sheet.Layout;

namespace BuildLog.Sheet.Tests.Layout;

public sealed class LineBreakerTests
{
    private static readonly TextStyle Style = new(SheetFonts.Regular, 10, default);

    [Fact]
    public void Lines_break_at_spaces_and_keep_them()
    {
        var width = Style.WidthOf("ten more");

        Assert.Equal(["ten more ", "turns"], LineBreaker.Lines("ten more turns", Style, width));
    }

    [Fact]
    public void A_hyphen_before_a_letter_is_a_place_to_break()
    {
        Assert.Equal(["cross-", "ply"], LineBreaker.Lines("cross-ply", Style, Style.WidthOf("cross-p")));
    }

    [Theory]
    [InlineData("a hill of 8.5 ± 1.2 %", "a hill of ", "8.5 ± 1.2 %")]
    [InlineData("turns 2928 ± 12 rev/min", "turns ", "2928 ± 12 rev/min")]
    [InlineData("uncertainty 0.15 in, k = 1.96", "uncertainty 0.15 in, ", "k = 1.96")]
    [InlineData("all together 310.00 EUR", "all together ", "310.00 EUR")]
    public void A_number_is_not_parted_from_its_unit(string text, string first, string second)
    {
        var lines = LineBreaker.Lines(text, Style, Style.WidthOf(text) - Style.WidthOf(text[^3..]));

        Assert.Equal([first, second], lines);
    }

    [Fact]
    public void A_unit_with_a_slash_and_a_range_of_numbers_stay_whole()
    {
        Assert.Equal(["2486 ", "rev/min"], LineBreaker.Lines("2486 rev/min", Style, Style.WidthOf("2486 rev/")));
        Assert.Equal(["about ", "6.00-16"], LineBreaker.Lines("about 6.00-16", Style, Style.WidthOf("about 6.00-")));
    }

    [Fact]
    public void A_word_wider_than_the_line_is_cut_and_nothing_is_lost()
    {
        var lines = LineBreaker.Lines("x " + new string('W', 50), Style, 60);

        Assert.All(lines, line => Assert.True(Style.VisibleWidthOf(line) <= 60.01));
        Assert.Equal("x " + new string('W', 50), string.Concat(lines));
    }

    [Theory]
    [InlineData("one\ntwo")]
    [InlineData("one\r\ntwo")]
    [InlineData("one\rtwo")]
    [InlineData("one\u2028two")]
    public void A_typed_line_break_is_one_line_break(string text)
    {
        Assert.Equal(["one ", "two"], LineBreaker.Lines(text, Style, 500));
    }

    [Fact]
    public void Shortened_text_ends_in_an_ellipsis_and_fits()
    {
        var shortened = LineBreaker.Shortened("Harrow Lane Restomods", Style, 50);

        Assert.EndsWith("…", shortened, StringComparison.Ordinal);
        Assert.True(Style.WidthOf(shortened) <= 50);
        Assert.Equal("Harrow", LineBreaker.Shortened("Harrow", Style, 50));
    }
}
