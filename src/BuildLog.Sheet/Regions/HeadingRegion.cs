using BuildLog.Sheet.Content;
using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>The title block: what this is, which vehicle, who made it, and the vehicle's identity.</summary>
internal static class HeadingRegion
{
    private const int IdentityColumns = 4;

    public static IEnumerable<Block> Of(SheetContent sheet)
    {
        var vehicle = sheet.Vehicle;
        return
        [
            new TitleBand("BUILD SHEET", $"printed {Missing.OrWords(sheet.PrintedOn)}"),
            new Paragraph(Missing.OrWords(vehicle.Name), TypeScale.VehicleName) { Tag = Tag.H1, BookmarkLevel = 0, SpaceBefore = 12 },
            new Paragraph(Missing.OrWords(vehicle.ShopName), TypeScale.ShopName) { SpaceBefore = 1 },
            FigureGrid.Of(IdentityOf(vehicle), IdentityColumns, TypeScale.Body, spaceBefore: 9),
        ];
    }

    private static IReadOnlyList<LabelledLine> IdentityOf(VehicleTitle vehicle) =>
    [
        .. vehicle.Identity,
        new("Owner", vehicle.Owner),
        new("State of build", vehicle.State),
        new("Odometer", vehicle.Odometer),
    ];
}
