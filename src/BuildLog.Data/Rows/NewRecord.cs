using BuildLog.Data.Changes;

namespace BuildLog.Data.Rows;

/// <summary>Stores a new record by hand, with the rows that are part of it: the object mapper takes several times as long to do the same.</summary>
internal static class NewRecord
{
    public static void Insert(ShopContext db, Kept record)
    {
        var inserted = new List<(string Table, long Id, StoredRow Row)>();
        Insert(db, RowLayout.Of(db.Model.FindEntityType(record.GetType())!), record, inserted);
        db.Journal.Inserted(record, inserted);
    }

    /// <summary>What it names is loaded with it, as when it is read.</summary>
    public static void Link(ShopContext db, Kept record)
    {
        foreach (var navigation in db.Model.FindEntityType(record.GetType())!.GetNavigations().Where(navigation => navigation.IsOnDependent))
        {
            if (navigation.ForeignKey.Properties[0].PropertyInfo!.GetValue(record) is long id)
                navigation.PropertyInfo!.SetValue(record, db.Record.Find(navigation.TargetEntityType.ClrType, id));
        }
    }

    private static void Insert(ShopContext db, RowLayout layout, object thing, List<(string Table, long Id, StoredRow Row)> inserted)
    {
        var stored = db.Rows.Row(layout.Insert, layout.Values(thing))!;
        var id = (long)stored["Id"]!;
        layout.Number(thing, id);
        inserted.Add((layout.Table, id, stored));
        foreach (var (rows, below) in layout.Below)
        {
            foreach (var row in rows(thing))
            {
                below.Own(row, id);
                Insert(db, below, row, inserted);
            }
        }
    }
}
