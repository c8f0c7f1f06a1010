using BuildLog.Data.Search;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Metadata;

namespace BuildLog.Data.Changes;

/// <summary>Notes down every row that one change touches, and stores the notes with it: one transaction, one change set.</summary>
/// <remarks>Which rows those are the object mapper knows; nothing is deleted behind its back, as every table restricts.</remarks>
internal sealed class Journal(ShopContext db)
{
    private readonly List<ChangeRow> rows = [];
    private readonly List<(RowOp Op, Kept Record, long? Vehicle)> records = [];
    private readonly List<Guid> gone = [];
    private List<Pending> pending = [];
    private FindableIndex? index;
    private long? number;
    private bool isStored;

    /// <summary>What is being done, from whoever knows it best; null leaves it to <see cref="RecordWords.Did"/>.</summary>
    public string? Label { get; private set; }

    /// <summary>Says what is being done; the record keeps it in English, whoever speaks what.</summary>
    public void Did(Func<string> label)
    {
        using (Language.English.Speak()) Label = label();
    }

    /// <summary>What this change takes back.</summary>
    public (ChangeStep Step, long Of)? TakesBack { get; set; }

    /// <summary>Notes of new records are stored at once from here on: those of a million do not fit into memory. Whoever asks for it sets the label.</summary>
    /// <remarks>The set of changes itself comes last, when it can be said what was done; its number is known, as the change holds the write lock.</remarks>
    public void StoreAsItGoes()
    {
        db.Rows.Run("PRAGMA defer_foreign_keys = 1");
        number = (db.Rows.Ask("SELECT max(\"Id\") FROM \"ChangeSets\"") as long? ?? 0) + 1;
    }

    /// <summary>Before rows are written: what they are now.</summary>
    public void Look()
        => pending = [
            .. db.ChangeTracker.Entries().Where(row => Op(row) is not null).ToList()
                .Select(row => new Pending(row, Op(row)!.Value, Before(row)))
                .OrderBy(row => Turn(row)),
        ];

    /// <summary>After rows are written: what they have become.</summary>
    public void Note()
    {
        foreach (var row in pending)
        {
            var record = row.Before?.Record ?? Belonging.RecordOf(db, row.Row);
            var (table, id) = (row.Row.Metadata.GetTableName()!, (long)row.Row.Property("Id").CurrentValue!);
            var diff = RowDiff.Between(row.Before?.Stored, row.Op == RowOp.Delete ? null : db.Rows.Read(table, id));
            var vehicle = row.Before is { } before ? before.Vehicle : Belonging.VehicleOf(db, record);
            if (row.Row.Entity is Kept) Touch(row.Op, record, vehicle);
            if (row is { Op: RowOp.Delete, Row.Entity: Kept }) Gone(record.Uid);
            rows.Add(new() { TableName = table, RowId = id, RecordUid = record.Uid, VehicleId = vehicle, Op = row.Op, Diff = diff.ToJson() });
        }

        pending = [];
    }

    /// <summary>After the rows of a new record are written by hand, its own first.</summary>
    public void Inserted(Kept record, IReadOnlyList<(string Table, long Id, StoredRow Row)> itsRows)
    {
        var vehicle = Belonging.VehicleOf(db, record);
        var noted = itsRows.Select(each => new ChangeRow { TableName = each.Table, RowId = each.Id, RecordUid = record.Uid, VehicleId = vehicle, Op = RowOp.Insert, Diff = RowDiff.Between(null, each.Row).ToJson() });
        if (number is { } set)
        {
            foreach (var row in noted) Store(set, row);
            Index.Put(record);
            isStored = true;
        }
        else
        {
            rows.AddRange(noted);
            Touch(RowOp.Insert, record, vehicle);
        }
    }

    public void Add(ChangeRow row) => rows.Add(row);

    public void Touch(RowOp op, Kept record, long? vehicle) => records.Add((op, record, vehicle));

    /// <summary>A record is there no more.</summary>
    public void Gone(Guid uid) => gone.Add(uid);

    /// <summary>Stores the change set and brings the search up to date; does nothing where nothing changed.</summary>
    public void Store(TimeProvider clock)
    {
        if (rows.Count == 0 && !isStored) return;
        using var english = Language.English.Speak();

        var set = (long)db.Rows.Ask(
            "INSERT INTO \"ChangeSets\" (\"Id\", \"At\", \"Label\", \"Machine\", \"Step\", \"UndoesId\") VALUES ($0, $1, $2, $3, $4, $5) RETURNING \"Id\"",
            number, FormattableString.Invariant($"{clock.GetUtcNow().UtcDateTime:O}"), Label ?? Derived(), Environment.MachineName, $"{TakesBack?.Step ?? ChangeStep.Forward}", TakesBack?.Of)!;
        foreach (var row in rows) Store(set, row);
        foreach (var uid in gone) Index.Drop(uid);
        foreach (var record in records.Select(touched => touched.Record).DistinctBy(record => record.Uid).Where(record => !gone.Contains(record.Uid))) Index.Put(record);
    }

    private FindableIndex Index => index ??= new(db);

    private void Store(long set, ChangeRow row) => db.Rows.Run(
        "INSERT INTO \"Changes\" (\"ChangeSetId\", \"TableName\", \"RowId\", \"RecordUid\", \"VehicleId\", \"Op\", \"Diff\") VALUES ($0, $1, $2, $3, $4, $5, $6)",
        set, row.TableName, row.RowId, row.RecordUid, row.VehicleId, $"{row.Op}", row.Diff);

    // What is new speaks for the change, then what is gone: a swap is first of all the part that was fitted.
    private string Derived()
    {
        RowOp[] telling = [RowOp.Insert, RowOp.Delete, RowOp.Update];
        if (records.Count == 0) return "changed the record";
        var (op, record, vehicle) = records.OrderBy(touched => Array.IndexOf(telling, touched.Op)).First();
        return RecordWords.Did(op, record, vehicle is { } id ? db.Rows.Ask("SELECT \"Name\" FROM \"Vehicles\" WHERE \"Id\" = $0", id) as string : null);
    }

    private Known? Before(EntityEntry row)
    {
        if (row.State == EntityState.Added) return null;

        var record = Belonging.RecordOf(db, row);
        return new(record, Belonging.VehicleOf(db, record), db.Rows.Read(row.Metadata.GetTableName()!, (long)row.Property("Id").CurrentValue!));
    }

    private static RowOp? Op(EntityEntry row) => row.State switch
    {
        EntityState.Added => RowOp.Insert,
        EntityState.Modified => RowOp.Update,
        EntityState.Deleted => RowOp.Delete,
        _ => null,
    };

    // What lets go of something, what then goes, what is new: turned round in this order, each row finds what it refers to.
    private static int Turn(Pending row)
    {
        var depth = Depth(row.Row.Metadata);
        return row.Op switch { RowOp.Delete => -depth - 1, RowOp.Insert => depth + 1, _ => int.MinValue };
    }

    // How many others have to be there first.
    private static int Depth(IReadOnlyEntityType type)
        => type.GetForeignKeys().Select(key => key.PrincipalEntityType.GetRootType()).Where(other => other != type.GetRootType()).Select(other => Depth(other) + 1).DefaultIfEmpty(0).Max();

    private sealed record Known(Kept Record, long? Vehicle, StoredRow? Stored);

    private sealed record Pending(EntityEntry Row, RowOp Op, Known? Before);
}
