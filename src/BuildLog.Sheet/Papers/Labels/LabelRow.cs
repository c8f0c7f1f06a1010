using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Papers.Labels;

/// <summary>Labels beside each other, each in its cutting line, read aloud as one list.</summary>
internal sealed class LabelRow(IReadOnlyList<ShelfLabel> labels, int columns, bool first, bool last) : Block
{
    private const double Height = 88;
    private const double Pad = 8;
    private const int MostNameLines = 2;

    private static readonly Stroke Cut = new(Ink.Rule, 0.6, 3, 3);

    public override IEnumerable<FlowItem> Items(double width)
    {
        var each = width / columns;
        yield return new FlowItem(Height, (pen, x, y) =>
        {
            foreach (var (i, label) in labels.Index())
            {
                var box = new Box(x + i * each, y, each, Height);
                pen.Decoration(() => pen.Frame(box, null, Cut));
                pen.Tagged(new TagInfo(Tag.LI), () => pen.Tagged(new TagInfo(Tag.LBody), () => Draw(pen, box, label)));
            }
        })
        {
            SpaceBefore = SpaceBefore,
            Opens = first ? [new TagInfo(Tag.L)] : [],
            Closes = last ? 1 : 0,
        };
    }

    private static void Draw(Pen pen, Box box, ShelfLabel label)
    {
        double x = box.X + Pad, y = box.Y + Pad - 2, room = box.Width - 2 * Pad, bottom = box.Bottom - Pad + 2;
        Line(PartCode.Of(label.Part), TypeScale.PartCode);
        foreach (var line in LineBreaker.Lines(label.Name, TypeScale.Strong, room, MostNameLines)) Line(line, TypeScale.Strong);
        foreach (var line in label.Lines.Where(_ => y + TypeScale.Label.LineHeight <= bottom)) Line(LineBreaker.Shortened(line, TypeScale.Label, room), TypeScale.Label);

        void Line(string text, TextStyle style)
        {
            // The space keeps the label's lines apart when they are read aloud or copied.
            pen.Text(x, y + style.BaselineDrop, text + " ", style);
            y += style.LineHeight;
        }
    }
}
