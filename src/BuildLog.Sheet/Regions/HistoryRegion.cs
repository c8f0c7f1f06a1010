using BuildLog.Sheet.Content;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>What came out, what went in, and what that changed.</summary>
internal static class HistoryRegion
{
    private static IReadOnlyList<Column> Columns =>
    [
        new(Spoken("Date"), 1.15), new(Spoken("Odometer"), 1.1), new(Spoken("Position"), 1.25), new(Spoken("Removed"), 1.6), new(Spoken("Fitted"), 1.6), new(Spoken("Reason"), 1.55),
        new(Spoken("What it changed"), 1.85),
    ];

    public static Block Of(SheetContent sheet) =>
        new Section(Spoken("Parts history"), sheet.History.Count == 0 ? Missing.Paragraph : new Table(Columns, [.. sheet.History.Select(RowOf)]));

    private static IReadOnlyList<Cell> RowOf(HistoryRow row)
    {
        string?[] texts = [row.Date, row.Odometer, row.Position, row.Removed, row.Fitted, row.Reason, row.Effect];
        return [.. texts.Select(text => Missing.CellOf(text, TypeScale.Body))];
    }
}
