using BuildLog.Sheet.Content;
using BuildLog.Sheet.Tests.Reading;
using BuildLog.Sheet.Tests.Samples;
using SkiaSharp;

namespace BuildLog.Sheet.Tests.Photos;

public sealed class PhotosOnTheSheetTests
{
    private static readonly SheetContent WithPhotos = KestrelPickup.Sheet with
    {
        TitlePhoto = new SheetPhoto("front.jpg", Pictures.FromCamera(6), "from the front"),
        Photos =
        [
            new SheetPhoto("old.png", Pictures.Of(SKEncodedImageFormat.Png), "the axle as it came", PhotoMoment.Before),
            new SheetPhoto("new.webp", Pictures.Of(SKEncodedImageFormat.Webp), "the axle now", PhotoMoment.After),
            new SheetPhoto("broken.jpg", new byte[] { 0xFF, 0xD8, 0 }, "lost"),
        ],
    };

    [Fact]
    public void They_are_in_the_file_with_their_captions_and_the_broken_one_is_named()
    {
        using var sheet = ReadBack.Of(WithPhotos);

        Assert.Equal(3, sheet.Pdf.GetPages().Sum(page => page.NumberOfImages));
        Assert.Contains("Before: the axle as it came", sheet.Text, StringComparison.Ordinal);
        Assert.Contains("After: the axle now", sheet.Text, StringComparison.Ordinal);
        Assert.Contains("broken.jpg: could not be printed", sheet.Text, StringComparison.Ordinal);
        Assert.Equal("The photo broken.jpg is no JPEG, PNG or WebP that can be read, so it was left out.", Assert.Single(sheet.Result.SkippedPhotos));
    }

    [Fact]
    public void Nothing_of_where_they_were_taken_is_in_the_file()
    {
        using var sheet = ReadBack.Of(WithPhotos);

        Assert.True(sheet.File.AsSpan().IndexOf("GPS 51"u8) < 0);
    }

    [Fact]
    public void The_same_photos_give_the_same_bytes()
    {
        using var first = ReadBack.Of(WithPhotos);
        using var second = ReadBack.Of(WithPhotos with { });

        Assert.Equal(first.File, second.File);
    }
}
