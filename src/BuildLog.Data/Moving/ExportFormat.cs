namespace BuildLog.Data.Moving;

/// <summary>What lies in an exported file, and how much of it is believable. docs/export describes it for others.</summary>
internal static class ExportFormat
{
    public const string Name = "buildlog-export";

    /// <summary>Goes up when a reader of the last one would go wrong.</summary>
    public const int Version = 1;

    public const string Manifest = "manifest.json";

    /// <summary>One line a file, as <c>sha256sum -c</c> reads it.</summary>
    public const string Sums = "SHA256SUMS";

    public const string Attachments = "attachments/";

    /// <summary>Papers for people, which whoever imports leaves; and below it the files of the attachments under names that people read.</summary>
    public const string Handover = "handover/";

    public const string HandoverPhotos = Handover + "photos/";

    public const string HandoverPapers = Handover + "papers/";

    private const int LongestName = 200;

    public const int MostFiles = 100_000;

    /// <summary>Of one file of entries, unpacked: five million fitments. It is read an entry at a time.</summary>
    public const long LongestEntries = 4L * 1024 * 1024 * 1024;

    /// <summary>Of one attachment, unpacked.</summary>
    public const long LongestAttachment = 100L * 1024 * 1024;

    public const long LongestTotal = 16L * 1024 * 1024 * 1024;

    /// <summary><c>attachments/ab12…</c>.</summary>
    public static string PlaceOf(string sha256) => Attachments + sha256;

    /// <summary>The file of an attachment, found by its checksum.</summary>
    public static bool IsHandedOver(string name)
        => name.StartsWith(HandoverPhotos, StringComparison.Ordinal) || name.StartsWith(HandoverPapers, StringComparison.Ordinal);

    /// <summary>A paper for people under a name that any disk takes: no folder above it, no sign that a shell or a system reads.</summary>
    public static bool IsHandover(string name)
        => name.StartsWith(Handover, StringComparison.Ordinal) && name.Length <= LongestName
            && name.Split('/').All(part => part.Length > 0 && part[0] != '.' && part.All(c => char.IsLetterOrDigit(c) || c is '.' or '-' or '_'));
}
