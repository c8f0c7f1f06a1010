using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;

namespace BuildLog.Sheet.Regions;

/// <summary>Values with their labels, side by side in columns of one width.</summary>
internal static class FigureGrid
{
    private const double LeastWidth = 70;                  // for the labels
    private const double MostWidth = 150;                  // what is longer wraps

    private static readonly TableLook Look = new()
    {
        PadX = 9,
        PadY = 3.5,
        ShowsHead = false,
        FirstColumnNamesRow = false,
        ColumnRules = true,
        KeepTogether = true,
    };

    /// <summary>As few rows as the columns allow, filled alike.</summary>
    public static Table Evenly(IReadOnlyList<Cell> cells, int mostColumns, double spaceBefore = 0)
    {
        var rows = (cells.Count + mostColumns - 1) / mostColumns;
        return Of(cells, (cells.Count + rows - 1) / rows, spaceBefore);
    }

    /// <summary>Each column as wide as what stands in it first needs, so that no number breaks while its neighbour has room.</summary>
    public static Table Fitting(IReadOnlyList<Cell> cells, int columns)
    {
        var shares = Enumerable.Range(0, columns).Select(c => Math.Max(
            LeastWidth, cells.Where((_, i) => i % columns == c).Max(cell => cell.Texts[0].Style.VisibleWidthOf(PlainText.Line(cell.Texts[0].Text)))));
        return new Table([.. shares.Select(share => new Column("", Math.Min(MostWidth, share) + 2 * Look.PadX))], Rows(cells, columns), Look);
    }

    public static Table Of(IEnumerable<Cell> cells, int columns, double spaceBefore = 0)
        => new([.. Enumerable.Repeat(new Column("", 1), columns)], Rows(cells, columns), Look) { SpaceBefore = spaceBefore };

    private static IReadOnlyList<IReadOnlyList<Cell>> Rows(IEnumerable<Cell> cells, int columns) => [.. cells.Chunk(columns).Select(row => Filled(row, columns))];

    /// <summary>The last row has as many cells as the others.</summary>
    private static IReadOnlyList<Cell> Filled(Cell[] row, int columns) =>
        [.. row, .. Enumerable.Repeat(new Cell([]), columns - row.Length)];
}
