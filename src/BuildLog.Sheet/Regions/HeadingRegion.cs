using BuildLog.Sheet.Content;
using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;
using BuildLog.Sheet.Photos;

namespace BuildLog.Sheet.Regions;

/// <summary>The title block: what this is, which vehicle, who made it, the vehicle's identity and its photo.</summary>
internal static class HeadingRegion
{
    private const int MostColumns = 5;
    private const int MostColumnsBesidePhoto = 3;
    private const int LongName = 70;                       // about two lines of the large size

    public static IEnumerable<Block> Of(SheetContent sheet, Album album)
    {
        var band = new TitleBand(Spoken("BUILD SHEET"), Named.Of(sheet).Printed);
        if (album.PrintOf(sheet.TitlePhoto) is not { } print) return [band, .. Title(sheet, MostColumns)];

        var photo = new Plate(Spoken($"Photo: {PlainText.Line(sheet.TitlePhoto!.Caption ?? sheet.TitlePhoto.Name)}"), (pen, box) => pen.Photo(box, print));
        var scale = Math.Min(Album.TitleWidth / print.Width, Album.TitleHeight / print.Height);
        return [band, new Beside(photo, print.Width * scale, print.Height * scale, [.. Title(sheet, MostColumnsBesidePhoto)]) { SpaceBefore = 10 }];
    }

    private static IEnumerable<Block> Title(SheetContent sheet, int mostColumns)
    {
        var named = Named.Of(sheet);
        Block[] shop = named.Shop.Length == 0 ? [] : [new Paragraph(named.Shop, TypeScale.ShopName)];
        return
        [
            new Paragraph(named.Vehicle, StyleFor(named.Vehicle)) { Tag = Tag.H1, BookmarkLevel = 0, SpaceBefore = 10 },
            .. shop,
            FigureGrid.Evenly([.. Identity(sheet.Vehicle)], mostColumns, spaceBefore: 7),
        ];
    }

    private static TextStyle StyleFor(string name) => name.Length > LongName ? TypeScale.LongVehicleName : TypeScale.VehicleName;

    private static IEnumerable<Cell> Identity(VehicleTitle vehicle)
    {
        LabelledLine[] lines =
        [
            .. vehicle.Identity,
            new(Spoken("Owner"), vehicle.Owner),
            new(Spoken("State of build"), vehicle.State),
            new(Spoken("Odometer"), vehicle.Odometer),
        ];
        return lines.Select(line => new Cell(new CellText(line.Label, TypeScale.Label), Missing.OrWords(line.Value, TypeScale.Body)));
    }
}
