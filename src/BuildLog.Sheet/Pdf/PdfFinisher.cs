using System.Globalization;
using System.Text.RegularExpressions;
using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Pdf;

/// <summary>One pass over a saved file that makes it complete and the same every time.</summary>
/// <remarks>
/// PDFsharp 6.2.4 leaves the checksum off its compressed streams, draws random letters for font subsets, and writes XMP with random
/// ids and unescaped text while saving, where no setting reaches it.
/// </remarks>
internal static partial class PdfFinisher
{
    public static byte[] Finish(byte[] saved, DocumentInfo info)
    {
        var pdf = SavedPdf.Read(saved);
        var prefixes = new SubsetPrefixes();
        var objects = pdf.Objects
            .Select(item => item with { Value = prefixes.Fix(item.Value) })
            .Select(item => item.Stream is null ? item : WithStream(item, item.Stream, info))
            .ToList();
        return PackedPdf.Write(pdf with { Objects = objects });
    }

    private static PdfObject WithStream(PdfObject item, byte[] stream, DocumentInfo info)
    {
        if (item.Value.Contains("/Subtype/XML", StringComparison.Ordinal))
        {
            var xmp = XmpPacket.Of(info);
            return item with { Value = $"<</Type/Metadata/Subtype/XML/Length {xmp.Length}>>", Stream = xmp };
        }

        if (!Flate().IsMatch(item.Value)) return item;

        var packed = Zlib.WithChecksum(stream);
        var length = string.Create(CultureInfo.InvariantCulture, $"/Length {packed.Length}");
        return item with { Value = PdfSyntax.Length().Replace(item.Value, length), Stream = packed };
    }

    [GeneratedRegex(@"/Filter\s*/FlateDecode")]
    private static partial Regex Flate();
}
