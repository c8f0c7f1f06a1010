using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Tests.Shell;

public sealed class TextPageTests
{
    [Theory]
    [InlineData("28.29 km/h per 1000 rev/min", 20, "28.29 km/h per 1000", "rev/min")]
    [InlineData("3. Engine off, key out", 18, "3. Engine off, key", "   out")]
    [InlineData("1 As heavy as it is driven", 18, "1 As heavy as it", "  is driven")]
    [InlineData("  · chocks at both wheels", 18, "  · chocks at both", "    wheels")]
    public void What_follows_hangs_under_the_text_past_a_mark_but_not_past_a_number_of_it(string text, int width, string first, string second)
        => Assert.Equal([first, second], TextPage.Wrap(text, width).Select(line => line.Text));
}
