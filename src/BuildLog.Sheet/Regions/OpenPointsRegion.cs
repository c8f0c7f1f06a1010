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
            .. List(Spoken("Known defects"), sheet.Defects),
            .. List(Spoken("To be done before handover"), sheet.ToDo),
            .. List(Spoken("Not finished yet"), sheet.Unfinished),
            .. List(Spoken("To be watched"), sheet.Watched),
            .. List(Spoken("Could not be said yet"), sheet.OpenPoints),
            .. List(Spoken("Assumed, not measured"), sheet.Assumptions),
        ];
        return new Section(Spoken("Open points and assumptions"), lists.Length == 0 ? [new Paragraph(Spoken("none found by the checks; they judge the driveline only"), TypeScale.Missing)] : lists);
    }

    private static IEnumerable<Block> List(string what, IReadOnlyList<string> points) =>
        points.Count == 0 ? [] : [new Paragraph(what, TypeScale.Strong) { KeepWithNext = true, SpaceBefore = 3 }, new Bullets(points, TypeScale.Body) { SpaceBefore = 1 }];
}
