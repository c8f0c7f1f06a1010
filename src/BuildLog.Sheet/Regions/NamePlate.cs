using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>Stands where a photo could not be printed.</summary>
internal static class NamePlate
{
    public const double Height = 46;

    private static readonly Stroke Edge = new(Ink.Rule, 0.8, 3, 2);

    public static void Place(Pen pen, Box box, string name)
    {
        var style = TypeScale.Missing;
        var line = LineBreaker.Shortened(Spoken($"{name}: could not be printed"), style, box.Width - 8);
        pen.Decoration(() => pen.Frame(box, null, Edge));
        pen.Tagged(new TagInfo(Tag.P), () => pen.Text(box.X, box.Y + (box.Height + style.CapHeight) / 2, line, style, Align.Centre, box.Width));
    }
}
