using BuildLog.Data.Changes;
using BuildLog.Data.Fitments;
using BuildLog.Data.Goals;
using BuildLog.Data.RoadTests;
using BuildLog.Data.Sessions;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Search;

/// <summary>Finds records by what was typed into them.</summary>
internal static class FindableList
{
    // Of very many matches only the latest are weighed: a glance at each title costs more than finding it.
    private const string Latest =
        """
        SELECT f."Id", f."Title", f."About", f."Kind"
        FROM (SELECT rowid FROM "FindableText" WHERE "FindableText" MATCH $0 ORDER BY rowid DESC LIMIT 2000) AS found JOIN "Findables" AS f ON f."Id" = found.rowid
        """;

    // An attachment refers to what it is about by its uid alone: it speaks of whatever that speaks of.
    private const string Shown =
        """
        SELECT f."Kind", f."Title", v."Name", c."Name", f."Day", f."Body", f."RecordUid", f."DayAsTyped"
        FROM json_each($0) AS best
            JOIN "Findables" AS f ON f."Id" = best.value
            LEFT JOIN "Attachments" AS a ON a."Uid" = f."RecordUid"
            LEFT JOIN "Findables" AS o ON o."RecordUid" = a."AboutUid"
            LEFT JOIN "Vehicles" AS v ON v."Id" = coalesce(f."VehicleId", o."VehicleId")
            LEFT JOIN "Components" AS c ON c."Id" = coalesce(f."ComponentId", o."ComponentId")
        ORDER BY best.key
        """;

    private static readonly string Attached = Matter.Attachment.InWords().Text;
    private static readonly Type[] NamedInWords = [typeof(Fitment), typeof(Session), typeof(RoadTest), typeof(GoalEntry)];

    public static IReadOnlyList<Found> Find(ShopContext db, string typed, int limit)
    {
        db.Database.OpenConnection();
        var query = TypedWords.Query(typed, beginning => BegunWord.Of(db.Rows, beginning));
        if (query.Length == 0) return [];

        var best = Best(db, query, typed, limit);
        var command = db.Rows.Command(Shown, $"[{string.Join(',', best)}]");
        using var row = command.ExecuteReader();
        var found = new List<Found>();
        while (row.Read())
        {
            found.Add(new(
                row.GetString(0), row.GetString(1), row.IsDBNull(2) ? null : row.GetString(2), row.IsDBNull(3) ? null : row.GetString(3),
                row.IsDBNull(4) ? null : row.GetFieldValue<DateOnly>(4), Excerpt.Of(row.GetString(5), typed), row.GetGuid(6))
            {
                DayAsTyped = row.IsDBNull(7) ? null : row.GetString(7),
            });
        }

        return Language.Spoken == Language.English ? found : InTheLanguageSpoken(db, found);
    }

    // The index is written in English; a name that is made of words, such as "as axle from 12 October 2024", is made again.
    private static IReadOnlyList<Found> InTheLanguageSpoken(ShopContext db, IReadOnlyList<Found> found)
    {
        var uids = found.Select(one => one.RecordUid).ToList();
        var titles = NamedInWords
            .SelectMany(kind => Everything.Of(db, kind).AsNoTracking().Where(record => uids.Contains(record.Uid)).ToList())
            .ToDictionary(record => record.Uid, RecordWords.Title);
        return [.. found.Select(one => titles.TryGetValue(one.RecordUid, out var title) ? one with { Title = title } : one)];
    }

    // A file that is called like a vehicle comes after the vehicle.
    private static IReadOnlyList<long> Best(ShopContext db, string query, string typed, int limit)
    {
        var closeness = new Closeness(typed);
        var weighed = new List<(long Id, int Closeness, bool IsAttached)>();
        using (var row = db.Rows.Command(Latest, query).ExecuteReader())
        {
            while (row.Read()) weighed.Add((row.GetInt64(0), closeness.Of(row.GetString(1), row.GetString(2)), row.GetString(3) == Attached));
        }

        return [.. weighed.OrderByDescending(one => one.Closeness).ThenBy(one => one.IsAttached).ThenByDescending(one => one.Id).Take(limit).Select(one => one.Id)];
    }
}
