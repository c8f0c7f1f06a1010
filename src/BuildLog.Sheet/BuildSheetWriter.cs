using BuildLog.Sheet.Content;
using BuildLog.Sheet.Photos;
using BuildLog.Sheet.Preview;

namespace BuildLog.Sheet;

/// <summary>The door of this room: content in, PDF out. The same content gives the same bytes.</summary>
public static class BuildSheetWriter
{
    public static SheetResult Write(SheetContent content, Stream output) => Make(content).WriteTo(output);

    /// <summary>Writes to a path: the whole file or nothing.</summary>
    /// <exception cref="SheetWriteException">The path cannot be written, or a file is there and may not be overwritten.</exception>
    public static SheetResult WriteFile(SheetContent content, string path, bool overwrite = false) => PdfFile.Write(path, overwrite, () => Make(content));

    /// <summary>The same pages as text, to be laid at any width.</summary>
    public static SheetPreview Preview(SheetContent content)
    {
        var album = Album.Of(content);
        return SheetPreview.Of(BuildSheet.Draw(content, album), album.Skipped);
    }

    private static PdfFile Make(SheetContent content)
    {
        var album = Album.Of(content);
        return PdfFile.Of(BuildSheet.Draw(content, album), album.Skipped);
    }
}
