using BuildLog.Data.Attachments;

namespace BuildLog.Data.Moving;

/// <summary>The photos and papers of a handover on their way into the zip. A photo goes along only as a copy that tells nothing but the picture.</summary>
/// <param name="handover">What was asked for.</param>
/// <param name="store">Where the files lie.</param>
/// <param name="put">Puts a file into the zip.</param>
internal sealed class HandoverFiles(Handover handover, AttachmentStore store, Action<string, byte[]> put)
{
    private const int LongestStem = 80;

    /// <summary>Names of what could not go along.</summary>
    public List<string> Lacking { get; } = [];

    public void PutPapers()
    {
        foreach (var paper in handover.Papers) put(ExportFormat.Handover + paper.Name, paper.Content.ToArray());
    }

    /// <summary>Puts the files of the attachments into the zip, and lets the attachments speak of them; they are copies that nobody stores.</summary>
    public void PutAttachments(IEnumerable<Attachment> attachments)
    {
        var number = 0;
        foreach (var same in attachments.GroupBy(attachment => attachment.Sha256).OrderBy(same => same.Key, StringComparer.Ordinal))
        {
            var first = same.First();
            var file = Read(first);
            var photo = file is null ? null : handover.PhotoCopy(file);
            if ((photo ?? file) is not { } content || (photo is null && same.Any(Handover.MayBePhoto)))
            {
                Lacking.Add(first.FileName);
                continue;
            }

            var hash = ContentHash.Of(content);
            foreach (var attachment in same) Name(attachment, hash, content.Length, isPhoto: photo is not null);
            put(FormattableString.Invariant($"{(photo is null ? ExportFormat.HandoverPapers : ExportFormat.HandoverPhotos)}{++number:000}-{Plain(first.FileName)}"), content);
        }
    }

    private static void Name(Attachment attachment, string sha256, long length, bool isPhoto)
    {
        (attachment.Sha256, attachment.Length) = (sha256, length);
        if (isPhoto) (attachment.FileName, attachment.MediaType) = (Path.ChangeExtension(attachment.FileName, ".jpg"), Spoken("image/jpeg"));
    }

    /// <summary>Null where it is missing or altered.</summary>
    private byte[]? Read(Attachment attachment)
    {
        using var stored = store.Open(attachment.Sha256);
        if (!stored.IsSound) return null;
        using var bytes = new MemoryStream();
        stored.Content.CopyTo(bytes);
        return bytes.ToArray();
    }

    private static string Plain(string fileName)
    {
        var stem = Path.GetFileNameWithoutExtension(fileName);
        return string.Concat((stem.Length > LongestStem ? stem[..LongestStem] : stem).Select(Plain)) + string.Concat(Path.GetExtension(fileName).Select(Plain));
    }

    private static char Plain(char sign) => char.IsLetterOrDigit(sign) || sign is '.' or '_' ? sign : '-';
}
