using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using BuildLog.Data.Attachments;
using BuildLog.Data.Files;
using BuildLog.Data.Vehicles;

namespace BuildLog.Data.Moving;

/// <summary>Writes the record, or what belongs to one vehicle, as a zip of JSON with its attachments. The same record gives the same bytes.</summary>
internal static class Export
{
    private static readonly JsonSerializerOptions Readable = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
    private static readonly DateTimeOffset NoTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero); // the earliest that a zip can say

    /// <exception cref="RecordException">It cannot be written; nothing is left behind.</exception>
    public static ExportReport To(ShopContext db, string path, string target, Vehicle? vehicle, bool overwrite, Handover? handover = null)
    {
        var file = WholeFile.Beside(path, target, overwrite, "shop.zip");
        var record = RecordEntries.Read(db);
        var share = vehicle is null ? null : VehicleShare.Of(record, (Vehicle)record.Find(vehicle.Uid)!, changesHands: handover is not null);
        return file.Write(stream =>
        {
            ExportReport report;
            using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true)) report = Fill(zip, db, record, share, AttachmentStore.Beside(path), file.Path, vehicle, handover);
            return report with { Bytes = stream.Length };
        });
    }

    private static ExportReport Fill(ZipArchive zip, ShopContext db, RecordEntries record, HashSet<Kept>? share, AttachmentStore store, string file, Vehicle? vehicle, Handover? handover)
    {
        var sums = new StringBuilder();
        var writer = new EntryWriter(db.Model, (kind, id) => record.Find(kind, id) is { } named && share?.Contains(named) != false ? named.Uid : null);
        var counts = new Dictionary<Matter, int>();
        var attachments = record.All.OfType<Attachment>().Where(attachment => share?.Contains(attachment) != false).ToList();

        // Before the entries, which name the files as they go along.
        var files = handover is null ? null : new HandoverFiles(handover, store, (name, bytes) => Add(zip, name, bytes, sums));
        files?.PutPapers();
        files?.PutAttachments(attachments);
        foreach (var (kind, all) in record.Kinds)
        {
            var entries = all.Where(entry => share?.Contains(entry) != false).ToList();
            if (entries.Count == 0) continue;
            counts[Matters.Of(kind.Root.ClrType)] = entries.Count;
            Add(zip, kind.File, new JsonArray([.. entries.Select(writer.Write)]), sums);
        }

        Add(zip, ExportFormat.Manifest, Manifest(counts, vehicle), sums);
        var lacking = files?.Lacking ?? AddFiles(zip, store, attachments, sums);
        using (var entry = Entry(zip, ExportFormat.Sums).Open()) entry.Write(Encoding.UTF8.GetBytes(sums.ToString()));
        return new(file, 0, counts, lacking);
    }

    private static JsonObject Manifest(Dictionary<Matter, int> counts, Vehicle? vehicle) => new()
    {
        ["format"] = ExportFormat.Name,
        ["version"] = ExportFormat.Version,
        ["schema"] = KnownMigrations.Ids[^1],
        ["vehicle"] = vehicle?.Uid.ToString(),
        ["entries"] = counts.Values.Sum(),
    };

    // What is missing or altered in the store is named and stays out; the entry that names it goes along.
    private static List<string> AddFiles(ZipArchive zip, AttachmentStore store, List<Attachment> attachments, StringBuilder sums)
    {
        var lacking = new List<string>();
        foreach (var attachment in attachments.DistinctBy(attachment => attachment.Sha256).OrderBy(attachment => attachment.Sha256, StringComparer.Ordinal))
        {
            using var file = store.Open(attachment.Sha256);
            if (!file.IsSound)
            {
                lacking.Add(attachment.FileName);
                continue;
            }

            using var entry = Entry(zip, ExportFormat.PlaceOf(attachment.Sha256)).Open();
            file.Content.CopyTo(entry);
            Sum(sums, attachment.Sha256, ExportFormat.PlaceOf(attachment.Sha256));
        }

        return lacking;
    }

    private static void Add(ZipArchive zip, string name, JsonNode content, StringBuilder sums)
        => Add(zip, name, Encoding.UTF8.GetBytes(content.ToJsonString(Readable) + "\n"), sums);

    private static void Add(ZipArchive zip, string name, byte[] bytes, StringBuilder sums)
    {
        using var entry = Entry(zip, name).Open();
        entry.Write(bytes);
        Sum(sums, ContentHash.Of(bytes), name);
    }

    private static ZipArchiveEntry Entry(ZipArchive zip, string name)
    {
        var entry = zip.CreateEntry(name);
        entry.LastWriteTime = NoTime;
        return entry;
    }

    private static void Sum(StringBuilder sums, string sha256, string name) => sums.Append(CultureInfo.InvariantCulture, $"{sha256}  {name}\n");
}

/// <summary>What was written out.</summary>
/// <param name="File">The zip.</param>
/// <param name="Bytes">Its size.</param>
/// <param name="Entries">How many of each kind.</param>
/// <param name="Lacking">Attachments whose file is missing or altered beside the record, so that it could not go along.</param>
public sealed record ExportReport(string File, long Bytes, IReadOnlyDictionary<Matter, int> Entries, IReadOnlyList<string> Lacking);
