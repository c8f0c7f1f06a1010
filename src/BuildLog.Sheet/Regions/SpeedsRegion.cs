using BuildLog.Sheet.Charts;
using BuildLog.Sheet.Content;
using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>Gears against speeds, as a table and as a chart.</summary>
internal static class SpeedsRegion
{
    private const double ChartHeight = 138;
    private const int MostColumns = 9;
    private const double NameShare = 1.4;

    public static Block Of(SheetContent sheet) =>
        new Section(Spoken("Speeds in the gears"), [.. Tables(sheet.Speeds), Chart(sheet.Sawtooth)]);

    private static IEnumerable<Block> Tables(SpeedsTable? speeds)
    {
        if (speeds is null || speeds.Rows.Count == 0) return [Missing.Paragraph];

        var columns = Math.Max(speeds.Heads.Count, speeds.Rows.Max(row => row.Count));
        IEnumerable<Block> tables = Enumerable.Range(1, Math.Max(1, columns - 1)).Chunk(MostColumns)
            .Select(group => TableOf(speeds, columns == 1 ? [] : group));
        return speeds.Note is { } note ? tables.Append(new Paragraph(note, TypeScale.Note) { SpaceBefore = 3 }) : tables;
    }

    /// <summary>The row names and one group of the columns beside them: more columns than fit become a second table.</summary>
    private static Table TableOf(SpeedsTable speeds, IReadOnlyList<int> group)
    {
        Column[] columns = [new(TextAt(speeds.Heads, 0) ?? "", NameShare), .. group.Select(c => new Column(TextAt(speeds.Heads, c) ?? "", 1, Align.Right))];
        IReadOnlyList<Cell> RowOf(IReadOnlyList<string> row) =>
            [Missing.CellOf(TextAt(row, 0), TypeScale.Strong), .. group.Select(c => Missing.CellOf(TextAt(row, c), TypeScale.Body))];

        return new Table(columns, [.. speeds.Rows.Select(RowOf)], new TableLook { KeepTogether = true }) { SpaceBefore = group is [1, ..] ? 0 : 6 };
    }

    private static string? TextAt(IReadOnlyList<string> texts, int index) => index < texts.Count ? texts[index] : null;

    private static Block Chart(Sawtooth? sawtooth)
    {
        if (sawtooth is null || !SawtoothChart.CanDraw(sawtooth))
            return new Paragraph(Spoken($"Chart of engine speed against road speed: {Missing.Words}"), TypeScale.Missing) { SpaceBefore = 6 };

        return new Picture(ChartHeight, new Plate(SawtoothWords.Of(sawtooth), (pen, box) => SawtoothChart.Draw(pen, box, sawtooth), sawtooth)) { SpaceBefore = 8 };
    }
}
