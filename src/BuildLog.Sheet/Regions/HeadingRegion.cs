using BuildLog.Sheet.Content;
using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>The title block: what this is, which vehicle, who made it, and the vehicle's identity.</summary>
internal static class HeadingRegion
{
    private const int IdentityColumns = 5;
    private const int LongName = 70;                       // about two lines of the large size

    public static IEnumerable<Block> Of(SheetContent sheet)
    {
        var named = Named.Of(sheet);
        Block[] shop = named.Shop.Length == 0 ? [] : [new Paragraph(named.Shop, TypeScale.ShopName)];
        return
        [
            new TitleBand("BUILD SHEET", named.Printed),
            new Paragraph(named.Vehicle, StyleFor(named.Vehicle)) { Tag = Tag.H1, BookmarkLevel = 0, SpaceBefore = 10 },
            .. shop,
            FigureGrid.Of(Identity(sheet.Vehicle), IdentityColumns, spaceBefore: 7),
        ];
    }

    private static TextStyle StyleFor(string name) => name.Length > LongName ? TypeScale.LongVehicleName : TypeScale.VehicleName;

    private static IEnumerable<Cell> Identity(VehicleTitle vehicle)
    {
        LabelledLine[] lines =
        [
            .. vehicle.Identity,
            new("Owner", vehicle.Owner),
            new("State of build", vehicle.State),
            new("Odometer", vehicle.Odometer),
        ];
        return lines.Select(line => new Cell(new CellText(line.Label, TypeScale.Label), Missing.OrWords(line.Value, TypeScale.Body)));
    }
}
