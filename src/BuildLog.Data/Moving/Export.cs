using System.Globalization;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using BuildLog.Data.Attachments;
using BuildLog.Data.Changes;
using BuildLog.Data.Components;
using BuildLog.Data.Files;
using BuildLog.Data.Vehicles;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace BuildLog.Data.Moving;

/// <summary>Writes the record, or what belongs to one vehicle, as a zip of JSON with its attachments. The same record gives the same bytes.</summary>
internal static class Export
{
    private static readonly JsonSerializerOptions Readable = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
    private static readonly JsonWriterOptions Written = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
    private static readonly DateTimeOffset NoTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero); // the earliest that a zip can say

    // An entry and more, so that the packing gets pieces worth its while.
    private const int Piece = 64 * 1024;

    /// <exception cref="RecordException">It cannot be written; nothing is left behind.</exception>
    public static ExportReport To(ShopContext db, string path, string target, Vehicle? vehicle, bool overwrite, Handover? handover = null)
    {
        var file = WholeFile.Beside(path, target, overwrite, "shop.zip");
        db.Database.OpenConnection();
        using var oneState = ((SqliteConnection)db.Database.GetDbConnection()).BeginTransaction(deferred: true);
        db.Database.UseTransaction(oneState);
        var record = new StoredEntries(db);
        var share = vehicle is null ? null : VehicleShare.Of(db, record, vehicle, changesHands: handover is not null);
        return file.Write(stream =>
        {
            ExportReport report;
            using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true)) report = Fill(zip, db, record, share, AttachmentStore.Beside(path), file.Path, vehicle, handover);
            return report with { Bytes = stream.Length };
        });
    }

    private static ExportReport Fill(ZipArchive zip, ShopContext db, StoredEntries record, HashSet<EntryPlace>? share, AttachmentStore store, string file, Vehicle? vehicle, Handover? handover)
    {
        var sums = new StringBuilder();
        var writer = new EntryWriter(record, named => share?.Contains(named) != false ? record.UidOf(named) : null);
        var counts = new Dictionary<Matter, int>();
        var ids = share?.GroupBy(entry => entry.Root).ToDictionary(kind => kind.Key, kind => kind.Select(entry => entry.Id).ToList());
        var attachments = Attachments(db, ids);

        // Before the entries, which name the files as they go along.
        var files = handover is null ? null : new HandoverFiles(handover, store, (name, bytes) => Add(zip, name, bytes, sums));
        files?.PutPapers();
        files?.PutAttachments(attachments);
        var handedOver = files is null ? [] : attachments.ToDictionary(attachment => attachment.Uid);
        var staying = handover is null || vehicle is null ? [] : PartsNotOn(db, vehicle);
        foreach (var kind in record.Kinds)
        {
            var entries = ids is null ? record.Of(kind) : ids.TryGetValue(kind.Root, out var some) ? record.Of(kind, some) : [];
            var count = AddEntries(zip, kind.File, entries.Select(row => HandedOver(writer.Write(kind, row), row, handedOver, staying)), sums);
            if (count > 0) counts[Matters.Of(kind.Root.ClrType)] = count;
        }

        Add(zip, ExportFormat.Manifest, Manifest(counts, vehicle), sums);
        var lacking = files?.Lacking ?? AddFiles(zip, store, attachments, sums);
        using (var entry = Entry(zip, ExportFormat.Sums).Open()) entry.Write(Encoding.UTF8.GetBytes(sums.ToString()));
        return new(file, 0, counts, lacking);
    }

    private static List<Attachment> Attachments(ShopContext db, Dictionary<IEntityType, List<long>>? ids)
    {
        var all = db.Set<Attachment>().AsNoTracking();
        if (ids is null) return [.. all];
        var some = ids.GetValueOrDefault(db.Model.FindEntityType(typeof(Attachment))!) ?? [];
        return [.. all.Where(attachment => some.Contains(attachment.Id))];
    }

    private static HashSet<Guid> PartsNotOn(ShopContext db, Vehicle vehicle)
        => [.. db.Set<Component>().Where(part => !db.Fitments.Any(fitment => fitment.ComponentId == part.Id && fitment.VehicleId == vehicle.Id && fitment.To == null)).Select(part => part.Uid)];

    // A photo leaves as a copy, which its entry then speaks of; a part that is not on the vehicle stays with the shop and goes along for its history alone.
    private static JsonObject HandedOver(JsonObject entry, StoredRow row, Dictionary<Guid, Attachment> copies, HashSet<Guid> staying)
    {
        if (copies.Count == 0 && staying.Count == 0) return entry;
        var uid = Guid.Parse((string)row["Uid"]!);
        if (staying.Contains(uid))
        {
            entry["ownership"] = nameof(Ownership.Gone);
            entry["shelf"] = "";
        }

        if (!copies.TryGetValue(uid, out var copy)) return entry;
        entry["fileName"] = copy.FileName;
        entry["length"] = copy.Length;
        entry["mediaType"] = copy.MediaType;
        entry["sha256"] = copy.Sha256;
        return entry;
    }

    /// <summary>How many; where there are none, no file is made for them.</summary>
    private static int AddEntries(ZipArchive zip, string name, IEnumerable<JsonObject> entries, StringBuilder sums)
    {
        using var each = entries.GetEnumerator();
        if (!each.MoveNext()) return 0;

        var count = 0;
        using var sha256 = SHA256.Create();
        using (var stream = new CryptoStream(Entry(zip, name).Open(), sha256, CryptoStreamMode.Write))
        {
            using (var json = new Utf8JsonWriter(stream, Written))
            {
                json.WriteStartArray();
                do
                {
                    each.Current.WriteTo(json);
                    count++;
                    if (json.BytesPending > Piece) json.Flush();
                }
                while (each.MoveNext());
                json.WriteEndArray();
            }

            stream.Write("\n"u8);
        }

        Sum(sums, Convert.ToHexStringLower(sha256.Hash!), name);
        return count;
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
