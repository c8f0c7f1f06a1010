using BuildLog.Sheet.Content;
using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Layout;

/// <summary>Something drawn, with words for those who cannot see it.</summary>
/// <param name="AlternativeText">The words.</param>
/// <param name="Draw">Draws it on paper.</param>
/// <param name="Chart">The numbers it is drawn from; null for a photo.</param>
internal sealed record Plate(string AlternativeText, Action<Pen, Box> Draw, Chart? Chart = null)
{
    public void Place(Pen pen, Box box) =>
        pen.Tagged(new TagInfo(Tag.Figure, AlternativeText: AlternativeText, Bounds: box, Chart: Chart), () => Draw(pen, box));
}
