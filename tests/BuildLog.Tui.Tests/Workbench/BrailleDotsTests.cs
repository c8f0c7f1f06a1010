using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Tests.Workbench;

public sealed class BrailleDotsTests
{
    // Unicode 15, chapter 21.1: dots 1 2 3 7 run down the left, 4 5 6 8 down the right; dot n is bit n-1 over U+2800.
    [Theory]
    [InlineData(0, 1, '⠁')]
    [InlineData(1, 1, '⠈')]
    [InlineData(0, 0, '⡀')]
    [InlineData(1, 0, '⢀')]
    public void A_corner_of_one_cell_sets_its_braille_dot(double x, double y, char expected)
    {
        var dots = new BrailleDots(1, 1);
        dots.Plot(x, y);
        Assert.Equal(expected.ToString(), dots.Row(0));
    }

    [Fact]
    public void A_full_diagonal_touches_both_ends()
    {
        var dots = new BrailleDots(4, 2);
        dots.Line(0, 0, 1, 1);
        Assert.Equal('⠈', (char)(dots.Row(0)[^1] & '⠈'));
        Assert.Equal('⡀', (char)(dots.Row(1)[0] & '⡀'));
        Assert.Equal(' ', dots.Row(0)[0]);
    }

    [Fact]
    public void What_lies_outside_is_left_out()
    {
        var dots = new BrailleDots(2, 1);
        dots.Plot(1.5, 0.5);
        dots.Plot(0.5, -0.5);
        Assert.Equal("  ", dots.Row(0));
    }
}
