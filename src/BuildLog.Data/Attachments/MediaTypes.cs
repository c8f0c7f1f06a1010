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
        [".heif"] = "image/heif",
        [".tif"] = "image/tiff",
        [".tiff"] = "image/tiff",
        [".bmp"] = "image/bmp",
        [".dng"] = "image/x-adobe-dng",
        [".svg"] = "image/svg+xml",
        [".dxf"] = "image/vnd.dxf",
        [".pdf"] = "application/pdf",
        [".csv"] = "text/csv",
        [".txt"] = "text/plain",
    };

    public static string Of(string fileName) => ByEnding.GetValueOrDefault(Path.GetExtension(fileName), Unknown);

    /// <summary>A picture, by what it was stored as or by its ending.</summary>
    public static bool MayBePicture(string mediaType, string fileName)
        => mediaType.StartsWith("image/", StringComparison.OrdinalIgnoreCase) || Of(fileName).StartsWith("image/", StringComparison.Ordinal);

    /// <summary>What such a file is, where nobody says.</summary>
    public static AttachmentKind Usually(string mediaType) => mediaType switch
    {
        "image/svg+xml" or "image/vnd.dxf" => AttachmentKind.Drawing,
        _ when mediaType.StartsWith("image/", StringComparison.Ordinal) => AttachmentKind.Photo,
        _ => AttachmentKind.Paper,
    };
}
