using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Layout;

/// <summary>A table whose head repeats on every page and whose tall rows split between lines.</summary>
internal sealed class Table(IReadOnlyList<Column> columns, IReadOnlyList<IReadOnlyList<Cell>> rows, TableLook? look = null) : Block
{
    private readonly TableLook look = look ?? new TableLook();

    public override IEnumerable<FlowItem> Items(double width)
    {
        var places = TablePlaces.Of(columns, width, look.PadX);
        var head = look.ShowsHead ? TableHead(places) : null;
        if (head is not null)
        {
            yield return head with
            {
                SpaceBefore = SpaceBefore,
                KeepWithNext = true,
                Draw = (pen, x, y) => TableHeadRow.Draw(pen, x, y, places, HeadLines(places), repeated: false),
                Opens = [new TagInfo(Tag.Table), new TagInfo(Tag.THead)],
                Closes = 1,
            };
        }

        for (var r = 0; r < rows.Count; r++)
        {
            var (first, last) = (r == 0, r == rows.Count - 1);
            var lines = rows[r].Select((cell, c) => CellLines.Of(cell, places.Columns[c].TextWidth)).ToList();
            yield return new TableRow(places, look, head, lines).Item with
            {
                SpaceBefore = first && head is null ? SpaceBefore : 0,
                // Two rows stay together at either end of a page.
                KeepWithNext = !last && (look.KeepTogether || first || r == rows.Count - 2),
                Opens = !first ? [] : head is null ? [new(Tag.Table), new(Tag.TBody)] : [new(Tag.TBody)],
                Closes = last ? 2 : 0,
            };
        }
    }

    private FlowItem TableHead(TablePlaces places)
    {
        var lines = HeadLines(places);
        return new FlowItem(TableHeadRow.HeightOf(lines), (pen, x, y) => TableHeadRow.Draw(pen, x, y, places, lines, repeated: true));
    }

    private List<CellLines> HeadLines(TablePlaces places) =>
        [.. columns.Select((column, c) => CellLines.OfHead(column.Head, look.Head, places.Columns[c].TextWidth))];
}
