using BuildLog.Data.Rows;
using BuildLog.Data.Vehicles;

namespace BuildLog.Data.Hunting;

/// <summary>Reads wanted parts by hand, with their windows and what they must have.</summary>
internal static class WantedReader
{
    private const string Sql = """SELECT * FROM "WantedParts" WHERE "Id" IN (SELECT value FROM json_each($ids))""";

    private const string WindowsSql =
        """
        SELECT * FROM "WantedWindows" WHERE "WantedPartId" IN (SELECT value FROM json_each($ids)) ORDER BY "WantedPartId", "Ordinal"
        """;

    private const string MustHavesSql =
        """
        SELECT * FROM "WantedMustHaves" WHERE "WantedPartId" IN (SELECT value FROM json_each($ids)) ORDER BY "WantedPartId", "Ordinal"
        """;

    private const string DueSql = """SELECT "Id", "VehicleId" FROM "WantedParts" WHERE "State" = 'Hunting' AND "Deadline" IS NOT NULL ORDER BY "Deadline", "Id" """;

    /// <summary>What a vehicle still hunts and needs by a day, the first of them first.</summary>
    public static IReadOnlyList<WantedPart> Due(Snapshot record, Vehicle vehicle)
    {
        var due = record.Rows.Read(DueSql, row => (Id: row.Key("Id"), VehicleId: row.Key("VehicleId")));
        return [.. Read(record, [.. due.Where(part => part.VehicleId == vehicle.Id).Select(part => part.Id)]).OrderBy(part => part.Deadline).ThenBy(part => part.Id)];
    }

    public static IReadOnlyList<WantedPart> Read(Snapshot record, IReadOnlyCollection<long> ids)
    {
        var wanted = record.Rows.Read(Sql, From, ids);
        var byId = wanted.ToDictionary(part => part.Id);
        foreach (var window in record.Rows.Read(WindowsSql, WindowFrom, byId.Keys)) byId[window.WantedPartId].WindowRows.Add(window);
        foreach (var must in record.Rows.Read(MustHavesSql, MustHaveFrom, byId.Keys)) byId[must.WantedPartId].MustHaveRows.Add(must);
        return wanted;
    }

    private static WantedPart From(Row row) => row.Kept(new WantedPart
    {
        VehicleId = row.Key("VehicleId"),
        Kind = row.Word<WantedKind>("Kind"),
        Title = row.Text("Title"),
        PlanId = row.KeyIfAny("PlanId"),
        Most = row.Money("Most"),
        Deadline = row.DayIfAny("Deadline"),
        State = row.Word<WantedState>("State"),
        DroppedFor = row.Text("DroppedFor"),
        Notes = row.Text("Notes"),
    });

    private static WindowRow WindowFrom(Row row) => new()
    {
        Id = row.Key("Id"),
        WantedPartId = row.Key("WantedPartId"),
        Ordinal = row.Count("Ordinal"),
        Quantity = row.Word<WindowOf>("Quantity"),
        Low = row.Text("Low"),
        High = row.Text("High"),
        LowSi = row.NumberIfAny("LowSi"),
        HighSi = row.NumberIfAny("HighSi"),
    };

    private static MustHaveRow MustHaveFrom(Row row) => new()
    {
        Id = row.Key("Id"),
        WantedPartId = row.Key("WantedPartId"),
        Ordinal = row.Count("Ordinal"),
        What = row.Text("What"),
        Text = row.Text("Text"),
    };
}
