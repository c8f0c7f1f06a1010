using BuildLog.Data.Rows;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Jobs;

/// <summary>The jobs of one vehicle together: what is open first, then by due date.</summary>
internal static class JobList
{
    public static IReadOnlyList<Job> Of(Snapshot record, Vehicle vehicle)
        => [.. JobReader.Of(record, vehicle)
            .OrderBy(job => !job.IsOpen)
            .ThenBy(job => job.Due ?? DateOnly.MaxValue)
            .ThenBy(job => job.Id)];

    /// <exception cref="RefusedException">It waits for a part that is hunted for another vehicle.</exception>
    public static void CheckAmongOthers(ShopContext db, Job job)
    {
        if (job.WaitsForId is { } id && db.Find<Hunting.WantedPart>(id) is { } wanted && wanted.VehicleId != job.VehicleId)
            throw new RefusedException("wanted-part", Spoken($"'{job.Title}' cannot wait for the {wanted.Title}: that is hunted for another vehicle."), "");
    }
}
