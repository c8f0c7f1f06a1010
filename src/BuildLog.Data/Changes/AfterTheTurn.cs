using BuildLog.Data.Fitments;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Changes;

/// <summary>What came back has to keep the same rules as what is entered, for the record around it may have changed.</summary>
internal static class AfterTheTurn
{
    /// <exception cref="RefusedException">A rule is broken; nothing is changed.</exception>
    public static void Check(ShopContext db, ChangeSet set, Conflicts conflicts)
    {
        db.ChangeTracker.Clear();
        foreach (var row in set.Rows.DistinctBy(row => (row.TableName, row.RowId)))
        {
            var type = Everything.In(db, row.TableName).First();
            if (!type.IsKept()) continue;

            if (db.Find(type.ClrType, row.RowId) is not Kept record)
            {
                db.Journal.Gone(row.RecordUid);
                continue;
            }

            try
            {
                if (record is Entered entered) Entries.CheckAll(db, entered);
                if (record is Fitment fitment) FitmentRules.Check(db, fitment);
            }
            catch (RefusedException broken)
            {
                throw conflicts.Refused(broken.Message);
            }

            db.Journal.Touch(RowOp.Update, record, row.VehicleId);
        }
    }
}
