using System.Buffers.Binary;
using System.IO.Compression;

namespace BuildLog.Sheet.Pdf;

/// <summary>Flate streams as the PDF standard wants them: zlib (RFC 1950).</summary>
internal static class Zlib
{
    private const int HeaderLength = 2;
    private const int ChecksumLength = 4;
    private const uint AdlerModulus = 65521;

    // As many bytes as can be summed before 32 bits overflow.
    private const int AdlerRun = 5552;

    /// <summary>Deflate in a window of 32 kB, usual effort; the two bytes make a multiple of 31.</summary>
    private static ReadOnlySpan<byte> Header => [0x78, 0x9C];

    public static byte[] Compress(byte[] data)
    {
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Optimal, leaveOpen: true)) zlib.Write(data);
        return packed.ToArray();
    }

    /// <summary>PDFsharp leaves the closing checksum off, which some readers ask for: the same stream with it.</summary>
    public static byte[] WithChecksum(byte[] packed)
    {
        using var source = new MemoryStream(packed, HeaderLength, packed.Length - HeaderLength);
        using var deflate = new DeflateStream(source, CompressionMode.Decompress);
        using var data = new MemoryStream();
        deflate.CopyTo(data);

        var whole = new byte[packed.Length + ChecksumLength];
        packed.CopyTo(whole, 0);
        Header.CopyTo(whole);
        BinaryPrimitives.WriteUInt32BigEndian(whole.AsSpan(packed.Length), Adler32(data.GetBuffer().AsSpan(0, (int)data.Length)));
        return whole;
    }

    /// <summary>RFC 1950, 8.2.</summary>
    private static uint Adler32(ReadOnlySpan<byte> data)
    {
        uint a = 1, b = 0;
        while (!data.IsEmpty)
        {
            var run = data[..Math.Min(AdlerRun, data.Length)];
            foreach (var value in run) b += a += value;
            (a, b) = (a % AdlerModulus, b % AdlerModulus);
            data = data[run.Length..];
        }

        return (b << 16) | a;
    }
}
