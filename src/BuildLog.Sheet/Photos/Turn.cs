using SkiaSharp;

namespace BuildLog.Sheet.Photos;

/// <summary>How a picture has to be turned to stand upright. The camera notes it as one of eight numbers (Exif 2.32, 4.6.4, tag 274).</summary>
internal sealed record Turn(bool OnItsSide, Func<float, float, SKMatrix> Matrix)
{
    public static Turn Of(SKEncodedOrigin origin) => origin switch
    {
        SKEncodedOrigin.TopRight => new(false, (w, _) => Map(-1, 0, w, 0, 1, 0)),
        SKEncodedOrigin.BottomRight => new(false, (w, h) => Map(-1, 0, w, 0, -1, h)),
        SKEncodedOrigin.BottomLeft => new(false, (_, h) => Map(1, 0, 0, 0, -1, h)),
        SKEncodedOrigin.LeftTop => new(true, (_, _) => Map(0, 1, 0, 1, 0, 0)),
        SKEncodedOrigin.RightTop => new(true, (w, _) => Map(0, -1, w, 1, 0, 0)),
        SKEncodedOrigin.RightBottom => new(true, (w, h) => Map(0, -1, w, -1, 0, h)),
        SKEncodedOrigin.LeftBottom => new(true, (_, h) => Map(0, 1, 0, -1, 0, h)),
        _ => new(false, (_, _) => SKMatrix.Identity),
    };

    /// <summary>Width and height once it stands; the same rule leads back.</summary>
    public (int Width, int Height) Upright(int width, int height) => OnItsSide ? (height, width) : (width, height);

    private static SKMatrix Map(float xx, float xy, float x, float yx, float yy, float y) => new(xx, xy, x, yx, yy, y, 0, 0, 1);
}
