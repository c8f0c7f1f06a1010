using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Paper;

/// <summary>The sheet's colours: one accent, dark enough to stay black on a black-and-white printer, and greys.</summary>
internal static class Ink
{
    public static readonly Colour Text = Colour.Hex(0x1B2329);
    public static readonly Colour Quiet = Colour.Hex(0x56626B);
    public static readonly Colour Accent = Colour.Hex(0x0E4A5C);
    public static readonly Colour Rule = Colour.Hex(0xC3CCD2);
    public static readonly Colour Wash = Colour.Hex(0xF0F4F5);
    public static readonly Colour White = Colour.Hex(0xFFFFFF);

    public static readonly Stroke HairLine = new(Rule, 0.4);
    public static readonly Stroke WritingLine = new(Quiet, 0.6);
    public static readonly Stroke AccentLine = new(Accent, 0.9);
}
