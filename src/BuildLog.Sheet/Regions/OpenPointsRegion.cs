using BuildLog.Sheet.Content;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>What is not settled, and what had to be assumed.</summary>
internal static class OpenPointsRegion
{
    public static Block Of(SheetContent sheet) =>
        new Section("Open points and assumptions", sheet.OpenPoints.Count == 0 ? new Paragraph("none known", TypeScale.Missing) : new Bullets(sheet.OpenPoints, TypeScale.Body));
}
