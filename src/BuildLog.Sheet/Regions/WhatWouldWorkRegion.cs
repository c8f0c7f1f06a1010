using BuildLog.Sheet.Charts;
using BuildLog.Sheet.Content;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>What each part may be for the goals to be met, and which axles go with which tyres.</summary>
internal static class WhatWouldWorkRegion
{
    private static string Each => Spoken("For the owner's goals and the limits of a part's number to be met, each part alone, the others as they are (findings on other matters stay as they stand above):");

    public static Block? Of(SheetContent sheet)
        => sheet.AxleAndTyre is null && sheet.PartWindows.Count == 0 ? null : new Section(Spoken("What would work"), [.. Content(sheet)]) { KeepTogether = true };

    private static IEnumerable<Block> Content(SheetContent sheet)
    {
        if (sheet.PartWindows.Count > 0)
        {
            yield return new Paragraph(Each, TypeScale.Body) { KeepWithNext = true };
            yield return new Bullets(sheet.PartWindows, TypeScale.Body) { SpaceBefore = 2 };
        }

        if (sheet.AxleAndTyre is { } map) yield return new Picture(RegionDrawing.HeightOf(map), RegionDrawing.Of(map)) { SpaceBefore = 4 };
    }
}
