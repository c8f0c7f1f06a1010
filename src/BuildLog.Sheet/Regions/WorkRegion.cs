using BuildLog.Sheet.Content;
using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>What was done, by whom, and the hours it took.</summary>
internal static class WorkRegion
{
    private static IReadOnlyList<Column> Columns => [new(Spoken("Date"), 1), new(Spoken("Work"), 4.2), new(Spoken("By"), 1.4), new(Spoken("Hours"), 0.8, Align.Right)];

    /// <summary>Nothing where nobody asked for hours.</summary>
    public static Block? Of(SheetContent sheet) => sheet.Work is { } work ? new Section(Spoken("Work and hours"), [.. Blocks(work)]) : null;

    public static IEnumerable<Block> Blocks(WorkDone work) =>
        work.Rows.Count == 0 ? [Missing.Paragraph] : [new Table(Columns, [.. work.Rows.Select(RowOf)]), new Total(Spoken("All together"), Missing.OrWords(work.Total))];

    private static IReadOnlyList<Cell> RowOf(WorkRow row) =>
    [
        Missing.CellOf(row.Date, TypeScale.Body),
        Missing.CellOf(row.What, TypeScale.Body),
        Missing.CellOf(row.Who, TypeScale.Body),
        Missing.CellOf(row.Hours, TypeScale.Body),
    ];
}
