using BuildLog.Sheet.Content;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>The parts from engine to tyres, each with its key number and how that is known.</summary>
internal static class DrivelineRegion
{
    private static IReadOnlyList<Column> Columns =>
        [new(Spoken("Position"), 1.1), new(Spoken("Part"), 2), new(Spoken("Key value"), 2.2), new(Spoken("How it is known"), 2)];

    public static Block Of(SheetContent sheet) =>
        new Section(Spoken("Driveline"), sheet.Driveline.Count == 0 ? Missing.Paragraph : new Table(Columns, [.. sheet.Driveline.Select(RowOf)]));

    private static IReadOnlyList<Cell> RowOf(DrivelineRow row) =>
    [
        Missing.CellOf(row.Position, TypeScale.Body),
        Missing.CellOf(row.Part, TypeScale.Body),
        Missing.CellOf(row.KeyValue, TypeScale.Strong),
        Missing.CellOf(row.Source, TypeScale.Body),
    ];
}
