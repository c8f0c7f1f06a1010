using BuildLog.Sheet.Content;
using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;
using BuildLog.Sheet.Photos;
using BuildLog.Sheet.Regions;
using static BuildLog.Sheet.Content.SheetReader;

namespace BuildLog.Sheet;

/// <summary>The build sheet: its regions, top to bottom, and who gets which.</summary>
internal static class BuildSheet
{
    private static readonly IReadOnlyList<SheetRegion> Regions =
    [
        new(HeadingRegion.Of,      Buyer, Inspector, Insurer, Own),
        new(DrivelineRegion.Of,    Buyer, Inspector, Insurer, Own),
        new(KeyFiguresRegion.Of,   Buyer, Inspector, Insurer, Own),
        new(PowerAndValueRegion.Of, Insurer),
        new(SpeedsRegion.Of,       Buyer, Own),
        new(PullRegion.Of,         Buyer, Own),
        new(FindingsRegion.Of,     Buyer, Inspector, Own),
        new(WhatWouldWorkRegion.Of, Buyer, Own),
        new(OptionsRegion.Of,      Buyer, Own),
        new(SpeedometerRegion.Of,  Buyer, Inspector, Own),
        new(RunningGearRegion.Of,  Buyer, Inspector, Insurer, Own),
        new(PropshaftRegion.Of,    Inspector, Own),
        new(EvidenceRegion.Of,     Buyer, Inspector, Own),
        new(HistoryRegion.Of,      Buyer, Inspector, Insurer, Own),
        new(RoadTestsRegion.Of,    Buyer, Inspector, Own),
        new(WorkRegion.Of,         Buyer, Inspector, Insurer, Own),
        new(CostsRegion.Of,        Buyer, Inspector, Insurer, Own),
        new(PhotosRegion.Of,       Buyer, Inspector, Insurer, Own),
        new(OpenPointsRegion.Of,   Buyer, Inspector, Insurer, Own),
        new(ClosingRegion.Of,      Buyer, Inspector, Insurer, Own),
    ];

    public static DrawnDocument Draw(SheetContent sheet) => Draw(sheet, Album.Of(sheet));

    public static DrawnDocument Draw(SheetContent sheet, Album album)
    {
        var named = Named.Of(sheet);
        var frame = new PageFrame(string.IsNullOrWhiteSpace(sheet.Vehicle.Mark) ? named.Vehicle : $"{named.Vehicle} · {sheet.Vehicle.Mark}", named.Shop, named.Printed);
        var blocks = Regions.Where(region => region.Readers.Contains(sheet.Reader)).SelectMany(region => region.Blocks(sheet, album));
        return new DrawnDocument(InfoOf(sheet, named), Paginator.Lay(PageSetup.Of(sheet.Paper), blocks, frame));
    }

    private static DocumentInfo InfoOf(SheetContent sheet, Named named)
    {
        var name = PlainText.Line(named.Vehicle);
        return new DocumentInfo
        {
            Title = Spoken($"{name}: build sheet"),
            Author = PlainText.Line(named.Shop),
            Subject = Spoken($"Driveline, gearing and parts history of {name}"),
            Keywords = Spoken("build sheet, driveline, gearing, measurement evidence, parts history"),
            Language = Gearing.Languages.Language.Spoken.Tag,
            Creator = "BuildLog",
            Created = sheet.Created,
            Id = sheet.Id,
        };
    }
}
