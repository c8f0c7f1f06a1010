using BuildLog.Sheet.Content;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Photos;

namespace BuildLog.Sheet.Regions;

/// <summary>Photos two by two, each with what it shows; one that could not be printed is named in its place.</summary>
internal static class PhotosRegion
{
    private const int Columns = 2;

    /// <summary>Nothing where there are no photos.</summary>
    public static Block? Of(SheetContent sheet, Album album) =>
        sheet.Photos.Count == 0
            ? null
            : new Section(Spoken("Photos"), [.. sheet.Photos.Chunk(Columns).Select((row, i) => new PhotoRow(row, album, Columns) { SpaceBefore = i == 0 ? 2 : 8 })]);
}
