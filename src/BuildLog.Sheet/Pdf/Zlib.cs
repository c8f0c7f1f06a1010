using System.IO.Compression;

namespace BuildLog.Sheet.Pdf;

/// <summary>Flate streams as the PDF standard wants them.</summary>
internal static class Zlib
{
    private const int HeaderLength = 2;

    public static byte[] Compress(byte[] data)
    {
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.SmallestSize, leaveOpen: true)) zlib.Write(data);
        return packed.ToArray();
    }

    /// <summary>PDFsharp leaves the closing checksum off, so the stream is read as bare deflate behind its header.</summary>
    public static byte[] ExpandUnchecked(byte[] packed)
    {
        using var source = new MemoryStream(packed, HeaderLength, packed.Length - HeaderLength);
        using var deflate = new DeflateStream(source, CompressionMode.Decompress);
        using var data = new MemoryStream();
        deflate.CopyTo(data);
        return data.ToArray();
    }
}
