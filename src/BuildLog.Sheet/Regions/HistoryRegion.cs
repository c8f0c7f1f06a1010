using BuildLog.Sheet.Content;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>What came out, what went in, and what that changed.</summary>
internal static class HistoryRegion
{
    private static readonly IReadOnlyList<Column> Columns =
    [
        new("Date", 1.15), new("Odometer", 1.1), new("Position", 1.15), new("Removed", 1.6), new("Fitted", 1.6), new("Reason", 1.6),
        new("What it changed", 1.9),
    ];

    public static Block Of(SheetContent sheet) =>
        new Section("Parts history", sheet.History.Count == 0 ? Missing.Paragraph : new Table(Columns, [.. sheet.History.Select(RowOf)]));

    private static IReadOnlyList<Cell> RowOf(HistoryRow row)
    {
        string?[] texts = [row.Date, row.Odometer, row.Position, row.Removed, row.Fitted, row.Reason, row.Effect];
        return [.. texts.Select(text => Missing.CellOf(text, TypeScale.Body))];
    }
}
