using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Layout;

/// <summary>Wrapped text; at least two of its lines stay together at either end of a page.</summary>
internal sealed class Paragraph(string text, TextStyle style) : Block
{
    public Tag Tag { get; init; } = Tag.P;

    /// <summary>The level of its entry in the outline; none for ordinary text.</summary>
    public int? BookmarkLevel { get; init; }

    public bool KeepWithNext { get; init; }

    public override IEnumerable<FlowItem> Items(double width)
    {
        var lines = LineBreaker.Lines(text, style, width);
        for (var i = 0; i < lines.Count; i++)
        {
            var (line, first, last) = (lines[i], i == 0, i == lines.Count - 1);
            yield return new FlowItem(style.LineHeight, (pen, x, y) =>
            {
                if (first && BookmarkLevel is { } level) pen.Bookmark(level, text, y);
                pen.Text(x, y + style.BaselineDrop, line, style);
            })
            {
                SpaceBefore = first ? SpaceBefore : 0,
                KeepWithNext = KeepWithNext || (first && !last) || i == lines.Count - 2,
                Opens = first ? [new TagInfo(Tag)] : [],
                Closes = last ? 1 : 0,
            };
        }
    }
}
