using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>The filled band that opens the first page.</summary>
internal sealed class TitleBand(string left, string right) : Block
{
    private const double Height = 19;
    private const double Pad = 8;
    private const double WidestShare = 0.6;

    public override IEnumerable<FlowItem> Items(double width)
    {
        var style = TypeScale.Band;
        yield return new FlowItem(Height, (pen, x, y) =>
        {
            pen.Decoration(() => pen.Fill(new Box(x, y, width, Height), Ink.Accent));
            var baseline = y + (Height + style.CapHeight) / 2;
            pen.Tagged(new TagInfo(Tag.P), () => pen.Text(x + Pad, baseline, left, style));
            pen.Tagged(new TagInfo(Tag.P), () =>
                pen.Text(x, baseline, LineBreaker.Shortened(right, style, width * WidestShare), style, Align.Right, width - Pad));
        });
    }
}
