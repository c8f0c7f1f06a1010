using BuildLog.Sheet.Content;

namespace BuildLog.Sheet.Photos;

/// <summary>A photo for somebody outside the shop: as large as it was, upright, and without place, time or camera.</summary>
public static class PhotoCopy
{
    /// <summary>A plain JPEG; null for what is no photo that can be read.</summary>
    public static byte[]? Of(byte[] file) =>
        Darkroom.Print(new SheetPhoto("", file), double.PositiveInfinity, double.PositiveInfinity).Understood(out var print) ? print.Jpeg : null;
}
