using BuildLog.Data.Files;
using BuildLog.Gearing.Quantities;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Changes;

/// <summary>Takes changes back. What is taken back is turned round in a change of its own, so that it can be brought back too.</summary>
/// <remarks>
/// A change and what took it back, brought it back and so on are a chain; only its last link can be turned round. A chain that ends in an undoing
/// does not stand, any other does.
/// </remarks>
internal static class Undoing
{
    public static string Undo(ShopContext db)
    {
        var last = Tails(db).Where(set => set.Step != ChangeStep.Undo).OrderByDescending(set => set.Id).FirstOrDefault();
        return TurnRound(db, last ?? throw Refused(Spoken("There is no change to undo.")));
    }

    public static string Redo(ShopContext db)
    {
        var undone = Tails(db).Where(set => set.Step == ChangeStep.Undo).OrderByDescending(set => set.Id).FirstOrDefault();
        if (undone is null) throw Refused(Spoken("Nothing was undone that could be done again."));

        var since = db.Changes.AsNoTracking().Where(set => set.Step == ChangeStep.Forward && set.Id > undone.Id).OrderByDescending(set => set.Id).FirstOrDefault();
        return since is null
            ? TurnRound(db, undone)
            : throw Refused(Spoken($"Nothing can be done again: '{since.Label}' was entered since the last undo. Any single undo can still be taken back from the list of changes."));
    }

    public static string Undo(ShopContext db, long id)
    {
        var set = db.Changes.AsNoTracking().Include(set => set.Rows).SingleOrDefault(set => set.Id == id) ?? throw Refused(Spoken("That change is not in this record."));
        return Tails(db).Any(tail => tail.Id == id) ? TurnRound(db, set) : throw Refused(Spoken($"'{set.Label}' was undone already."));
    }

    private static IQueryable<ChangeSet> Tails(ShopContext db)
        => db.Changes.AsNoTracking().Include(set => set.Rows).Where(set => !db.Changes.Any(later => later.UndoesId == set.Id));

    private static string TurnRound(ShopContext db, ChangeSet set)
    {
        // A change of a chain is named after the first of it, however often it was turned round.
        var step = set.Step == ChangeStep.Undo ? ChangeStep.Redo : ChangeStep.Undo;
        var what = set.Step == ChangeStep.Forward ? set.Label : set.Label[(set.Label.IndexOf(':', StringComparison.Ordinal) + 2)..];
        db.Journal.Did(() => $"{(step == ChangeStep.Redo ? "did again" : "undid")}: {what}");
        db.Journal.TakesBack = (step, set.Id);

        var conflicts = new Conflicts(db, set, what);
        var rows = db.Rows;
        foreach (var row in set.Rows.OrderByDescending(row => row.Id)) TurnRound(db, rows, row, conflicts);
        AfterTheTurn.Check(db, set, conflicts);
        return what;
    }

    private static void TurnRound(ShopContext db, StoredRows rows, ChangeRow row, Conflicts conflicts)
    {
        var diff = RowDiff.Parse(row.Diff);
        var stored = rows.Read(row.TableName, row.RowId);
        conflicts.CheckUntouched(row, diff, stored);

        try
        {
            switch (row.Op)
            {
                case RowOp.Insert:
                    conflicts.CheckNothingHangsOn(row);
                    rows.Delete(row.TableName, row.RowId);
                    diff = RowDiff.Between(stored, null);
                    break;
                case RowOp.Delete:
                    conflicts.CheckStillThere(row, diff);
                    diff = diff.Turned();
                    rows.Insert(row.TableName, [.. diff.Columns.Select(column => (column.Column, Counted(column)))]);
                    diff = RowDiff.Between(null, rows.Read(row.TableName, row.RowId));
                    break;
                default:
                    // The version counts on, so that nobody takes the old state for the one he has read.
                    var next = ((long?)stored?[StoredRow.Version] ?? 0) + 1;
                    diff = diff.Turned().WithVersion(stored?[StoredRow.Version], next);
                    rows.Update(row.TableName, row.RowId, [.. diff.Columns.Select(column => (column.Column, column.After))]);
                    break;
            }
        }
        catch (SqliteException refused) when (refused.SqliteErrorCode == 19)
        {
            throw conflicts.Refused(FileTroubles.InWords(refused.SqliteErrorCode, refused.SqliteExtendedErrorCode, refused.Message, "").Sentence);
        }

        db.Journal.Add(row.Inverse(diff.ToJson()));
    }

    private static object? Counted((string Column, object? Before, object? After) column)
        => column is { Column: StoredRow.Version, After: long version } ? version + 1 : column.After;

    private static RefusedException Refused(string sentence) => new("undo", sentence, "");
}
