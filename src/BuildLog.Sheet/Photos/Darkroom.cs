using BuildLog.Gearing.Quantities;
using BuildLog.Sheet.Content;
using SkiaSharp;

namespace BuildLog.Sheet.Photos;

/// <summary>Makes prints of photos: turned as the camera was held, as large as the paper can show, and without place, time or camera.</summary>
/// <remarks>A print is drawn anew and encoded as a plain JPEG, so nothing else of the file comes along. The same photo gives the same print.</remarks>
internal static class Darkroom
{
    private const double PixelsPerPoint = 300 / 72.0;      // 300 to the inch, what a good printer shows
    private const long MostPixels = 80_000_000;            // about 320 MB unpacked
    private const int Quality = 86;

    private static readonly SKColorSpace Srgb = SKColorSpace.CreateSrgb();

    private const string RightKinds = "a JPEG, PNG or WebP of at most 80 million pixels";

    /// <param name="photo">The photo.</param>
    /// <param name="width">The most it may take on the page, points.</param>
    /// <param name="height">The most it may take on the page, points.</param>
    public static Parsed<PreparedPhoto> Print(SheetPhoto photo, double width, double height)
    {
        using var file = new MemoryStream(photo.File.ToArray());
        using var codec = SKCodec.Create(file, out var opened);
        if (opened != SKCodecResult.Success || codec.EncodedFormat is not (SKEncodedImageFormat.Jpeg or SKEncodedImageFormat.Png or SKEncodedImageFormat.Webp))
            return Skipped(photo, Spoken("is no JPEG, PNG or WebP that can be read"));

        // The header alone says how large it is: nothing huge is unpacked.
        if ((long)codec.Info.Width * codec.Info.Height > MostPixels)
            return Skipped(photo, Spoken($"has {codec.Info.Width} × {codec.Info.Height} pixels, more than can be printed"));

        var turn = Turn.Of(codec.EncodedOrigin);
        var (wide, high) = turn.Upright(codec.Info.Width, codec.Info.Height);
        var scale = Math.Min(1, PixelsPerPoint * Math.Min(width / wide, height / high));
        using var picture = Unpacked(codec, scale);
        return picture is null ? Skipped(photo, Spoken("is damaged: the picture ends too early or cannot be read")) : Drawn(picture, turn, Pixels(wide * scale), Pixels(high * scale));
    }

    private static Refusal Skipped(SheetPhoto photo, string trouble) =>
        new("photo", Spoken($"The photo {Shown.Cut(photo.Name)} {trouble}, so it was left out."), RightKinds);

    private static int Pixels(double length) => Math.Max(1, (int)Math.Round(length));

    /// <summary>The picture as it lies in the file, already smaller where the format can do that; null if it is damaged.</summary>
    private static SKBitmap? Unpacked(SKCodec codec, double scale)
    {
        var size = codec.GetScaledDimensions((float)scale);
        var bitmap = new SKBitmap(new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, SKAlphaType.Premul, Srgb));
        if (codec.GetPixels(bitmap.Info, bitmap.GetPixels()) == SKCodecResult.Success) return bitmap;

        bitmap.Dispose();
        return null;
    }

    private static PreparedPhoto Drawn(SKBitmap picture, Turn turn, int width, int height)
    {
        using var surface = SKSurface.Create(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Premul, Srgb));
        using var image = SKImage.FromBitmap(picture);
        var (across, down) = turn.Upright(width, height);
        surface.Canvas.Clear(SKColors.White);              // what was see-through is paper
        surface.Canvas.SetMatrix(turn.Matrix(width, height));
        surface.Canvas.DrawImage(image, new SKRect(0, 0, across, down), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        using var print = surface.Snapshot();
        using var jpeg = print.Encode(SKEncodedImageFormat.Jpeg, Quality);
        return new PreparedPhoto(jpeg.ToArray(), width, height);
    }
}
