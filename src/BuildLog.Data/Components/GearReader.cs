using BuildLog.Data.Rows;

namespace BuildLog.Data.Components;

/// <summary>Reads the gears of gearboxes by hand.</summary>
internal static class GearReader
{
    private const string Sql =
        """
        SELECT * FROM "Gears" WHERE "TransmissionId" IN (SELECT value FROM json_each($ids)) ORDER BY "TransmissionId", "Ordinal"
        """;

    public static void Fill(Snapshot record, IReadOnlyList<TransmissionComponent> boxes)
    {
        var byId = boxes.ToDictionary(box => box.Id);
        foreach (var gear in record.Rows.Read(Sql, From, byId.Keys)) byId[gear.TransmissionId].Rows.Add(gear);
    }

    private static GearRow From(Row row) => new()
    {
        Id = row.Key("Id"),
        TransmissionId = row.Key("TransmissionId"),
        Ordinal = row.Count("Ordinal"),
        Name = row.Text("Name"),
        Ratio = row.Noted("Ratio")!,
    };
}
