using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Search;

/// <summary>Finds records by what was typed into them.</summary>
internal static class FindableList
{
    // Weighing a match costs far more than finding it, so only the latest are weighed, and only the best are looked at closer. A title counts more
    // than a name, and that more than a text.
    private const string Sql =
        """
        WITH best AS MATERIALIZED (
            SELECT rowid AS "Id", bm25("FindableText", 4.0, 2.0, 1.0) AS "Weight"
            FROM "FindableText"
            WHERE "FindableText" MATCH $0
                AND rowid >= (SELECT min(rowid) FROM (SELECT rowid FROM "FindableText" WHERE "FindableText" MATCH $0 ORDER BY rowid DESC LIMIT 2000))
            ORDER BY "Weight", rowid DESC
            LIMIT $1)
        SELECT f."Kind", f."Title", v."Name", c."Name", f."Day", f."Body", f."RecordUid"
        FROM best
            JOIN "Findables" AS f ON f."Id" = best."Id"
            LEFT JOIN "Vehicles" AS v ON v."Id" = f."VehicleId"
            LEFT JOIN "Components" AS c ON c."Id" = f."ComponentId"
        ORDER BY best."Weight", best."Id" DESC
        """;

    public static IReadOnlyList<Found> Find(ShopContext db, string typed, int limit)
    {
        var query = TypedWords.Query(typed);
        if (query.Length == 0) return [];

        db.Database.OpenConnection();
        var command = db.Rows.Command(Sql, query, limit);
        using var row = command.ExecuteReader();
        var found = new List<Found>();
        while (row.Read())
        {
            found.Add(new(
                row.GetString(0), row.GetString(1), row.IsDBNull(2) ? null : row.GetString(2), row.IsDBNull(3) ? null : row.GetString(3),
                row.IsDBNull(4) ? null : row.GetFieldValue<DateOnly>(4), Excerpt.Of(row.GetString(5), typed), row.GetGuid(6)));
        }

        return found;
    }
}
