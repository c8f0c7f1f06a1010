using BuildLog.Data.Rows;
using BuildLog.Data.Vehicles;

namespace BuildLog.Data.Jobs;

/// <summary>Reads jobs by hand, each with the part it waits for.</summary>
internal static class JobReader
{
    private const string OfVehicle = """SELECT * FROM "Jobs" WHERE "VehicleId" = $vehicle""";

    public static IReadOnlyList<Job> Of(Snapshot record, Vehicle vehicle)
    {
        var jobs = record.Rows.Read(OfVehicle, From, ("$vehicle", vehicle.Id));
        record.Wanted.Load(jobs.Select(job => job.WaitsForId));
        foreach (var job in jobs) job.WaitsFor = record.Wanted.Named(job.WaitsForId);
        return jobs;
    }

    private static Job From(Row row) => row.Kept(new Job
    {
        VehicleId = row.Key("VehicleId"),
        Title = row.Text("Title"),
        Description = row.Text("Description"),
        State = row.Word<JobState>("State"),
        Due = row.DayIfAny("Due"),
        BeforeHandover = row.Flag("BeforeHandover"),
        BlockedBy = row.Text("BlockedBy"),
        WaitsForId = row.KeyIfAny("WaitsForId"),
    });
}
