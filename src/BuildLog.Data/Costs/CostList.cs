using BuildLog.Data.Components;
using BuildLog.Data.Jobs;
using BuildLog.Data.Rows;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Costs;

/// <summary>The costs of one vehicle or one part together, the latest first.</summary>
internal static class CostList
{
    private const string OfVehicle = """SELECT * FROM "Costs" WHERE "VehicleId" = $vehicle ORDER BY "Date" DESC, "Id" DESC""";

    private const string OfPart = """SELECT * FROM "Costs" WHERE "ComponentId" = $part ORDER BY "Date" DESC, "Id" DESC""";

    public static IReadOnlyList<Cost> Of(Snapshot record, Vehicle vehicle) => CostReader.Joined(record, record.Rows.Read(OfVehicle, CostReader.From, ("$vehicle", vehicle.Id)));

    public static IReadOnlyList<Cost> Of(Snapshot record, Component component) => CostReader.Joined(record, record.Rows.Read(OfPart, CostReader.From, ("$part", component.Id)));

    /// <exception cref="RefusedException">It belongs to a job on another vehicle.</exception>
    public static void CheckAmongOthers(ShopContext db, Cost cost)
    {
        if (cost.JobId is { } id && db.Set<Job>().Find(id) is { } job && job.VehicleId != cost.VehicleId)
            throw new RefusedException("job", Spoken($"The job '{job.Title}' is on another vehicle; enter '{cost.What}' there."), "");
    }
}
