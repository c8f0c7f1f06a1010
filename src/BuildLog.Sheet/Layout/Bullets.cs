using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Layout;

/// <summary>A list of short texts, each with a bullet in the margin of its first line.</summary>
internal sealed class Bullets(IReadOnlyList<string> texts, TextStyle style) : Block
{
    private const double Indent = 10;
    private const double Gap = 2.5;

    public override IEnumerable<FlowItem> Items(double width)
    {
        for (var t = 0; t < texts.Count; t++)
        {
            var lines = LineBreaker.Lines(texts[t], style, width - Indent);
            for (var i = 0; i < lines.Count; i++)
            {
                var (line, first, last) = (lines[i], i == 0, i == lines.Count - 1);
                yield return new FlowItem(style.LineHeight, (pen, x, y) =>
                {
                    var baseline = y + style.BaselineDrop;
                    if (first) pen.Text(x, baseline, "•", style);
                    pen.Text(x + Indent, baseline, line, style);
                })
                {
                    SpaceBefore = !first ? 0 : t == 0 ? SpaceBefore : Gap,
                    KeepWithNext = first && !last,
                    Opens = !first ? [] : t == 0 ? [new(Tag.L), new(Tag.LI), new(Tag.LBody)] : [new(Tag.LI), new(Tag.LBody)],
                    Closes = !last ? 0 : t == texts.Count - 1 ? 3 : 2,
                };
            }
        }
    }
}
