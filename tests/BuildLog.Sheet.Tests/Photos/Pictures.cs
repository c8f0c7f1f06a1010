using System.Buffers.Binary;
using SkiaSharp;

namespace BuildLog.Sheet.Tests.Photos;

/// <summary>Pictures made here: the upper left quarter red, the rest blue.</summary>
internal static class Pictures
{
    public static byte[] Of(SKEncodedImageFormat format, int width = 400, int height = 300)
    {
        using var bitmap = new SKBitmap(width, height);
        using var canvas = new SKCanvas(bitmap);
        using var red = new SKPaint { Color = SKColors.Red };
        canvas.Clear(SKColors.Blue);
        canvas.DrawRect(0, 0, width / 2f, height / 2f, red);
        using var image = SKImage.FromBitmap(bitmap);
        using var file = image.Encode(format, 95);
        return file.ToArray();
    }

    /// <summary>As a camera writes it: with the way it was held, and a place in plain sight.</summary>
    public static byte[] FromCamera(ushort orientation)
    {
        var jpeg = Of(SKEncodedImageFormat.Jpeg);
        byte[] exif = [.. "Exif\0\0MM\0*\0\0\0\b\0\u0001"u8, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, (byte)orientation, 0, 0, 0, 0, 0, 0, .. "GPS 51.4778 N"u8];
        var length = new byte[2];
        BinaryPrimitives.WriteUInt16BigEndian(length, (ushort)(exif.Length + 2));
        return [.. jpeg[..2], 0xFF, 0xE1, .. length, .. exif, .. jpeg[2..]];
    }

    /// <summary>A PNG that says it is this large; there is hardly anything in it.</summary>
    public static byte[] ClaimingToBe(int width, int height)
    {
        var header = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(header, width);
        BinaryPrimitives.WriteInt32BigEndian(header.AsSpan(4), height);
        (header[8], header[9]) = (8, 2);
        return [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, .. Chunk("IHDR"u8, header), .. Chunk("IDAT"u8, [0x78, 0x9C, 0x63, 0, 0])];
    }

    private static byte[] Chunk(ReadOnlySpan<byte> type, ReadOnlySpan<byte> data)
    {
        byte[] body = [.. type, .. data];
        var (length, check) = (new byte[4], new byte[4]);
        BinaryPrimitives.WriteInt32BigEndian(length, data.Length);
        BinaryPrimitives.WriteUInt32BigEndian(check, Crc(body));
        return [.. length, .. body, .. check];
    }

    /// <summary>The check of PNG chunks (ISO/IEC 15948, annex D).</summary>
    private static uint Crc(ReadOnlySpan<byte> data)
    {
        var crc = uint.MaxValue;
        foreach (var sign in data)
        {
            crc ^= sign;
            for (var bit = 0; bit < 8; bit++) crc = (crc & 1) == 0 ? crc >> 1 : (crc >> 1) ^ 0xEDB88320;
        }

        return ~crc;
    }
}
