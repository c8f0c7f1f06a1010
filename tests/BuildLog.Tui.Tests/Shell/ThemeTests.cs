using BuildLog.Tui.Shell;
using Terminal.Gui.Drawing;

namespace BuildLog.Tui.Tests.Shell;

public sealed class ThemeTests
{
    [Theory]
    [InlineData(null, null, false)]
    [InlineData(null, "15;0", false)]
    [InlineData(null, "0;15", true)]
    [InlineData(null, "0;default;7", true)]
    [InlineData("dark", "0;15", false)]
    [InlineData("light", null, true)]
    public void A_bright_terminal_or_its_owner_asks_for_the_light_theme(string? asked, string? colours, bool light)
        => Assert.Equal(light, Theme.IsLight(name => name == "BUILDLOG_THEME" ? asked : colours));

    // WCAG 2.1, 1.4.3: text needs a contrast of 4.5 to 1.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Words_stand_out_from_their_ground(bool light)
    {
        var palette = Theme.PaletteFor(noColour: false, manyColours: true, light);
        var texts = Enum.GetValues<Tone>().Select(palette.Of).Concat([palette.Cursor, palette.Chosen, palette.Field, palette.FieldFocused, palette.Bar, palette.BarKey]);
        Assert.All(texts, text => Assert.True(Contrast(text.Foreground, text.Background) >= 4.5, $"{text} has {Contrast(text.Foreground, text.Background):0.0}"));
    }

    [Fact]
    public void No_colour_means_none_at_all()
    {
        var palette = Theme.PaletteFor(noColour: true, manyColours: true, light: true);
        Assert.All(Enum.GetValues<Tone>().Select(palette.Of), text => Assert.Equal((Color.None, Color.None), (text.Foreground, text.Background)));
    }

    private static double Contrast(Color one, Color other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(Color colour) => (0.2126 * Linear(colour.R)) + (0.7152 * Linear(colour.G)) + (0.0722 * Linear(colour.B));

    private static double Linear(byte channel)
    {
        var share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
    }
}
