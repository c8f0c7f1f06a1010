using BuildLog.Gearing.Quantities;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Changes;

/// <summary>Finds what stands in the way of taking a change back, and names it.</summary>
internal sealed class Conflicts(ShopContext db, ChangeSet set, string what)
{
    private readonly StoredRows rows = db.Rows;

    /// <summary>What the change wrote is still so.</summary>
    /// <exception cref="RefusedException">It was changed later.</exception>
    public void CheckUntouched(ChangeRow row, RowDiff diff, StoredRow? stored)
    {
        var isThere = row.Op != RowOp.Delete;
        if (isThere == stored is not null && diff.Columns.All(column => column.Column == StoredRow.Version || StoredRow.Same(column.After, stored?[column.Column]))) return;
        throw StandsOn(Latest(row.TableName, row.RowId, onlyOp: null));
    }

    /// <summary>Nothing refers to what would go.</summary>
    /// <exception cref="RefusedException">Something does.</exception>
    public void CheckNothingHangsOn(ChangeRow row)
    {
        foreach (var key in Everything.In(db, row.TableName).SelectMany(type => type.GetReferencingForeignKeys()).Distinct())
        {
            var (table, column) = (key.DeclaringEntityType.GetTableName()!, key.Properties[0].GetColumnName());
            if (rows.Ask($"SELECT \"Id\" FROM \"{table}\" WHERE \"{column}\" = $0 LIMIT 1", row.RowId) is long dependent)
                throw StandsOn(Latest(table, dependent, RowOp.Insert) ?? Latest(table, dependent, onlyOp: null));
        }
    }

    /// <summary>What it referred to is still there.</summary>
    /// <exception cref="RefusedException">It is gone.</exception>
    public void CheckStillThere(ChangeRow row, RowDiff diff)
    {
        foreach (var key in Everything.In(db, row.TableName).SelectMany(type => type.GetForeignKeys()).Distinct())
        {
            var (table, column) = (key.PrincipalEntityType.GetTableName()!, key.Properties[0].GetColumnName());
            if (diff.Columns.FirstOrDefault(change => change.Column == column).Before is long principal && rows.Read(table, principal) is null)
                throw StandsOn(Latest(table, principal, RowOp.Delete));
        }
    }

    public RefusedException Refused(string because) => new("undo", Spoken($"'{what}' cannot be taken back. {because}"), "");

    private RefusedException StandsOn(string? later)
        => Refused(later is null ? Spoken("The record is not as that change left it.") : Spoken($"'{later}' came later and stands on it: undo that first."));

    private string? Latest(string table, long id, RowOp? onlyOp)
        => db.Changes.AsNoTracking()
            .Where(later => later.Id > set.Id && later.Rows.Any(row => row.TableName == table && row.RowId == id && (onlyOp == null || row.Op == onlyOp)))
            .OrderByDescending(later => later.Id)
            .Select(later => later.Label)
            .FirstOrDefault();
}
