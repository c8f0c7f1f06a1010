using BuildLog.Sheet.Content;
using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Regions;

namespace BuildLog.Sheet.Papers.Accounts;

/// <summary>The time sheet: work with its hours, and lines to sign for them.</summary>
internal static class TimeSheetPaper
{
    public static DrawnDocument Draw(TimeSheet sheet) => PlainPaper.Draw(sheet, Spoken("time sheet"),
    [
        new Section(sheet.Span is { } span ? Spoken($"Work and hours, {span}") : Spoken("Work and hours"), [.. WorkRegion.Blocks(sheet.Work)]),
        SignOffRegion.Of([new SignatureLine(Spoken("Worked by")), new SignatureLine(Spoken("Agreed by"))]),
    ]);
}

/// <summary>The cost sheet: money with its receipts.</summary>
internal static class CostSheetPaper
{
    public static DrawnDocument Draw(CostSheet sheet) => PlainPaper.Draw(sheet, Spoken("cost sheet"),
    [
        new Section(sheet.Span is { } span ? Spoken($"Costs, {span}") : Spoken("Costs"), [.. CostsRegion.Blocks(sheet.Costs)]),
    ]);
}
