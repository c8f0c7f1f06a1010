using BuildLog.Sheet.Content;
using UglyToad.PdfPig;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;

namespace BuildLog.Sheet.Tests.Reading;

/// <summary>A sheet written and opened again with a reader that is not the writer.</summary>
internal sealed class ReadBack : IDisposable
{
    private ReadBack(byte[] file, SheetResult result)
    {
        (File, Result) = (file, result);
        Pdf = PdfDocument.Open(file);
        Pages = [.. Pdf.GetPages().Select(page => ContentOrderTextExtractor.GetText(page))];
        Text = string.Join('\n', Pages);
    }

    public byte[] File { get; }

    public SheetResult Result { get; }

    public PdfDocument Pdf { get; }

    /// <summary>The text of each page in the order of the file.</summary>
    public IReadOnlyList<string> Pages { get; }

    public string Text { get; }

    public static ReadBack Of(SheetContent content)
    {
        using var stream = new MemoryStream();
        var result = BuildSheetWriter.Write(content, stream);
        return new ReadBack(stream.ToArray(), result);
    }

    public void Dispose() => Pdf.Dispose();
}
