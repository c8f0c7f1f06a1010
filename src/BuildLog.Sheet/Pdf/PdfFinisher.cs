using System.Globalization;
using System.Text.RegularExpressions;
using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Pdf;

/// <summary>One pass over a saved file that makes it complete and the same every time.</summary>
/// <remarks>
/// PDFsharp 6.2.4 leaves the checksum off the streams it compresses, draws random letters for font subsets, and writes XMP with random
/// ids and unescaped text while saving, where no setting reaches it. It is asked to leave streams plain; they are compressed here.
/// </remarks>
internal static partial class PdfFinisher
{
    public static ReadOnlyMemory<byte> Finish(ReadOnlyMemory<byte> saved, DocumentInfo info)
    {
        var pdf = SavedPdf.Read(saved);
        var prefixes = new SubsetPrefixes();
        return PackedPdf.Write(pdf with { Objects = [.. pdf.Objects.Select(item => Finished(item with { Value = prefixes.Fix(item.Value) }, info))] });
    }

    private static PdfObject Finished(PdfObject item, DocumentInfo info)
    {
        if (item.Stream is not { } stream) return item;

        var value = PdfSyntax.Text(item.Value);
        if (value.Contains("/Subtype/XML", StringComparison.Ordinal))
        {
            var xmp = XmpPacket.Of(info);
            return Streamed(item, $"<</Type/Metadata/Subtype/XML/Length {xmp.Length}>>", xmp);
        }

        var plain = !value.Contains("/Filter", StringComparison.Ordinal);
        if (!plain && !Flate().IsMatch(value)) return item;   // a photo

        var packed = Zlib.Packed(plain ? stream.Span : Zlib.Unpacked(stream).Span);
        var entries = string.Create(CultureInfo.InvariantCulture, $"/Length {packed.Length}{(plain ? "/Filter/FlateDecode" : "")}");
        return Streamed(item, Length().Replace(value, entries), packed);
    }

    private static PdfObject Streamed(PdfObject item, string value, ReadOnlyMemory<byte> stream) =>
        item with { Value = PdfSyntax.Bytes(value), Stream = stream };

    [GeneratedRegex(@"/Filter\s*/FlateDecode")]
    private static partial Regex Flate();

    /// <summary>The length entry of a stream's dictionary.</summary>
    [GeneratedRegex(@"/Length\s+\d+")]
    private static partial Regex Length();
}
