namespace BuildLog.Tui.Papers;

/// <summary>What kind of file a name promises.</summary>
internal static class FileKind
{
    private static readonly Dictionary<string, string> Known = new(StringComparer.OrdinalIgnoreCase)
    {
        [".jpg"] = "image/jpeg",
        [".jpeg"] = "image/jpeg",
        [".png"] = "image/png",
        [".webp"] = "image/webp",
        [".heic"] = "image/heic",
        [".pdf"] = "application/pdf",
        [".txt"] = "text/plain",
        [".csv"] = "text/csv",
    };

    public static string Of(string path) => Known.GetValueOrDefault(Path.GetExtension(path), "application/octet-stream");
}
