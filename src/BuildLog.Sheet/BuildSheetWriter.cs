using BuildLog.Sheet.Content;
using BuildLog.Sheet.Photos;
using BuildLog.Sheet.Preview;

namespace BuildLog.Sheet;

/// <summary>The door of this room: content in, PDF out. The same content gives the same bytes.</summary>
public static class BuildSheetWriter
{
    public static SheetResult Write(SheetContent content, Stream output)
    {
        var (file, result) = Make(content);
        output.Write(file);
        return result;
    }

    /// <summary>Writes to a path: the whole file or nothing.</summary>
    /// <exception cref="SheetWriteException">The path cannot be written, or a file is there and may not be overwritten.</exception>
    public static SheetResult WriteFile(SheetContent content, string path, bool overwrite = false)
    {
        var target = WholeFile.At(path, overwrite);        // refuses before any work is done
        var (file, result) = Make(content);
        target.Write(stream => stream.Write(file));
        return result;
    }

    /// <summary>The same pages as text, lines no longer than asked.</summary>
    public static SheetPreview Preview(SheetContent content, int width = 78)
    {
        var album = Album.Of(content);
        var document = BuildSheet.Draw(content, album);
        return new SheetPreview(PageAsText.Of(document, width), MissingSign.In(document), album.Skipped);
    }

    private static PdfFile Make(SheetContent content)
    {
        var album = Album.Of(content);
        return PdfFile.Of(BuildSheet.Draw(content, album), album.Skipped);
    }
}
