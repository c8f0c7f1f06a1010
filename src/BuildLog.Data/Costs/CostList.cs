using BuildLog.Data.Jobs;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Costs;

/// <summary>The costs of one vehicle together.</summary>
internal static class CostList
{
    public static IReadOnlyList<Cost> Of(ShopContext db, Vehicle vehicle)
        => [.. db.Set<Cost>().Where(cost => cost.VehicleId == vehicle.Id).OrderByDescending(cost => cost.Date).ThenByDescending(cost => cost.Id)];

    /// <summary>Without what hangs on them: for sums.</summary>
    public static IReadOnlyList<Cost> Amounts(ShopContext db, Vehicle vehicle) => [.. db.Set<Cost>().IgnoreAutoIncludes().Where(cost => cost.VehicleId == vehicle.Id)];

    /// <exception cref="RefusedException">It belongs to a job on another vehicle.</exception>
    public static void CheckAmongOthers(ShopContext db, Cost cost)
    {
        if (cost.JobId is { } id && db.Set<Job>().Find(id) is { } job && job.VehicleId != cost.VehicleId)
            throw new RefusedException("job", $"The job '{job.Title}' is on another vehicle; enter '{cost.What}' there.", "");
    }
}
