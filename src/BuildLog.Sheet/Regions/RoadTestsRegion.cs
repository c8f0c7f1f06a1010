using BuildLog.Sheet.Content;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>What the drives showed, and which bolts were tightened again after them.</summary>
internal static class RoadTestsRegion
{
    private const double Between = 8;

    private static readonly IReadOnlyList<Column> Drives =
        [new("Date", 1.15), new("Odometer", 1.15), new("Instruments", 1.8), new("Heard and felt", 2), new("Defects", 1.9), new("Done about it", 1.9)];

    private static readonly IReadOnlyList<Column> Bolts = [new("Date", 1.15), new("Tightened again", 3), new("To", 1), new("Initials", 0.8)];

    /// <summary>Nothing where nobody has driven it yet.</summary>
    public static Block? Of(SheetContent sheet)
    {
        Block[] tables =
        [
            .. sheet.RoadTests.Count == 0 ? (Block[])[] : [new Table(Drives, [.. sheet.RoadTests.Select(RowOf)])],
            .. sheet.Tightened.Count == 0 ? (Block[])[] : [new Table(Bolts, [.. sheet.Tightened.Select(RowOf)]) { SpaceBefore = sheet.RoadTests.Count == 0 ? 0 : Between }],
        ];
        return tables.Length == 0 ? null : new Section("Road tests", tables);
    }

    private static IReadOnlyList<Cell> RowOf(RoadTestRow row) => Cells(row.Date, row.Odometer, row.Read, row.Noticed, row.Defects ?? "none", row.Fix ?? "nothing");

    private static IReadOnlyList<Cell> RowOf(TightenedRow row) => Cells(row.Date, row.What, row.Torque, row.Initials);

    private static IReadOnlyList<Cell> Cells(params IReadOnlyList<string?> texts) => [.. texts.Select(text => Missing.CellOf(text, TypeScale.Body))];
}
