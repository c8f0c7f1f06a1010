using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Layout;

/// <summary>One row, or the part of it that is on one page.</summary>
internal sealed record TableRow(TablePlaces Places, TableLook Look, FlowItem? Head, IReadOnlyList<CellLines> Cells)
{
    public FlowItem Item => new(Height, Draw) { RepeatOnNewPage = Head, Split = Split };

    private double Height => Math.Max(Look.LeastRowHeight, Cells.Max(cell => cell.Height) + 2 * Look.PadY);

    private FlowSplit? Split(double available)
    {
        var room = available - 2 * Look.PadY;
        var counts = Cells.Select(cell => cell.CountWithin(room)).ToList();
        var nothingFits = counts.All(count => count == 0);
        var everythingFits = Cells.Zip(counts).All(pair => pair.First.Lines.Count == pair.Second);
        if (nothingFits || everythingFits) return null;

        var above = Cells.Zip(counts, (cell, count) => new CellLines([.. cell.Lines.Take(count)])).ToList();
        var below = Cells.Zip(counts, (cell, count) => new CellLines([.. cell.Lines.Skip(count)])).ToList();
        return new FlowSplit((this with { Cells = above }).Item, (this with { Cells = below }).Item);
    }

    private void Draw(Pen pen, double x, double y)
    {
        pen.Decoration(() => DrawRules(pen, x, y));
        pen.Tagged(new TagInfo(Tag.TR), () =>
        {
            foreach (var (c, cell) in Cells.Index())
            {
                var place = Places.Columns[c];
                pen.Tagged(TagOf(c), () =>
                    cell.Draw(pen, x + place.TextLeft, y + Look.PadY, place.Align, place.TextWidth));
            }
        });
    }

    private TagInfo TagOf(int column) =>
        Look.FirstColumnNamesRow && column == 0 ? new TagInfo(Tag.TH, HeadScope.Row) : new TagInfo(Tag.TD);

    private void DrawRules(Pen pen, double x, double y)
    {
        var bottom = y + Height;
        if (Look.WritingGap > 0)
            foreach (var place in Places.Columns.Skip(1)) pen.Line(x + place.Left + Look.WritingGap, bottom, x + place.Right, bottom, Ink.WritingLine);
        else
            pen.Line(x, bottom, x + Places.Width, bottom, Ink.HairLine);

        if (!Look.ColumnRules) return;

        foreach (var (place, cell) in Places.Columns.Zip(Cells).Skip(1).Where(pair => pair.Second.Lines.Count > 0))
            pen.Line(x + place.Left, y + Look.PadY, x + place.Left, bottom - Look.PadY, Ink.HairLine);
    }
}
