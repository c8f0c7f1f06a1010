using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Layout;

/// <summary>Something drawn, with words for those who cannot see it.</summary>
internal sealed record Plate(string AlternativeText, Action<Pen, Box> Draw)
{
    public void Place(Pen pen, Box box) =>
        pen.Tagged(new TagInfo(Tag.Figure, AlternativeText: AlternativeText, Bounds: box), () => Draw(pen, box));
}
