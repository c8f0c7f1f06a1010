using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Layout;

/// <summary>A washed box with a bar at its left edge, around paragraphs and bullets; it may run over page ends.</summary>
internal sealed class Panel(params IReadOnlyList<Block> blocks) : Block
{
    private const double Bar = 3;
    private const double PadX = 10;
    private const double PadY = 5;

    public bool Outlined { get; init; }

    public override IEnumerable<FlowItem> Items(double width)
    {
        var inside = blocks.SelectMany(block => block.Items(width - Bar - 2 * PadX)).ToList();
        for (var i = 0; i < inside.Count; i++)
            yield return Boxed(inside[i], width, i == 0, i == inside.Count - 1);
    }

    private FlowItem Boxed(FlowItem item, double width, bool first, bool last)
    {
        // The space before an item is inside the box, so it becomes part of the item's height.
        var above = first ? PadY : item.SpaceBefore;
        var height = above + item.Height + (last ? PadY : 0);
        return item with
        {
            Height = height,
            SpaceBefore = first ? SpaceBefore : 0,
            Draw = (pen, x, y) =>
            {
                pen.Decoration(() => DrawSlice(pen, new Box(x, y, width, height), first, last));
                item.Draw(pen, x + Bar + PadX, y + above);
            },
        };
    }

    private void DrawSlice(Pen pen, Box slice, bool first, bool last)
    {
        pen.Fill(slice, Ink.Wash);
        pen.Fill(slice with { Width = Bar }, Ink.Accent);
        if (!Outlined) return;

        pen.Line(slice.Right, slice.Y, slice.Right, slice.Bottom, Ink.AccentLine);
        if (first) pen.Line(slice.X, slice.Y, slice.Right, slice.Y, Ink.AccentLine);
        if (last) pen.Line(slice.X, slice.Bottom, slice.Right, slice.Bottom, Ink.AccentLine);
    }
}
