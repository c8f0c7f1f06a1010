namespace BuildLog.Data.Attachments;

/// <summary>The kind of a file by its ending, as IANA registers it.</summary>
internal static class MediaTypes
{
    private const string Unknown = "application/octet-stream";

    private static readonly Dictionary<string, string> ByEnding = new(StringComparer.OrdinalIgnoreCase)
    {
        [".jpg"] = "image/jpeg",
        [".jpeg"] = "image/jpeg",
        [".png"] = "image/png",
        [".gif"] = "image/gif",
        [".webp"] = "image/webp",
        [".heic"] = "image/heic",
        [".tif"] = "image/tiff",
        [".tiff"] = "image/tiff",
        [".svg"] = "image/svg+xml",
        [".dxf"] = "image/vnd.dxf",
        [".pdf"] = "application/pdf",
        [".csv"] = "text/csv",
        [".txt"] = "text/plain",
    };

    public static string Of(string fileName) => ByEnding.GetValueOrDefault(Path.GetExtension(fileName), Unknown);

    /// <summary>What such a file is, where nobody says.</summary>
    public static AttachmentKind Usually(string mediaType) => mediaType switch
    {
        "image/svg+xml" or "image/vnd.dxf" => AttachmentKind.Drawing,
        _ when mediaType.StartsWith("image/", StringComparison.Ordinal) => AttachmentKind.Photo,
        _ => AttachmentKind.Paper,
    };
}
