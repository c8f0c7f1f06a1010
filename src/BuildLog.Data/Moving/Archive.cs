using System.IO.Compression;
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

    private readonly ZipArchive zip;
    private readonly Dictionary<string, string> sums;
    private readonly Dictionary<string, string> attachments = [];   // by checksum, where they lie
    private readonly Dictionary<string, byte[]> texts = [];

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
            throw Refused("the file is no zip, or it is damaged or cut off. Take another copy of it");
        }
        catch
        {
            zip?.Dispose();
            throw;
        }
    }

    public void Dispose() => zip.Dispose();

    /// <summary>The entries of one kind; none where the file has none.</summary>
    public IReadOnlyList<JsonElement> Entries(string file)
    {
        if (!texts.TryGetValue(file, out var bytes)) return [];
        var json = Parse(file, bytes);
        return json.ValueKind == JsonValueKind.Array ? [.. json.EnumerateArray()] : throw Refused($"{file} is no list of entries");
    }

    public Stream OpenAttachment(string sha256) => zip.GetEntry(attachments[sha256])!.Open();

    private void CheckNames(IReadOnlyCollection<string> known)
    {
        if (zip.Entries.Count > ExportFormat.MostFiles) throw Refused($"it holds more than {ExportFormat.MostFiles:N0} files");
        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var name in zip.Entries.Select(entry => entry.FullName))
        {
            if (!seen.Add(name)) throw Refused($"it holds {Shown.Quoted(name)} twice");
            if (name is not (ExportFormat.Manifest or ExportFormat.Sums) && !known.Contains(name) && !IsAttachment(name) && !ExportFormat.IsHandover(name))
                throw Refused($"it holds {Shown.Quoted(name)}, which belongs in no export; a newer program or somebody else wrote it");
        }

        foreach (var name in (string[])[ExportFormat.Manifest, ExportFormat.Sums])
        {
            if (!seen.Contains(name)) throw Refused($"it lacks {name}, so it is no export of BuildLog or was not written to its end");
        }

        // What a header says of its size is checked again while it is read.
        if (zip.Entries.Sum(entry => (decimal)entry.Length) > ExportFormat.LongestTotal) throw Refused("unpacked it is larger than a shop can be");
    }

    private Dictionary<string, string> ReadSums()
    {
        using var stream = zip.GetEntry(ExportFormat.Sums)!.Open();
        var lines = Encoding.UTF8.GetString(ReadAll(stream, LongestSums, ExportFormat.Sums)).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var read = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var line in lines)
        {
            if (line.Length < 67 || line[64..66] != "  " || !read.TryAdd(line[66..], line[..64])) throw Refused($"{ExportFormat.Sums} is not as written");
        }

        var files = zip.Entries.Select(entry => entry.FullName).Where(name => name != ExportFormat.Sums).ToHashSet(StringComparer.Ordinal);
        return files.SetEquals(read.Keys) ? read : throw Refused($"{ExportFormat.Sums} names other files than it holds");
    }

    private void CheckSum(ZipArchiveEntry entry)
    {
        using var stream = entry.Open();
        string sum;
        if (IsAttachment(entry.FullName) || ExportFormat.IsHandover(entry.FullName))
        {
            using var bounded = new BoundedStream(stream, ExportFormat.LongestAttachment, () => TooLong(entry.FullName));
            sum = ContentHash.Of(bounded);
            if (IsAttachment(entry.FullName) && sum != entry.FullName[ExportFormat.Attachments.Length..]) throw Refused($"{entry.FullName} is not what its name says");
        }
        else
        {
            var bytes = texts[entry.FullName] = ReadAll(stream, ExportFormat.LongestEntries, entry.FullName);
            sum = ContentHash.Of(bytes);
        }

        if (sum != sums[entry.FullName]) throw Refused($"{entry.FullName} is not as it was written: its checksum differs");
    }

    private JsonElement ReadManifest()
    {
        var manifest = Parse(ExportFormat.Manifest, texts[ExportFormat.Manifest]);
        if (manifest.ValueKind != JsonValueKind.Object || !manifest.TryGetProperty("format", out var format) || format.ValueKind != JsonValueKind.String || format.GetString() != ExportFormat.Name)
            throw Refused("it is no export of BuildLog");
        if (!manifest.TryGetProperty("version", out var version) || version.ValueKind != JsonValueKind.Number || !version.TryGetInt32(out var number) || number != ExportFormat.Version)
            throw Refused("a newer BuildLog wrote it. Update this one, then import");
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
            throw Refused($"{file} is no JSON (line {broken.LineNumber + 1})");
        }
    }

    private static byte[] ReadAll(Stream stream, long longest, string name)
    {
        using var bounded = new BoundedStream(stream, longest, () => TooLong(name));
        using var memory = new MemoryStream();
        bounded.CopyTo(memory);
        return memory.ToArray();
    }

    private static bool IsAttachment(string name)
        => name.StartsWith(ExportFormat.Attachments, StringComparison.Ordinal) && ContentHash.Is(name[ExportFormat.Attachments.Length..]);

    private static RefusedException TooLong(string name) => Refused($"{Shown.Quoted(name)} is larger than anything BuildLog writes");

    internal static RefusedException Refused(string what) => new("import", $"Nothing was imported: {what}.", "");
}
