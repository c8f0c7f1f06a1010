using BuildLog.Sheet.Content;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>What is wrong, what is not settled, and what had to be assumed.</summary>
internal static class OpenPointsRegion
{
    public static Block Of(SheetContent sheet)
    {
        Block[] lists =
        [
            .. List("Known defects", sheet.Defects),
            .. List("To be done before handover", sheet.ToDo),
            .. List("Could not be said yet", sheet.OpenPoints),
            .. List("Assumed, not measured", sheet.Assumptions),
        ];
        return new Section("Open points and assumptions", lists.Length == 0 ? [new Paragraph("none found by the checks; they judge the driveline only", TypeScale.Missing)] : lists);
    }

    private static IEnumerable<Block> List(string what, IReadOnlyList<string> points) =>
        points.Count == 0 ? [] : [new Paragraph(what, TypeScale.Strong) { KeepWithNext = true, SpaceBefore = 3 }, new Bullets(points, TypeScale.Body) { SpaceBefore = 1 }];
}
