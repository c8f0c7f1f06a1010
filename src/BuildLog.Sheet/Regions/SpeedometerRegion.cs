using BuildLog.Sheet.Charts;
using BuildLog.Sheet.Content;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>What drives the speedometer, and how far what it shows is from the truth.</summary>
internal static class SpeedometerRegion
{
    private const double ChartWidth = 244;
    private const double ChartHeight = 128;

    private static IReadOnlyList<Column> Columns => [new(Spoken("What"), 1.15), new(Spoken("Value"), 1)];

    private static readonly TableLook Look = new() { ShowsHead = false, KeepTogether = true };

    public static Block Of(SheetContent sheet) => new Section(Spoken("Speedometer"), Content(sheet.Speedometer)) { KeepTogether = true };

    private static Block Content(SpeedometerFacts? facts)
    {
        if (facts is null || facts.Facts.Count == 0) return Missing.Paragraph;

        var table = new Table(Columns, [.. facts.Facts.Select(RowOf)], Look) { SpaceBefore = 2 };
        return CurvePlate.CanDraw(facts.Error) ? new Beside(CurvePlate.Of(facts.Error!), ChartWidth, ChartHeight, table) { SpaceBefore = 2 } : table;
    }

    private static IReadOnlyList<Cell> RowOf(LabelledLine fact) => [Missing.CellOf(fact.Label, TypeScale.Body), Missing.CellOf(fact.Value, TypeScale.Strong)];
}
