using BuildLog.Data.Rows;

namespace BuildLog.Data.Deadlines;

/// <summary>Reads deadlines by hand: the open ones first, each by its day.</summary>
internal static class DeadlineReader
{
    private const string All = """SELECT * FROM "Deadlines" ORDER BY "Done" IS NOT NULL, "Day", "Id" """;

    public static IReadOnlyList<Deadline> Of(Snapshot record) => record.Rows.Read(All, From);

    private static Deadline From(Row row) => row.Kept(new Deadline
    {
        VehicleId = row.KeyIfAny("VehicleId"),
        What = row.Text("What"),
        Day = row.Day("Day"),
        Done = row.DayIfAny("Done"),
        DoneAsTyped = row.LooseDay("DoneAsTyped"),
    });
}
