using System.IO.Compression;

namespace BuildLog.Sheet.Pdf;

/// <summary>Flate streams as the PDF standard wants them: zlib (RFC 1950), which closes with a checksum.</summary>
internal static class Zlib
{
    private const int HeaderLength = 2;

    // Of a sheet's bytes the usual effort, 6, saves one in twenty more and takes twice the time.
    private static readonly ZLibCompressionOptions Quick = new() { CompressionLevel = 2 };

    public static ReadOnlyMemory<byte> Packed(ReadOnlySpan<byte> data)
    {
        var packed = new MemoryStream(data.Length / 2);
        using (var zlib = new ZLibStream(packed, Quick, leaveOpen: true)) zlib.Write(data);
        return Written(packed);
    }

    /// <summary>Nothing is asked of the checksum, which PDFsharp leaves off.</summary>
    public static ReadOnlyMemory<byte> Unpacked(ReadOnlyMemory<byte> packed)
    {
        using var source = new MemoryStream(packed[HeaderLength..].ToArray());
        using var deflate = new DeflateStream(source, CompressionMode.Decompress);
        var data = new MemoryStream();
        deflate.CopyTo(data);
        return Written(data);
    }

    private static ReadOnlyMemory<byte> Written(MemoryStream stream) => stream.GetBuffer().AsMemory(0, (int)stream.Length);
}
