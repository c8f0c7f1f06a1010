using BuildLog.Sheet.Layout;

namespace BuildLog.Sheet.Regions;

/// <summary>Values with their labels, side by side in columns of one width.</summary>
internal static class FigureGrid
{
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

    public static Table Of(IEnumerable<Cell> cells, int columns, double spaceBefore = 0)
    {
        var rows = cells.Chunk(columns).Select(row => Filled(row, columns));
        return new Table([.. Enumerable.Repeat(new Column("", 1), columns)], [.. rows], Look) { SpaceBefore = spaceBefore };
    }

    /// <summary>The last row has as many cells as the others.</summary>
    private static IReadOnlyList<Cell> Filled(Cell[] row, int columns) =>
        [.. row, .. Enumerable.Repeat(new Cell([]), columns - row.Length)];
}
