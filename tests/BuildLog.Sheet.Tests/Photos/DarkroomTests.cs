using BuildLog.Sheet.Content;
using BuildLog.Sheet.Photos;
using SkiaSharp;

namespace BuildLog.Sheet.Tests.Photos;

public sealed class DarkroomTests
{
    [Theory]
    [InlineData(SKEncodedImageFormat.Jpeg)]
    [InlineData(SKEncodedImageFormat.Png)]
    [InlineData(SKEncodedImageFormat.Webp)]
    public void A_photo_of_the_three_usual_kinds_is_printed_as_it_is(SKEncodedImageFormat format)
    {
        var print = Printed(Pictures.Of(format));

        Assert.Equal((400, 300), (print.Width, print.Height));
        Assert.Equal((true, false, false, false), RedCorners(print));
    }

    // Exif 2.32, tag 274: which corner of the upright picture the file's first corner is.
    [Theory]
    [InlineData(1, true, false, false, false)]
    [InlineData(2, false, true, false, false)]
    [InlineData(3, false, false, false, true)]
    [InlineData(4, false, false, true, false)]
    [InlineData(5, true, false, false, false)]
    [InlineData(6, false, true, false, false)]
    [InlineData(7, false, false, false, true)]
    [InlineData(8, false, false, true, false)]
    public void A_photo_stands_as_the_camera_was_held(ushort orientation, bool upperLeft, bool upperRight, bool lowerLeft, bool lowerRight)
    {
        var print = Printed(Pictures.FromCamera(orientation));

        Assert.Equal(orientation > 4 ? (300, 400) : (400, 300), (print.Width, print.Height));
        Assert.Equal((upperLeft, upperRight, lowerLeft, lowerRight), RedCorners(print));
    }

    [Fact]
    public void A_print_says_nothing_of_place_or_camera()
    {
        var file = Pictures.FromCamera(1);
        Assert.True(file.AsSpan().IndexOf("GPS 51.4778 N"u8) > 0);

        var print = Printed(file);

        Assert.True(print.Jpeg.AsSpan().IndexOf("Exif"u8) < 0);
        Assert.True(print.Jpeg.AsSpan().IndexOf("GPS"u8) < 0);
    }

    // 144 points are 2 inches; 300 pixels to the inch make 600 across.
    [Fact]
    public void A_large_photo_is_made_as_small_as_the_paper_can_show()
    {
        var print = Printed(Pictures.Of(SKEncodedImageFormat.Jpeg, 2400, 1200), width: 144, height: 144);

        Assert.Equal((600, 300), (print.Width, print.Height));
    }

    [Fact]
    public void The_same_photo_gives_the_same_print()
        => Assert.Equal(Printed(Pictures.FromCamera(6)).Jpeg, Printed(Pictures.FromCamera(6)).Jpeg);

    [Fact]
    public void A_photo_that_ends_too_early_is_named()
        => Assert.Equal("The photo yard.jpg is damaged: the picture ends too early or cannot be read, so it was left out.", Refused(Pictures.Of(SKEncodedImageFormat.Jpeg)[..900]));

    [Fact]
    public void What_is_no_photo_is_named()
        => Assert.Equal("The photo yard.jpg is no JPEG, PNG or WebP that can be read, so it was left out.", Refused([.. "a letter"u8]));

    [Fact]
    public void A_huge_photo_is_refused_by_its_header()
        => Assert.Equal("The photo yard.jpg has 30000 × 20000 pixels, more than can be printed, so it was left out.", Refused(Pictures.ClaimingToBe(30000, 20000)));

    private static PreparedPhoto Printed(byte[] file, double width = 400, double height = 400) => Darkroom.Print(new SheetPhoto("yard.jpg", file), width, height).OrRefuse();

    private static string Refused(byte[] file) => Darkroom.Print(new SheetPhoto("yard.jpg", file), 100, 100).Refusal!.Message;

    private static (bool UpperLeft, bool UpperRight, bool LowerLeft, bool LowerRight) RedCorners(PreparedPhoto print)
    {
        using var bitmap = SKBitmap.Decode(print.Jpeg);
        bool Red(int x, int y) => bitmap.GetPixel(x, y) is { Red: > 200, Blue: < 60 };
        var (right, lower) = (print.Width - 20, print.Height - 20);
        return (Red(20, 20), Red(right, 20), Red(20, lower), Red(right, lower));
    }
}
