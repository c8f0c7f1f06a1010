using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Layout;

/// <summary>A sum below a table, at its right end; what does not fit one line wraps.</summary>
internal sealed class Total(string label, string sum) : Block
{
    private const double PadY = 2.5;

    public override IEnumerable<FlowItem> Items(double width)
    {
        var style = TypeScale.Strong;
        var lines = LineBreaker.Lines($"{label}: {sum}", style, width);
        foreach (var (i, line) in lines.Index())
        {
            yield return new FlowItem(style.LineHeight + (i == 0 ? PadY : 0), (pen, x, y) =>
                pen.Text(x, y + (i == 0 ? PadY : 0) + style.BaselineDrop, line, style, Align.Right, width))
            {
                SpaceBefore = i == 0 ? SpaceBefore : 0,
                KeepWithNext = i == 0 && lines.Count > 1,
                Opens = i == 0 ? [new TagInfo(Tag.P)] : [],
                Closes = i == lines.Count - 1 ? 1 : 0,
            };
        }
    }
}
