using BuildLog.Sheet.Content;
using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Regions;

namespace BuildLog.Sheet.Papers.Accounts;

/// <summary>The time sheet: work with its hours, and lines to sign for them.</summary>
internal static class TimeSheetPaper
{
    public static DrawnDocument Draw(TimeSheet sheet) => PlainPaper.Draw(sheet, "time sheet",
    [
        new Section(sheet.Span is { } span ? $"Work and hours, {span}" : "Work and hours", [.. WorkRegion.Blocks(sheet.Work)]),
        SignOffRegion.Of([new SignatureLine("Worked by"), new SignatureLine("Agreed by")]),
    ]);
}

/// <summary>The cost sheet: money with its receipts.</summary>
internal static class CostSheetPaper
{
    public static DrawnDocument Draw(CostSheet sheet) => PlainPaper.Draw(sheet, "cost sheet",
    [
        new Section(sheet.Span is { } span ? $"Costs, {span}" : "Costs", [.. CostsRegion.Blocks(sheet.Costs)]),
    ]);
}
