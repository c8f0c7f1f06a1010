using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Pdf;

namespace BuildLog.Sheet;

/// <summary>A drawn document as a file, with what the user has to be told of it.</summary>
internal sealed record PdfFile(byte[] Bytes, SheetResult Result)
{
    public static PdfFile Of(DrawnDocument document, IReadOnlyList<string> skippedPhotos)
    {
        var missing = MissingSign.In(document);
        var bytes = new PdfSharpRenderer().Render(document with { Info = document.Info with { ClaimsPdfA = missing.Count == 0 } });
        return new PdfFile(bytes, new SheetResult(document.Pages.Count, missing) { SkippedPhotos = skippedPhotos });
    }
}
