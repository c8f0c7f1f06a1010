using BuildLog.Data.Attachments;
using BuildLog.Data.Notes;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace BuildLog.Data.Moving;

/// <summary>Every entry of the record, kind by kind, and what each of them names.</summary>
internal sealed class RecordEntries
{
    private readonly IModel model;
    private readonly Dictionary<(IEntityType Root, long Id), Kept> byId = [];
    private readonly Dictionary<Guid, Kept> byUid = [];

    private RecordEntries(ShopContext db)
    {
        model = db.Model;
        Kinds = [.. ExportedKinds.Of(db.Model).Select(kind => (kind, Entries(db, kind)))];
        foreach (var (kind, entries) in Kinds)
        {
            foreach (var entry in entries) (byId[(kind.Root, entry.Id)], byUid[entry.Uid]) = (entry, entry);
        }
    }

    public IReadOnlyList<(ExportedKind Kind, IReadOnlyList<Kept> Entries)> Kinds { get; }

    public IEnumerable<Kept> All => byUid.Values;

    public static RecordEntries Read(ShopContext db) => new(db);

    public Kept? Find(IEntityType kind, long id) => byId.GetValueOrDefault((kind.GetRootType(), id));

    public Kept? Find(Guid uid) => byUid.GetValueOrDefault(uid);

    /// <summary>The entries that an entry or its rows name, and whether it cannot be without.</summary>
    public IEnumerable<(Kept Named, bool Needed)> NamedBy(Kept entry)
    {
        var type = model.FindEntityType(entry.GetType())!;
        foreach (var named in NamedBy(type, entry)) yield return named;
        foreach (var rows in type.GetNavigations().Where(rows => rows.IsCollection && !rows.TargetEntityType.IsKept()))
        {
            foreach (var row in (IEnumerable<object>)rows.PropertyInfo!.GetValue(entry)!)
            {
                foreach (var named in NamedBy(rows.TargetEntityType, row)) yield return named;
            }
        }

        var about = entry switch { Note note => note.AboutUid, Attachment attachment => attachment.AboutUid, _ => (Guid?)null };
        if (about is { } uid && Find(uid) is { } subject) yield return (subject, true);
    }

    // By what is the same in every file, so that a record that came back is written as it was.
    private static IReadOnlyList<Kept> Entries(ShopContext db, ExportedKind kind)
        => [.. Everything.Of(db, kind.Root.ClrType).AsNoTrackingWithIdentityResolution().AsEnumerable().OrderBy(entry => entry.Uid)];

    private IEnumerable<(Kept Named, bool Needed)> NamedBy(IEntityType type, object from)
    {
        foreach (var key in type.GetForeignKeys().Where(key => key.PrincipalEntityType.IsKept() && !EntryShape.IsToOwner(key)))
        {
            var column = key.Properties[0];
            if (column.PropertyInfo?.GetValue(from) is long id && Find(key.PrincipalEntityType, id) is { } named && named != from) yield return (named, !column.IsNullable);
        }
    }
}
