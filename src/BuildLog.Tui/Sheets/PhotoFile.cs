using BuildLog.Gearing.Quantities;
using BuildLog.Sheet.Content;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Sheets;

/// <summary>A photo named on the command line.</summary>
internal static class PhotoFile
{
    /// <summary>More than any camera writes for one picture.</summary>
    private const long MostBytes = 200L * 1024 * 1024;

    public static Parsed<SheetPhoto> Read(string path, PhotoMoment when)
    {
        try
        {
            if (TypedPath.Read(path, "front.jpg").Refusal is { } unreadable) return unreadable;

            var file = new FileInfo(path);
            if (!file.Exists) return Wrong(Spoken($"There is no photo {Shown.Quoted(path)}."));
            if (file.Length > MostBytes) return Wrong(Spoken($"{Shown.Quoted(path)} is larger than a photo can be: more than 200 MB."));
            return new SheetPhoto(file.Name, File.ReadAllBytes(path), Path.GetFileNameWithoutExtension(file.Name), when);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return Wrong(Spoken($"{Shown.Quoted(path)} cannot be read ({trouble.Message.TrimEnd('.')})."));
        }
    }

    private static Refusal Wrong(string message) => new("photo", message, "front.jpg");
}
