using BuildLog.Data.Changes;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace BuildLog.Data.Moving;

/// <summary>Which entries name which, asked of the tables by their keys, so that one vehicle of a large record costs no more than of a small one.</summary>
internal sealed class NamedEntries(ShopContext db, StoredEntries record)
{
    private readonly Dictionary<IEntityType, ExportedKind> kinds = record.Kinds.ToDictionary(kind => kind.Root);

    /// <summary>The entries that an entry or its rows name, and whether it cannot be without.</summary>
    public IEnumerable<(EntryPlace Named, bool Needed)> By(EntryPlace entry)
    {
        var row = record.Of(entry);
        var type = ClassOf(entry.Root, row);
        foreach (var named in By(type, row).Where(named => named.Named != entry)) yield return named;
        foreach (var rows in RowsOf(type))
        {
            foreach (var below in record.With(rows.TargetEntityType.GetTableName()!, rows.ForeignKey.Properties[0].GetColumnName(), entry.Id))
            {
                foreach (var named in By(rows.TargetEntityType, below).Where(named => named.Named != entry)) yield return named;
            }
        }

        if (!EntryShape.IsAbout(entry.Root)) yield break;
        var about = db.Model.FindEntityType(Matters.TypeOf(Enum.Parse<Matter>((string)row["About"]!)))!.GetRootType();
        if (record.IdOf(about, Guid.Parse((string)row["AboutUid"]!)) is { } id) yield return (new(about, id), true);
    }

    /// <summary>The entries that name one, themselves or in their rows.</summary>
    public IEnumerable<EntryPlace> Naming(EntryPlace entry)
    {
        var keys = entry.Root.GetDerivedTypesInclusive().SelectMany(type => type.GetReferencingForeignKeys()).DistinctBy(key => (key.DeclaringEntityType.GetTableName(), key.Properties[0].GetColumnName()));
        foreach (var key in keys.Where(key => !EntryShape.IsToOwner(key)))
        {
            foreach (var row in record.With(key.DeclaringEntityType.GetTableName()!, key.Properties[0].GetColumnName(), entry.Id))
            {
                if (Holder(key.DeclaringEntityType, row) is { } holder && holder != entry) yield return holder;
            }
        }

        foreach (var kind in record.Kinds.Where(kind => EntryShape.IsAbout(kind.Root)))
        {
            foreach (var row in record.With(kind.Root.GetTableName()!, "AboutUid", record.UidOf(entry)!)) yield return new(kind.Root, (long)row["Id"]!);
        }
    }

    private static IEnumerable<(EntryPlace Named, bool Needed)> By(IEntityType type, StoredRow row)
        => from key in type.GetForeignKeys()
           where key.PrincipalEntityType.IsKept() && !EntryShape.IsToOwner(key) && key.Properties[0].PropertyInfo is not null
           let id = row[key.Properties[0].GetColumnName()] as long?
           where id is not null
           select (new EntryPlace(key.PrincipalEntityType.GetRootType(), id.Value), !key.Properties[0].IsNullable);

    // The entry itself, or the one that the row is part of.
    private static EntryPlace? Holder(IEntityType type, StoredRow row)
    {
        if (type.IsKept()) return new(type.GetRootType(), (long)row["Id"]!);
        return type.GetForeignKeys().Where(EntryShape.IsToOwner)
            .Select(key => row[key.Properties[0].GetColumnName()] is long id ? new EntryPlace(key.PrincipalEntityType.GetRootType(), id) : (EntryPlace?)null)
            .FirstOrDefault(holder => holder is not null);
    }

    private static IEnumerable<INavigation> RowsOf(IEntityType type) => type.GetNavigations().Where(rows => rows.IsCollection && !rows.TargetEntityType.IsKept());

    private IEntityType ClassOf(IEntityType root, StoredRow row)
        => kinds[root].Classes[root.FindDiscriminatorProperty() is { } kind ? (string)row[kind.GetColumnName()]! : ""];
}
