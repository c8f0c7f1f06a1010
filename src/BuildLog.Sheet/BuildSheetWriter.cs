using BuildLog.Sheet.Content;
using BuildLog.Sheet.Pdf;

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

    private static (byte[] File, SheetResult Result) Make(SheetContent content)
    {
        var document = BuildSheet.Draw(content);
        var missing = MissingSign.In(document);
        var file = new PdfSharpRenderer().Render(document with { Info = document.Info with { ClaimsPdfA = missing.Count == 0 } });
        return (file, new SheetResult(document.Pages.Count, missing));
    }
}
