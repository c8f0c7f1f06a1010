using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Layout;

/// <summary>A drawing of fixed height with words for those who cannot see it.</summary>
internal sealed class Picture(double height, string alternativeText, Action<Pen, Box> draw) : Block
{
    public override IEnumerable<FlowItem> Items(double width)
    {
        yield return new FlowItem(height, (pen, x, y) =>
        {
            var box = new Box(x, y, width, height);
            pen.Tagged(new TagInfo(Tag.Figure, AlternativeText: alternativeText, Bounds: box), () => draw(pen, box));
        })
        {
            SpaceBefore = SpaceBefore,
        };
    }
}
