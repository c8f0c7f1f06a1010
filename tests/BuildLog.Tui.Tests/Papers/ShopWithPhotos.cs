using BuildLog.Data;
using BuildLog.Data.Attachments;
using BuildLog.Data.Files;
using BuildLog.Data.Vehicles;
using BuildLog.DemoData;
using SkiaSharp;

namespace BuildLog.Tui.Tests.Papers;

/// <summary>The demo shop with photos of its pickup, as a camera writes them: with the place in plain sight.</summary>
internal sealed class ShopWithPhotos : IDisposable
{
    public const string Place = "GPS 51.4778 N";

    private readonly string record = DemoShop.CreateFreshCopy();

    public ShopWithPhotos()
    {
        Shop = ShopFile.Open(record);
        Brindle = Shop.FindVehicle("Brindle");
    }

    public Shop Shop { get; }

    public Vehicle Brindle { get; }

    public string Folder => Path.GetDirectoryName(record)!;

    public void Dispose()
    {
        Shop.Dispose();
        Directory.Delete(Folder, recursive: true);
    }

    public Attachment Attach(Kept about, string fileName, byte[] content, string mediaType, string caption = "")
    {
        using var stream = new MemoryStream(content);
        var stored = AttachmentStore.Beside(record).Put(stream);
        return Shop.Add(new Attachment(about) { FileName = fileName, MediaType = mediaType, Sha256 = stored.Sha256, Length = stored.Length, Caption = caption });
    }

    public Attachment AttachPhoto(Kept about, string fileName, SKColor colour, string caption = "") => Attach(about, fileName, Photo(colour), "image/jpeg", caption);

    private static byte[] Photo(SKColor colour)
    {
        using var bitmap = new SKBitmap(40, 30);
        bitmap.Erase(colour);
        using var image = SKImage.FromBitmap(bitmap);
        using var file = image.Encode(SKEncodedImageFormat.Jpeg, 90);
        var jpeg = file.ToArray();
        byte[] comment = [0xFF, 0xFE, 0, (byte)(Place.Length + 2), .. System.Text.Encoding.ASCII.GetBytes(Place)];
        return [.. jpeg[..2], .. comment, .. jpeg[2..]];
    }
}
