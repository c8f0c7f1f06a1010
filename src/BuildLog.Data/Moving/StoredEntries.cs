using BuildLog.Data.Changes;
using BuildLog.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace BuildLog.Data.Moving;

/// <summary>The entries of the record as they are stored, one at a time and by hand: a record of a million is written out in the memory of a small one.</summary>
internal sealed class StoredEntries
{
    private const int MostRemembered = 20_000;

    private readonly ShopContext db;
    private readonly Dictionary<EntryPlace, Guid> uids = [];
    private readonly HashSet<string> filled = [];

    public StoredEntries(ShopContext db)
    {
        this.db = db;
        db.Database.OpenConnection();
        Kinds = ExportedKinds.Of(db.Model);
        foreach (var table in db.Model.GetEntityTypes().Select(type => type.GetTableName()!).Distinct())
        {
            if (db.Rows.Ask($"SELECT 1 FROM \"{table}\" LIMIT 1") is not null) filled.Add(table);
        }
    }

    /// <summary>Each after those it names.</summary>
    public IReadOnlyList<ExportedKind> Kinds { get; }

    /// <summary>All of a kind, or those of these numbers, in the order of what is the same in every file: a record that came back is written as it was.</summary>
    public IEnumerable<StoredRow> Of(ExportedKind kind, IReadOnlyCollection<long>? ids = null)
        => ids is null ? Where(kind, "", "") : Where(kind, "WHERE \"Id\" IN (SELECT value FROM json_each($0))", RowReader.Listed(ids));

    /// <summary>Those of a kind that came after a number.</summary>
    public IEnumerable<StoredRow> After(ExportedKind kind, long last) => Where(kind, "WHERE \"Id\" > $0", last);

    public StoredRow Of(EntryPlace place) => db.Rows.Read(place.Root.GetTableName()!, place.Id)!;

    /// <summary>The rows of a table in which a column has this value.</summary>
    public IReadOnlyList<StoredRow> With(string table, string column, object value)
        => filled.Contains(table) ? [.. StoredRow.All(db.Rows.Command($"SELECT * FROM \"{table}\" WHERE \"{column}\" = $0", value))] : [];

    public Guid? UidOf(EntryPlace place)
    {
        if (uids.TryGetValue(place, out var known)) return known;
        if (db.Rows.Ask($"SELECT \"Uid\" FROM \"{place.Root.GetTableName()}\" WHERE \"Id\" = $0", place.Id) is not string uid) return null;
        if (uids.Count == MostRemembered) uids.Clear();
        return uids[place] = Guid.Parse(uid);
    }

    public long? IdOf(IEntityType kind, Guid uid) => db.Rows.Ask($"SELECT \"Id\" FROM \"{kind.GetRootType().GetTableName()}\" WHERE \"Uid\" = $0", uid) as long?;

    /// <summary>The highest number of a kind; nought where there is none.</summary>
    public long LastOf(ExportedKind kind) => db.Rows.Ask($"SELECT max(\"Id\") FROM \"{kind.Root.GetTableName()}\"") as long? ?? 0;

    // With a command of its own: whoever walks through these asks other questions meanwhile.
    private IEnumerable<StoredRow> Where(ExportedKind kind, string where, object value)
    {
        using var command = db.Rows.NewCommand($"SELECT * FROM \"{kind.Root.GetTableName()}\" {where} ORDER BY \"Uid\"", where.Length == 0 ? 0 : 1);
        foreach (var row in StoredRow.All(db.Rows.With(command, where.Length == 0 ? [] : [value]))) yield return row;
    }
}
