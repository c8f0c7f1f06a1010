using BuildLog.Sheet.Fonts;

namespace BuildLog.Sheet.Drawing;

/// <summary>How text looks: fonts, size in points, colour, and the line height as a multiple of the size.</summary>
internal sealed record TextStyle(FontStack Fonts, double Size, Colour Colour, double Leading = 1.32)
{
    public double LineHeight => Size * Leading;

    /// <summary>From the top of a line to its baseline, the letters being centred in the line.</summary>
    public double BaselineDrop
    {
        get
        {
            var (ascent, descent) = (Fonts.Primary.Ascent * Size, Fonts.Primary.Descent * Size);
            return (LineHeight - ascent - descent) / 2 + ascent;
        }
    }

    public double CapHeight => Fonts.Primary.CapHeight * Size;

    /// <summary>The width without the spaces at the end, which show nothing.</summary>
    public double VisibleWidthOf(string text) => WidthOf(text.TrimEnd(' '));

    public double WidthOf(string text) => Fonts.Width(text, Size);
}

internal enum Align
{
    Left,
    Right,
    Centre,
}
