namespace BuildLog.Data.Attachments;

/// <summary>A file that was put into the store.</summary>
/// <param name="Sha256">Of its content, in lower-case hexadecimal digits: its name.</param>
/// <param name="Length">In bytes.</param>
public sealed record StoredFile(string Sha256, long Length);

/// <summary>What a comparison of the record with its store found; the lists hold hashes.</summary>
/// <param name="Named">How many files the record names.</param>
/// <param name="Missing">Named, and not there.</param>
/// <param name="Altered">Named, and no longer what was put in.</param>
/// <param name="Unnamed">There, and named by nothing: left of an entry that was never finished. They do no harm.</param>
public sealed record AttachmentsChecked(int Named, IReadOnlyList<string> Missing, IReadOnlyList<string> Altered, IReadOnlyList<string> Unnamed)
{
    public bool IsSound => Missing.Count == 0 && Altered.Count == 0;
}

/// <summary>What became of the files when a store was copied.</summary>
/// <param name="Folder">Where they now are; null where there were none.</param>
/// <param name="Count">How many there were.</param>
/// <param name="Copied">How many of them were not there yet.</param>
/// <param name="Altered">Hashes of those that are no longer what was put in; they were left out.</param>
public sealed record AttachmentsCopied(string? Folder, int Count, int Copied, IReadOnlyList<string> Altered);
