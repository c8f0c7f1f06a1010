using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Tests.Shell;

public sealed class TextFitTests
{
    [Theory]
    [InlineData("Marlin straight six", 10, "Marlin st…")]
    [InlineData("short", 10, "short")]
    [InlineData("日本の車", 5, "日本…")]
    [InlineData("anything", 0, "")]
    public void Cutting_counts_cells_and_shows_an_ellipsis(string text, int cells, string expected) => Assert.Equal(expected, TextFit.Cut(text, cells));

    [Fact]
    public void Exactly_fills_up_at_the_side_that_is_asked_for()
    {
        Assert.Equal("4.08  ", TextFit.Exactly("4.08", 6));
        Assert.Equal("  4.08", TextFit.Exactly("4.08", 6, right: true));
    }

    [Fact]
    public void Wrapping_keeps_the_indent_and_hangs_what_follows() =>
        Assert.Equal(["  one two", "    three"], TextFit.Wrap("  one two three", 10, hang: 4));

    [Fact]
    public void Control_characters_become_spaces() => Assert.Equal(" [31mred ", TextFit.Exactly("\e[31mred\a", 9));
}
