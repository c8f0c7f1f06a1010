using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Tests.Shell;

public sealed class TabLineTests
{
    private static readonly string[] Eleven = ["Findings", "Speeds", "Measured", "Goal", "Swaps", "Jobs", "Options", "Wanted", "Papers", "Decisions", "Changes"];

    [Fact]
    public void Headings_that_fit_all_stand_there_with_their_digits()
    {
        var line = TabLine.For(Eleven[..3], 1, 40);

        Assert.Equal([" 1 Findings ", "[2 Speeds]", " 3 Measured "], line.Tabs.Select(tab => tab.Text));
        Assert.Equal([0, 13, 24], line.Tabs.Select(tab => tab.X));
        Assert.False(line.MoreBefore || line.MoreAfter);
    }

    [Theory]
    [InlineData(20)]
    [InlineData(61)]
    [InlineData(80)]
    [InlineData(160)]
    public void The_chosen_heading_is_always_whole_and_nothing_stands_beyond_the_width(int width)
    {
        for (var chosen = 0; chosen < Eleven.Length; chosen++)
        {
            var line = TabLine.For(Eleven, chosen, width);

            Assert.EndsWith($"{Eleven[chosen]}]", line.Tabs.Single(tab => tab.Page == chosen).Text, StringComparison.Ordinal);
            Assert.InRange(line.Tabs[^1].X + line.Tabs[^1].Text.Length, 1, line.MoreAfter ? width - TabLine.MarkWidth : width);
            Assert.Equal(line.MoreBefore, line.Tabs[0].Page > 0);
            Assert.Equal(line.MoreAfter, line.Tabs[^1].Page < Eleven.Length - 1);
        }
    }

    [Fact]
    public void The_tenth_page_has_the_0_and_the_eleventh_no_digit()
        => Assert.Equal([" 0 Decisions ", "[Changes]"], TabLine.For(Eleven, 10, 61).Tabs.TakeLast(2).Select(tab => tab.Text));

    [Fact]
    public void Digits_are_named_as_far_as_they_go()
    {
        Assert.Equal("1-5", PageDigits.Range(5));
        Assert.Equal("1-9", PageDigits.Range(9));
        Assert.Equal("1-0", PageDigits.Range(10));
        Assert.Equal("1-0 ←→", PageDigits.Range(12));
    }
}
