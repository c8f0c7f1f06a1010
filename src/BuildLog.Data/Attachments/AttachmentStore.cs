using System.Security.Cryptography;
using BuildLog.Data.Files;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Attachments;

/// <summary>Photos, receipts and papers as files beside the record, each under the SHA-256 of its content: <c>shop.files/ab/abcdef…</c>.</summary>
/// <remarks>
/// A file is written once and never changed; the same content is kept once. Since its name is its content, whether it is still what was put in
/// can be told at any time. Only the owner can read what lies here.
/// </remarks>
public sealed class AttachmentStore
{
    /// <summary>What one file may have: a long scan, but no film.</summary>
    public const long LargestBytes = 100 * 1024 * 1024;

    private const string Unfinished = ".tmp";
    private static readonly TimeSpan LongestWriting = TimeSpan.FromDays(1);

    private AttachmentStore(string folder) => Folder = folder;

    /// <summary>Made when the first file is put in.</summary>
    public string Folder { get; }

    /// <summary>The store of a record, or of a copy of one.</summary>
    public static AttachmentStore Beside(string databasePath)
    {
        var full = Path.GetFullPath(databasePath);
        var beside = Path.ChangeExtension(full, ".files");
        return new(beside == full ? full + ".files" : beside);
    }

    /// <summary>Keeps a file; it is on the disk when this returns.</summary>
    /// <param name="content">From where it stands to its end.</param>
    /// <exception cref="RefusedException">It is empty or too large; nothing is kept.</exception>
    /// <exception cref="RecordException">It cannot be written; nothing is kept.</exception>
    public StoredFile Put(Stream content) => Guard(() => Write(content));

    /// <summary>Opens a file after comparing all of it with its name.</summary>
    public OpenedAttachment Open(string sha256) => Guard(() => OpenChecked(sha256));

    /// <summary>Compares the files that the record names with those that lie here.</summary>
    /// <param name="named">The hashes that the record names; twice is no trouble.</param>
    public AttachmentsChecked Check(IEnumerable<string> named) => Guard(() => Compare(named.ToHashSet(StringComparer.Ordinal)));

    /// <summary>Copies every sound file to another store that does not have it yet.</summary>
    internal AttachmentsCopied CopyTo(AttachmentStore other)
    {
        var here = Hashes().ToList();
        var lacking = here.Where(sha256 => other.StateOf(sha256) != FileState.Sound).ToList();
        var altered = lacking.Where(sha256 => !CopyTo(other, sha256)).ToList();
        return new(here.Count > 0 ? other.Folder : null, here.Count, lacking.Count - altered.Count, altered);
    }

    private bool CopyTo(AttachmentStore other, string sha256)
    {
        using var file = OpenChecked(sha256);
        if (file.IsSound) other.Write(file.Content);
        return file.IsSound;
    }

    private static RefusedException TooLarge()
        => new("size", Spoken($"The file is larger than {LargestBytes / (1024 * 1024)} MB, which is the most an attachment may have. Make it smaller, or keep it elsewhere and note where."), "");

    private StoredFile Write(Stream content)
    {
        OwnerOnly.CreateFolder(Folder);
        DeleteLeftovers();
        var unfinished = Path.Combine(Folder, Guid.NewGuid().ToString("N") + Unfinished);
        try
        {
            var stored = WriteHashing(content, unfinished);
            var place = PlaceOf(stored.Sha256);

            // What lies there under this name and is still sound is the same; what is altered is made good.
            if (StateOf(stored.Sha256) != FileState.Sound)
            {
                OwnerOnly.CreateFolder(Path.GetDirectoryName(place)!);
                FinishedName.Give(unfinished, place);
            }

            return stored;
        }
        finally
        {
            File.Delete(unfinished);
        }
    }

    private static StoredFile WriteHashing(Stream content, string path)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        using var file = OwnerOnly.OpenFile(path);
        var buffer = new byte[81920];
        var length = 0L;
        while (content.Read(buffer) is > 0 and var count)
        {
            length += count;
            if (length > LargestBytes) throw TooLarge();
            hash.AppendData(buffer, 0, count);
            file.Write(buffer, 0, count);
        }

        if (length == 0) throw new RefusedException("size", Spoken("The file is empty (0 bytes), so there is nothing to keep. Choose another."), "");
        file.Flush(flushToDisk: true);
        return new(Convert.ToHexStringLower(hash.GetHashAndReset()), length);
    }

    private OpenedAttachment OpenChecked(string sha256)
    {
        if (!ContentHash.Is(sha256)) return new(Folder, FileState.Missing);
        var place = PlaceOf(sha256);
        if (!File.Exists(place)) return new(place, FileState.Missing);

#pragma warning disable CA2000 // It is closed with what is returned.
        var file = new FileStream(place, FileMode.Open, FileAccess.Read, FileShare.Read);
#pragma warning restore CA2000
        try
        {
            var state = ContentHash.Of(file) == sha256 ? FileState.Sound : FileState.Altered;
            file.Position = 0;
            return new(place, state, file);
        }
        catch
        {
            file.Dispose();
            throw;
        }
    }

    private FileState StateOf(string sha256)
    {
        using var file = OpenChecked(sha256);
        return file.State;
    }

    private AttachmentsChecked Compare(HashSet<string> named)
    {
        var states = named.Order(StringComparer.Ordinal).ToLookup(StateOf);
        return new(
            named.Count,
            [.. states[FileState.Missing]],
            [.. states[FileState.Altered]],
            [.. Hashes().Where(sha256 => !named.Contains(sha256)).Order(StringComparer.Ordinal)]);
    }

    private IEnumerable<string> Hashes() => Directory.Exists(Folder)
        ? Directory.EnumerateFiles(Folder, "*", SearchOption.AllDirectories).Where(IsInItsPlace).Select(file => Path.GetFileName(file))
        : [];

    private bool IsInItsPlace(string file) => ContentHash.Is(Path.GetFileName(file)) && PlaceOf(Path.GetFileName(file)) == file;

    /// <summary>Where it lies, or would.</summary>
    internal string PlaceOf(string sha256) => Path.Combine(Folder, sha256[..2], sha256);

    // Of programs that were killed while they wrote.
    private void DeleteLeftovers()
    {
        foreach (var left in Directory.EnumerateFiles(Folder, "*" + Unfinished))
        {
            if (DateTime.UtcNow - File.GetLastWriteTimeUtc(left) > LongestWriting) File.Delete(left);
        }
    }

    private T Guard<T>(Func<T> work) => FileTroubles.Guard(Folder, work);
}
