using BuildLog.Tui.Shell;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Tests.Workbench;

public sealed class WindowBarTests
{
    [Fact]
    public void A_clash_lies_wholly_beside_the_window()
    {
        var (number, wanted) = Draw(new WindowBar(3600, 3650, 3700, 2500, 3000, ""));
        Assert.True(number.IndexOf('├', StringComparison.Ordinal) > wanted.IndexOf('┤', StringComparison.Ordinal));
    }

    [Fact]
    public void A_fit_lies_wholly_above_the_window()
    {
        var (number, wanted) = Draw(new WindowBar(2700, 2750, 2800, 2500, 3000, ""));
        Assert.True(number.IndexOf('├', StringComparison.Ordinal) > wanted.IndexOf('├', StringComparison.Ordinal));
        Assert.True(number.IndexOf('┤', StringComparison.Ordinal) < wanted.IndexOf('┤', StringComparison.Ordinal));
    }

    [Fact]
    public void An_open_side_runs_out_of_the_picture()
    {
        var (_, wanted) = Draw(new WindowBar(2850, 2900, 2950, null, 3100, ""));
        Assert.StartsWith("wanted  ◄─", wanted, StringComparison.Ordinal);
    }

    [Fact]
    public void A_value_known_exactly_is_one_dot()
    {
        var (number, _) = Draw(new WindowBar(2900, 2900, 2900, 2500, 3100, ""));
        Assert.Equal("●", number["number  ".Length..].Trim());
    }

    [Theory]
    [InlineData(20)]
    [InlineData(58)]
    [InlineData(200)]
    public void The_picture_stays_within_its_width(int width)
    {
        var lines = WindowBarText.Of(new WindowBar(3600, 3650, 3700, 2500, 3000, ""), Tone.Clash, width);
        Assert.All(lines.Take(2), line => Assert.InRange(line.Text.Length, 1, width));
    }

    private static (string Number, string Wanted) Draw(WindowBar bar)
    {
        var lines = WindowBarText.Of(bar, Tone.Clash, 58);
        return (lines[0].Text, lines[1].Text);
    }
}
