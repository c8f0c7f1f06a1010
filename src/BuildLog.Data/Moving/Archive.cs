using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using BuildLog.Data.Attachments;
using BuildLog.Data.Files;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Moving;

/// <summary>An exported file, opened to be imported: it is believed only after every name, size and checksum in it has been looked at.</summary>
internal sealed class Archive : IDisposable
{
    private const int LongestSums = 32 * 1024 * 1024;

    // Of all its texts none is longer than a hundred thousand characters.
    private const int LongestEntry = 64 * 1024 * 1024;

    private readonly ZipArchive zip;
    private readonly Dictionary<string, string> sums;
    private readonly Dictionary<string, string> attachments = [];   // by checksum, where they lie

    private Archive(ZipArchive zip, IReadOnlyCollection<string> known)
    {
        this.zip = zip;
        CheckNames(known);
        sums = ReadSums();
        foreach (var entry in zip.Entries.Where(entry => entry.FullName != ExportFormat.Sums)) CheckSum(entry);
        foreach (var (name, sum) in sums.Where(file => IsAttachment(file.Key) || ExportFormat.IsHandedOver(file.Key))) attachments[sum] = name;
        Manifest = ReadManifest();
    }

    public JsonElement Manifest { get; }

    /// <summary>An earlier schema wrote it.</summary>
    public bool IsOfEarlier => Manifest.TryGetProperty("schema", out var schema) && schema.ValueKind == JsonValueKind.String && KnownMigrations.Ids.SkipLast(1).Contains(schema.GetString());

    /// <summary>The hashes of the attachments in it.</summary>
    public IReadOnlyCollection<string> Attachments => attachments.Keys;

    /// <param name="stream">The file, which can seek.</param>
    /// <param name="known">The files of entries that this program knows.</param>
    /// <exception cref="RefusedException">It is no export, is damaged, or is not to be trusted; the sentence says which.</exception>
    public static Archive Open(Stream stream, IReadOnlyCollection<string> known)
    {
        ZipArchive? zip = null;
        try
        {
            return new(zip = new ZipArchive(stream, ZipArchiveMode.Read, leaveOpen: true), known);
        }
        catch (Exception broken) when (broken is InvalidDataException or EndOfStreamException or NotSupportedException or OverflowException or ArgumentException)
        {
            zip?.Dispose();
            throw Refused(Spoken("the file is no zip, or it is damaged or cut off. Take another copy of it"));
        }
        catch
        {
            zip?.Dispose();
            throw;
        }
    }

    public void Dispose() => zip.Dispose();

    /// <summary>The entries of one kind, read one after the other; none where the file has none.</summary>
    public IEnumerable<JsonElement> Entries(string file)
    {
        if (!sums.ContainsKey(file)) yield break;
        using var sha256 = SHA256.Create();
        using var stream = new CryptoStream(Bounded(zip.GetEntry(file)!, ExportFormat.LongestEntries), sha256, CryptoStreamMode.Read);
        var entries = new JsonList(stream, () => Refused(Spoken($"{file} is no list of entries")), LongestEntry, () => TooLong(file));
        while (Next(file, entries) is { } entry) yield return entry;

        // Somebody may have written into the file since it was looked at.
        CheckSum(file, Convert.ToHexStringLower(sha256.Hash!));
    }

    public Stream OpenAttachment(string sha256) => zip.GetEntry(attachments[sha256])!.Open();

    private void CheckNames(IReadOnlyCollection<string> known)
    {
        if (zip.Entries.Count > ExportFormat.MostFiles) throw Refused(Spoken($"it holds more than {ExportFormat.MostFiles:N0} files"));
        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var name in zip.Entries.Select(entry => entry.FullName))
        {
            if (!seen.Add(name)) throw Refused(Spoken($"it holds {Shown.Quoted(name)} twice"));
            if (name is not (ExportFormat.Manifest or ExportFormat.Sums) && !known.Contains(name) && !IsAttachment(name) && !ExportFormat.IsHandover(name))
                throw Refused(Spoken($"it holds {Shown.Quoted(name)}, which belongs in no export; a newer program or somebody else wrote it"));
        }

        foreach (var name in (string[])[ExportFormat.Manifest, ExportFormat.Sums])
        {
            if (!seen.Contains(name)) throw Refused(Spoken($"it lacks {name}, so it is no export of BuildLog or was not written to its end"));
        }

        // What a header says of its size is checked again while it is read.
        if (zip.Entries.Sum(entry => (decimal)entry.Length) > ExportFormat.LongestTotal) throw Refused(Spoken("unpacked it is larger than a shop can be"));
    }

    private Dictionary<string, string> ReadSums()
    {
        var lines = Encoding.UTF8.GetString(ReadAll(ExportFormat.Sums)).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var read = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var line in lines)
        {
            if (line.Length < 67 || line[64..66] != "  " || !read.TryAdd(line[66..], line[..64])) throw Refused(Spoken($"{ExportFormat.Sums} is not as written"));
        }

        var files = zip.Entries.Select(entry => entry.FullName).Where(name => name != ExportFormat.Sums).ToHashSet(StringComparer.Ordinal);
        return files.SetEquals(read.Keys) ? read : throw Refused(Spoken($"{ExportFormat.Sums} names other files than it holds"));
    }

    private void CheckSum(ZipArchiveEntry entry)
    {
        var isFile = IsAttachment(entry.FullName) || ExportFormat.IsHandover(entry.FullName);
        using var stream = Bounded(entry, isFile ? ExportFormat.LongestAttachment : ExportFormat.LongestEntries);
        var sum = ContentHash.Of(stream);
        if (IsAttachment(entry.FullName) && sum != entry.FullName[ExportFormat.Attachments.Length..]) throw Refused(Spoken($"{entry.FullName} is not what its name says"));
        CheckSum(entry.FullName, sum);
    }

    private void CheckSum(string file, string sum)
    {
        if (sum != sums[file]) throw Refused(Spoken($"{file} is not as it was written: its checksum differs"));
    }

    private JsonElement ReadManifest()
    {
        var manifest = Parse(ExportFormat.Manifest, ReadAll(ExportFormat.Manifest));
        if (manifest.ValueKind != JsonValueKind.Object || !manifest.TryGetProperty("format", out var format) || format.ValueKind != JsonValueKind.String || format.GetString() != ExportFormat.Name)
            throw Refused(Spoken("it is no export of BuildLog"));
        if (!manifest.TryGetProperty("version", out var version) || version.ValueKind != JsonValueKind.Number || !version.TryGetInt32(out var number) || number != ExportFormat.Version)
            throw Refused(Spoken("a newer BuildLog wrote it. Update this one, then import"));
        return manifest;
    }

    private static JsonElement Parse(string file, byte[] bytes)
    {
        try
        {
            using var document = JsonDocument.Parse(bytes);
            return document.RootElement.Clone();
        }
        catch (JsonException broken)
        {
            throw NoJson(file, broken);
        }
    }

    private static JsonElement? Next(string file, JsonList entries)
    {
        try
        {
            return entries.Next();
        }
        catch (JsonException broken)
        {
            throw NoJson(file, broken);
        }
    }

    private byte[] ReadAll(string name)
    {
        using var stream = Bounded(zip.GetEntry(name)!, LongestSums);
        using var memory = new MemoryStream();
        stream.CopyTo(memory);
        return memory.ToArray();
    }

    private static BoundedStream Bounded(ZipArchiveEntry entry, long longest) => new(entry.Open(), longest, () => TooLong(entry.FullName));

    private static bool IsAttachment(string name)
        => name.StartsWith(ExportFormat.Attachments, StringComparison.Ordinal) && ContentHash.Is(name[ExportFormat.Attachments.Length..]);

    private static RefusedException NoJson(string file, JsonException broken) => Refused(Spoken($"{file} is no JSON (line {broken.LineNumber + 1})"));

    private static RefusedException TooLong(string name) => Refused(Spoken($"{Shown.Quoted(name)} is larger than anything BuildLog writes"));

    internal static RefusedException Refused(string what) => new("import", Spoken($"Nothing was imported: {what}."), "");
}
