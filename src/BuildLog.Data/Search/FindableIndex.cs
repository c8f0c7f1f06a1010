using BuildLog.Data.Changes;
using BuildLog.Data.Components;
using BuildLog.Data.Vehicles;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Search;

/// <summary>Keeps what can be found in step with what is stored.</summary>
internal sealed class FindableIndex(ShopContext db)
{
    private readonly StoredRows rows = db.Rows;

    // Names are looked up where they are kept, so that a new name is found everywhere.
    private const string AboutSql =
        """
        trim(coalesce((SELECT "Name" FROM "Vehicles" WHERE "Id" = $2), '') || ' ' || coalesce((SELECT "Name" FROM "Components" WHERE "Id" = $3), ''))
        """;

    private const string PutSql =
        $"""
        INSERT INTO "Findables" ("RecordUid", "Kind", "VehicleId", "ComponentId", "Day", "DayAsTyped", "Title", "Body", "About")
        VALUES ($0, $1, $2, $3, $4, $5, $6, $7, {AboutSql})
        ON CONFLICT ("RecordUid") DO UPDATE SET
            "Kind" = excluded."Kind", "VehicleId" = excluded."VehicleId", "ComponentId" = excluded."ComponentId", "Day" = excluded."Day", "DayAsTyped" = excluded."DayAsTyped",
            "Title" = excluded."Title", "Body" = excluded."Body", "About" = excluded."About"
        """;

    private const string RenamedSql =
        """
        UPDATE "Findables" AS f SET "About" = now."About"
        FROM (
            SELECT other."Id", trim(coalesce(v."Name", '') || ' ' || coalesce(c."Name", '')) AS "About"
            FROM "Findables" AS other LEFT JOIN "Vehicles" AS v ON v."Id" = other."VehicleId" LEFT JOIN "Components" AS c ON c."Id" = other."ComponentId"
            WHERE other."VehicleId" = $0 OR other."ComponentId" = $1) AS now
        WHERE f."Id" = now."Id" AND f."About" <> now."About"
        """;

    public void Put(Kept record)
    {
        // What is stored is the same in all languages.
        using var english = Language.English.Speak();
        var (vehicle, component) = (Belonging.VehicleOf(db, record), Belonging.ComponentOf(db, record));
        var type = db.Model.FindEntityType(record.GetType())!;
        rows.Run(PutSql, record.Uid, record.KindInWords.Text, vehicle, component, TypedInto.Day(record), TypedInto.DayAsTyped(record), RecordWords.Title(record), TypedInto.Text(type, record));
        if (record is Vehicle or Component) rows.Run(RenamedSql, record is Vehicle ? record.Id : null, record is Component ? record.Id : null);
    }

    public void Drop(Guid uid) => rows.Run("DELETE FROM \"Findables\" WHERE \"RecordUid\" = $0", uid);

    /// <summary>Makes it anew from everything that is stored: in a file that had none, or one whose tables were changed.</summary>
    public void Fill()
    {
        rows.Run("DELETE FROM \"Findables\"");
        foreach (var type in db.Model.GetEntityTypes().Where(type => type.BaseType is null && type.IsKept()))
        {
            // The first question to the object mapper is dear, and a new file has nothing.
            if (rows.Ask($"SELECT 1 FROM \"{type.GetTableName()}\" LIMIT 1") is null) continue;
            foreach (var record in Everything.Of(db, type.ClrType).OrderBy(record => record.Id)) Put(record);
            db.ChangeTracker.Clear();
        }
    }
}
