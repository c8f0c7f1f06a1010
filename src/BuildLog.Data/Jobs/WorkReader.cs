using BuildLog.Data.Rows;
using BuildLog.Data.Vehicles;

namespace BuildLog.Data.Jobs;

/// <summary>Reads time sheets by hand, the latest first.</summary>
internal static class WorkReader
{
    private const string OfVehicle =
        """
        SELECT * FROM "WorkEntries" WHERE "JobId" IN (SELECT "Id" FROM "Jobs" WHERE "VehicleId" = $vehicle) ORDER BY "Date" DESC, "Id" DESC
        """;

    private const string OfJob = """SELECT * FROM "WorkEntries" WHERE "JobId" = $job ORDER BY "Date" DESC, "Id" DESC""";

    public static IReadOnlyList<WorkEntry> Of(Snapshot record, Vehicle vehicle) => record.Rows.Read(OfVehicle, From, ("$vehicle", vehicle.Id));

    public static IReadOnlyList<WorkEntry> Of(Snapshot record, Job job) => record.Rows.Read(OfJob, From, ("$job", job.Id));

    private static WorkEntry From(Row row) => row.Kept(new WorkEntry
    {
        JobId = row.Key("JobId"),
        Date = row.Day("Date"),
        DateAsTyped = row.LooseDay("DateAsTyped"),
        Hours = row.Text("Hours"),
        Minutes = row.Count("Minutes"),
        Who = row.Text("Who"),
        What = row.Text("What"),
    });
}
