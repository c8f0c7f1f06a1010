using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Layout;

/// <summary>A cell's texts broken into lines.</summary>
internal sealed record CellLines(IReadOnlyList<CellLine> Lines)
{
    private const double BadgePad = 4;

    public double Height => Lines.Sum(line => line.Style.LineHeight);

    public static CellLines Of(Cell cell, double width) =>
        new([.. cell.Texts.SelectMany(text => LinesOf(text, width))]);

    /// <summary>How many lines from the top fit a height.</summary>
    public int CountWithin(double height)
    {
        var count = 0;
        foreach (var line in Lines)
        {
            height -= line.Style.LineHeight;
            if (height < 0) break;
            count++;
        }

        return count;
    }

    public void Draw(Pen pen, double x, double y, Align align, double width)
    {
        foreach (var line in Lines)
        {
            var baseline = y + line.Style.BaselineDrop;
            if (line.Badge is { } badge) DrawBadge(pen, x, baseline, line, badge);
            pen.Text(line.Badge is null ? x : x + BadgePad, baseline, line.Text, line.Style, align, width);
            y += line.Style.LineHeight;
        }
    }

    private static IEnumerable<CellLine> LinesOf(CellText text, double width)
    {
        var room = text.Badge is null ? width : width - 2 * BadgePad;
        return LineBreaker.Lines(text.Text, text.Style, room)
            .Select((line, i) => new CellLine(line, text.Style, i == 0 ? text.Badge : null));
    }

    private static void DrawBadge(Pen pen, double x, double baseline, CellLine line, Badge badge)
    {
        var rise = line.Style.CapHeight + 3;
        var box = new Box(x, baseline - rise, line.Style.WidthOf(line.Text) + 2 * BadgePad, rise + 3);
        pen.Decoration(() => pen.Frame(box, badge.Fill, badge.Line));
    }
}

internal sealed record CellLine(string Text, TextStyle Style, Badge? Badge);
