using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Pdf;

namespace BuildLog.Sheet;

/// <summary>A drawn document as a file, with what the user has to be told of it.</summary>
internal sealed record PdfFile(ReadOnlyMemory<byte> Bytes, SheetResult Result)
{
    /// <summary>Writes to a path, which is refused before any work is done.</summary>
    public static SheetResult Write(string path, bool overwrite, Func<PdfFile> make)
    {
        var target = WholeFile.At(path, overwrite);
        var file = make();
        target.Write(stream => stream.Write(file.Bytes.Span));
        return file.Result;
    }

    public static PdfFile Of(DrawnDocument document, IReadOnlyList<string> skippedPhotos)
    {
        var missing = MissingSign.In(document);
        var bytes = new PdfSharpRenderer().Render(document with { Info = document.Info with { ClaimsPdfA = missing.Count == 0 } });
        return new PdfFile(bytes, new SheetResult(document.Pages.Count, missing) { SkippedPhotos = skippedPhotos });
    }

    public SheetResult WriteTo(Stream output)
    {
        output.Write(Bytes.Span);
        return Result;
    }
}
