using System.Text.Json.Nodes;
using BuildLog.Data.Attachments;
using BuildLog.Data.Changes;
using BuildLog.Data.Notes;
using BuildLog.Data.Workshops;
using BuildLog.Gearing.Quantities;
using Microsoft.EntityFrameworkCore.Metadata;

namespace BuildLog.Data.Moving;

/// <summary>Merges an exported file into the record: what is new is added, what is here already stays, and everything comes in or nothing.</summary>
/// <remarks>Entries are the same where their stable identifier is. One that was changed on either side stays as it is here and is named.</remarks>
internal sealed class Import
{
    private readonly ShopContext db;
    private readonly Archive archive;
    private readonly Dictionary<(IEntityType Root, Guid Uid), long> known = [];
    private readonly Dictionary<Matter, int> added = [];
    private readonly List<string> differing = [];
    private readonly List<Kept> came = [];
    private int alike;

    private Import(ShopContext db, Archive archive) => (this.db, this.archive) = (db, archive);

    /// <exception cref="RefusedException">An entry is not as described or cannot be in this record; nothing is imported.</exception>
    public static ImportReport From(ShopContext db, Archive archive) => new Import(db, archive).Run();

    public static IReadOnlyCollection<string> FilesOf(IModel model) => [.. ExportedKinds.Of(model).Select(kind => kind.File)];

    private ImportReport Run()
    {
        var here = RecordEntries.Read(db);
        foreach (var (kind, entries) in here.Kinds)
        {
            foreach (var entry in entries) known[(kind.Root, entry.Uid)] = entry.Id;
        }

        foreach (var (kind, _) in here.Kinds) Add(kind, here);
        foreach (var entry in came) CheckSubject(entry);

        var files = archive.Attachments.ToHashSet(StringComparer.Ordinal);
        var lacking = came.OfType<Attachment>().Where(attachment => !files.Contains(attachment.Sha256)).Select(attachment => attachment.FileName);
        return new(added, alike, differing, [.. lacking], IsDry: false);
    }

    private void Add(ExportedKind kind, RecordEntries here)
    {
        var writer = new EntryWriter(db.Model, (type, id) => here.Find(type, id)?.Uid);
        var reader = new EntryReader(kind, (type, uid) => known.TryGetValue((type.GetRootType(), uid), out var id) ? id : null, archive.IsOfEarlier);
        var coming = new List<Kept>();
        var number = 0;
        foreach (var json in archive.Entries(kind.File))
        {
            var entry = reader.Read(json, ++number);
            if (here.Find(entry.Uid) is { } ours)
            {
                if (JsonNode.DeepEquals(writer.Write(ours), JsonNode.Parse(json.GetRawText()))) alike++;
                else differing.Add(Words(ours));
            }
            else if (entry is Workshop && here.All.OfType<Workshop>().FirstOrDefault() is { } shop)
            {
                differing.Add(Words(shop));
            }
            else
            {
                coming.Add(entry);
            }
        }

        Store(kind, coming);
    }

    // Kind by kind, so that those that follow can name these by the numbers they have here.
    private void Store(ExportedKind kind, List<Kept> coming)
    {
        if (coming.Count == 0) return;
        if (coming.Select(entry => entry.Uid).Distinct().Count() != coming.Count) throw Archive.Refused($"{kind.File} holds an entry twice");

        foreach (var entry in coming)
        {
            try
            {
                // What notes and papers are about may come later; that is asked when all are there.
                if (entry is Note or Attachment) ((Entered)entry).Check();
                else if (entry is Entered entered) Entries.CheckAll(db, entered);
                db.Add(entry);
            }
            catch (RefusedException refused)
            {
                throw Archive.Refused($"{Words(entry)} cannot be in this record. {refused.Message.TrimEnd('.')}");
            }
        }

        db.SaveChanges();
        foreach (var entry in coming) known[(kind.Root, entry.Uid)] = entry.Id;
        added[Matters.Of(kind.Root.ClrType)] = coming.Count;
        came.AddRange(coming);
    }

    private void CheckSubject(Kept entry)
    {
        switch (entry)
        {
            case Note note: References.Check(db, note.About, note.AboutUid); break;
            case Attachment attachment: References.Check(db, attachment.About, attachment.AboutUid); break;
        }
    }

    private static string Words(Kept entry)
    {
        var kind = Matters.Of(entry).InWords();
        return RecordWords.Title(entry) is { Length: > 0 } title ? $"{kind} {title}" : $"a {kind}";
    }
}

/// <summary>What came in.</summary>
/// <param name="Added">How many new entries of each kind.</param>
/// <param name="Alike">Entries that were here already, the same.</param>
/// <param name="Differing">Entries that are here and were changed on either side; they stay as they are here.</param>
/// <param name="Lacking">Attachments that came without their file.</param>
/// <param name="IsDry">It was tried only: nothing was stored.</param>
public sealed record ImportReport(IReadOnlyDictionary<Matter, int> Added, int Alike, IReadOnlyList<string> Differing, IReadOnlyList<string> Lacking, bool IsDry);
