using System.Text.Json.Nodes;
using BuildLog.Data.Attachments;
using BuildLog.Data.Changes;
using BuildLog.Data.Notes;
using BuildLog.Data.Rows;
using BuildLog.Data.Workshops;
using BuildLog.Gearing.Quantities;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace BuildLog.Data.Moving;

/// <summary>Merges an exported file into the record: what is new is added, what is here already stays, and everything comes in or nothing.</summary>
/// <remarks>Entries are the same where their stable identifier is. One that was changed on either side stays as it is here and is named.</remarks>
internal sealed class Import
{
    // What was loaded for the entries before is let go of, so that a million need no more memory than these.
    private const int AtATime = 500;

    private readonly ShopContext db;
    private readonly Archive archive;
    private readonly StoredEntries here;
    private readonly EntryWriter writer;
    private readonly Dictionary<ExportedKind, long> lasts;
    private readonly string? isHere;
    private readonly Dictionary<Matter, int> added = [];
    private readonly List<string> differing = [];
    private readonly List<string> lacking = [];
    private readonly HashSet<string> files;
    private int alike;

    private Import(ShopContext db, Archive archive)
    {
        (this.db, this.archive, here) = (db, archive, new(db));
        writer = new(here, here.UidOf);
        files = archive.Attachments.ToHashSet(StringComparer.Ordinal);
        lasts = here.Kinds.ToDictionary(kind => kind, here.LastOf);
        var filled = here.Kinds.Select((kind, number) => (kind, number)).Where(each => lasts[each.kind] > 0)
            .Select(each => FormattableString.Invariant($"SELECT {each.number} AS \"Kind\", \"Id\" FROM \"{each.kind.Root.GetTableName()}\" WHERE \"Uid\" = $0 AND \"Id\" <= {lasts[each.kind]}"));
        isHere = string.Join(" UNION ALL ", filled) is { Length: > 0 } sql ? sql : null;
    }

    /// <exception cref="RefusedException">An entry is not as described or cannot be in this record; nothing is imported.</exception>
    public static ImportReport From(ShopContext db, Archive archive) => new Import(db, archive).Run();

    public static IReadOnlyCollection<string> FilesOf(IModel model) => [.. ExportedKinds.Of(model).Select(kind => kind.File)];

    private ImportReport Run()
    {
        db.Journal.StoreAsItGoes();
        foreach (var kind in here.Kinds) Add(kind);
        db.LetGo();
        foreach (var kind in here.Kinds) CheckSubjects(kind);
        return new(added, alike, differing, lacking, IsDry: false);
    }

    // Kind by kind, so that those that follow can name these by the numbers they have here.
    private void Add(ExportedKind kind)
    {
        var reader = new EntryReader(kind, here.IdOf, archive.IsOfEarlier);
        var (number, matter) = (0, Matters.Of(kind.Root.ClrType));
        foreach (var json in archive.Entries(kind.File))
        {
            if (++number % AtATime == 0) db.LetGo();
            var entry = reader.Read(json, number);
            if (Here(entry.Uid) is { } ours)
            {
                if (ours.Kind == kind && JsonNode.DeepEquals(writer.Write(kind, here.Of(new(kind.Root, ours.Id))), JsonNode.Parse(json.GetRawText()))) alike++;
                else differing.Add(Words(Stored(ours.Kind, ours.Id)));
            }
            else if (entry is Workshop && lasts[kind] > 0)
            {
                differing.Add(Words(db.Set<Workshop>().AsNoTracking().First()));
            }
            else
            {
                if (here.IdOf(kind.Root, entry.Uid) is not null) throw Archive.Refused(Spoken($"{kind.File} holds an entry twice"));
                Store(entry);
                added[matter] = added.GetValueOrDefault(matter) + 1;
            }
        }
    }

    private void Store(Kept entry)
    {
        try
        {
            // What notes and papers are about may come later; that is asked when all are there.
            if (entry is Note or Attachment) ((Entered)entry).Check();
            else if (entry is Entered entered) Entries.CheckAllByHand(db, entered);
        }
        catch (RefusedException refused)
        {
            throw Archive.Refused(Spoken($"{Words(entry)} cannot be in this record. {refused.Message.TrimEnd('.')}"));
        }

        NewRecord.Link(db, entry);
        NewRecord.Insert(db, entry);
        if (entry is Attachment attachment && !files.Contains(attachment.Sha256)) lacking.Add(attachment.FileName);
    }

    /// <summary>Where the entry lies that was here before; null if there was none.</summary>
    private (ExportedKind Kind, long Id)? Here(Guid uid)
        => isHere is not null && db.Rows.Row(isHere, uid) is { } row ? (here.Kinds[(int)(long)row["Kind"]!], (long)row["Id"]!) : null;

    private Kept Stored(ExportedKind kind, long id) => Everything.Of(db, kind.Root.ClrType).AsNoTrackingWithIdentityResolution().Single(entry => entry.Id == id);

    private void CheckSubjects(ExportedKind kind)
    {
        if (!EntryShape.IsAbout(kind.Root)) return;
        foreach (var row in here.After(kind, lasts[kind])) References.Check(db, Enum.Parse<Matter>((string)row["About"]!), Guid.Parse((string)row["AboutUid"]!));
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
