using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Layout;

/// <summary>A cell's texts broken into lines.</summary>
internal sealed record CellLines(IReadOnlyList<CellLine> Lines)
{
    private const double BadgePad = 4;
    private const int MostHeadLines = 6;

    public double Height => Lines.Sum(line => line.Style.LineHeight);

    public static CellLines Of(Cell cell, double width) =>
        new([.. cell.Texts.SelectMany((text, i) => LinesOf(text, i, width))]);

    /// <summary>A column's head. It repeats on every page, so it may not grow without end.</summary>
    public static CellLines OfHead(string head, TextStyle style, double width) =>
        new([.. LineBreaker.Lines(head, style, width, MostHeadLines).Select(line => new CellLine(line, style, 0, null))]);

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
        // Several texts in a cell are paragraphs of their own: a label does not run into its value when read aloud.
        var paragraphs = Lines.GroupBy(line => line.Paragraph).ToList();
        foreach (var paragraph in paragraphs)
        {
            if (paragraphs.Count > 1) pen.Open(new TagInfo(Tag.P));
            foreach (var line in paragraph) y = DrawLine(pen, x, y, line, align, width);
            if (paragraphs.Count > 1) pen.Close();
        }
    }

    private static double DrawLine(Pen pen, double x, double y, CellLine line, Align align, double width)
    {
        var baseline = y + line.Style.BaselineDrop;
        if (line.Badge is { } badge) DrawBadge(pen, x, baseline, line, badge);
        pen.Text(line.Badge is null ? x : x + BadgePad, baseline, line.Text, line.Style, align, width);
        return y + line.Style.LineHeight;
    }

    private static IEnumerable<CellLine> LinesOf(CellText text, int paragraph, double width)
    {
        var room = text.Badge is null ? width : width - 2 * BadgePad;
        return LineBreaker.Lines(text.Text, text.Style, room)
            .Select((line, i) => new CellLine(line, text.Style, paragraph, i == 0 ? text.Badge : null));
    }

    private static void DrawBadge(Pen pen, double x, double baseline, CellLine line, Badge badge)
    {
        var rise = line.Style.CapHeight + 3;
        var box = new Box(x, baseline - rise, line.Style.VisibleWidthOf(line.Text) + 2 * BadgePad, rise + 3);
        pen.Decoration(() => pen.Frame(box, badge.Fill, badge.Line));
    }
}

internal sealed record CellLine(string Text, TextStyle Style, int Paragraph, Badge? Badge);
