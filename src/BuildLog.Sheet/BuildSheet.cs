using BuildLog.Sheet.Content;
using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;
using BuildLog.Sheet.Regions;

namespace BuildLog.Sheet;

/// <summary>The build sheet: its regions, top to bottom.</summary>
internal static class BuildSheet
{
    public static DrawnDocument Draw(SheetContent sheet)
    {
        var named = Named.Of(sheet);
        var frame = new PageFrame(named.Vehicle, named.Shop, named.Printed);
        var pages = Paginator.Lay(PageSetup.Of(sheet.Paper), Regions(sheet), frame);
        return new DrawnDocument(InfoOf(sheet, named), pages);
    }

    private static IEnumerable<Block> Regions(SheetContent sheet) =>
    [
        .. HeadingRegion.Of(sheet),
        DrivelineRegion.Of(sheet),
        KeyFiguresRegion.Of(sheet),
        SpeedsRegion.Of(sheet),
        FindingsRegion.Of(sheet),
        EvidenceRegion.Of(sheet),
        HistoryRegion.Of(sheet),
        OpenPointsRegion.Of(sheet),
        CautionsRegion.Of(sheet),
        SignOffRegion.Of(sheet),
    ];

    private static DocumentInfo InfoOf(SheetContent sheet, Named named)
    {
        var name = PlainText.Line(named.Vehicle);
        return new DocumentInfo
        {
            Title = $"{name}: build sheet",
            Author = PlainText.Line(named.Shop),
            Subject = $"Driveline, gearing and parts history of {name}",
            Keywords = "build sheet, driveline, gearing, measurement evidence, parts history",
            Language = "en-GB",
            Creator = "BuildLog",
            Created = sheet.Created,
            Id = sheet.Id,
        };
    }
}
