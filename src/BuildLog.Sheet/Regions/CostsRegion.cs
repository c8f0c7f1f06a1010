using BuildLog.Sheet.Content;
using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>What was paid, receipt by receipt, and the sum in each currency.</summary>
internal static class CostsRegion
{
    private static IReadOnlyList<Column> Columns =>
        [new(Spoken("Date"), 1), new(Spoken("What for"), 3), new(Spoken("From"), 1.7), new(Spoken("Receipt"), 1.1), new(Spoken("Amount"), 1.1, Align.Right)];

    /// <summary>Nothing where nobody asked for costs.</summary>
    public static Block? Of(SheetContent sheet) => sheet.Costs is { } costs ? new Section(Spoken("Costs"), [.. Blocks(costs)]) : null;

    public static IEnumerable<Block> Blocks(MoneySpent costs) =>
        costs.Rows.Count == 0 ? [Missing.Paragraph] : [new Table(Columns, [.. costs.Rows.Select(RowOf)]), new Total(Spoken("All together"), Missing.OrWords(string.Join(" · ", costs.Totals)))];

    private static IReadOnlyList<Cell> RowOf(CostRow row) =>
    [
        Missing.CellOf(row.Date, TypeScale.Body),
        Missing.CellOf(row.What, TypeScale.Body),
        Missing.CellOf(row.From, TypeScale.Body),
        Missing.CellOf(row.Receipt, TypeScale.Body),
        Missing.CellOf(row.Amount, TypeScale.Body),
    ];
}
