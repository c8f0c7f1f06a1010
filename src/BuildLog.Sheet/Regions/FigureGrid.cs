using BuildLog.Sheet.Content;
using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>Labels with their values below them, side by side in columns.</summary>
internal static class FigureGrid
{
    private static readonly TableLook Look = new()
    {
        PadX = 9,
        PadY = 4,
        ShowsHead = false,
        FirstColumnNamesRow = false,
        ColumnRules = true,
        KeepTogether = true,
    };

    public static Block Of(IReadOnlyList<LabelledLine> lines, int columns, TextStyle valueStyle, double spaceBefore = 0)
    {
        var rows = lines.Select(line => CellOf(line, valueStyle)).Chunk(columns).Select(row => Filled(row, columns));
        return new Table([.. Enumerable.Repeat(new Column("", 1), columns)], [.. rows], Look) { SpaceBefore = spaceBefore };
    }

    private static Cell CellOf(LabelledLine line, TextStyle valueStyle) =>
        new(new CellText(line.Label, TypeScale.Label), Missing.OrWords(line.Value, valueStyle));

    /// <summary>The last row has as many cells as the others.</summary>
    private static IReadOnlyList<Cell> Filled(Cell[] row, int columns) =>
        [.. row, .. Enumerable.Repeat(new Cell([]), columns - row.Length)];
}
