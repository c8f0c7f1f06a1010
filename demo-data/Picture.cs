using BuildLog.Data;
using BuildLog.Data.Attachments;
using BuildLog.Data.Days;

namespace BuildLog.DemoData;

/// <summary>The pictures of the demo shop: drawn for it, they show nothing that exists.</summary>
internal static class Picture
{
    public static Attachment Attach(Shop shop, Kept about, string name, AttachmentKind what, string caption, string taken)
    {
        // An attachment is handed in as a file, as anybody hands it in.
        var folder = Directory.CreateTempSubdirectory("buildlog-picture-").FullName;
        try
        {
            var file = Path.Combine(folder, name);
            using (var picture = typeof(Picture).Assembly.GetManifestResourceStream(name)!)
            using (var copy = File.Create(file))
            {
                picture.CopyTo(copy);
            }

            return shop.Attach(about, file, what, caption, LooseDayText.Read(taken).OrRefuse());
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
