using BuildLog.Sheet.Content;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>What the drives showed, and which bolts were tightened again after them.</summary>
internal static class RoadTestsRegion
{
    private const double Between = 8;

    private static IReadOnlyList<Column> Drives =>
        [new(Spoken("Date"), 1.15), new(Spoken("Odometer"), 1.15), new(Spoken("Instruments"), 1.8), new(Spoken("Heard and felt"), 2), new(Spoken("Defects"), 1.9), new(Spoken("Done about it"), 1.9)];

    private static IReadOnlyList<Column> Bolts => [new(Spoken("Date"), 1.15), new(Spoken("Tightened again"), 3), new(Spoken("To"), 1), new(Spoken("Initials"), 0.8)];

    /// <summary>Nothing where nobody has driven it yet.</summary>
    public static Block? Of(SheetContent sheet)
    {
        Block[] tables =
        [
            .. sheet.RoadTests.Count == 0 ? (Block[])[] : [new Table(Drives, [.. sheet.RoadTests.Select(RowOf)])],
            .. sheet.Tightened.Count == 0 ? (Block[])[] : [new Table(Bolts, [.. sheet.Tightened.Select(RowOf)]) { SpaceBefore = sheet.RoadTests.Count == 0 ? 0 : Between }],
        ];
        return tables.Length == 0 ? null : new Section(Spoken("Road tests"), tables);
    }

    private static IReadOnlyList<Cell> RowOf(RoadTestRow row) => Cells(row.Date, row.Odometer, row.Read, row.Noticed, row.Defects ?? Spoken("none"), row.Fix ?? Spoken("nothing"));

    private static IReadOnlyList<Cell> RowOf(TightenedRow row) => Cells(row.Date, row.What, row.Torque, row.Initials);

    private static IReadOnlyList<Cell> Cells(params IReadOnlyList<string?> texts) => [.. texts.Select(text => Missing.CellOf(text, TypeScale.Body))];
}
