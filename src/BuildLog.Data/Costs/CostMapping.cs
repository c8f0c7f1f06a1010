using BuildLog.Data.Jobs;
using BuildLog.Data.Vehicles;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Costs;

internal static class CostMapping
{
    public static void Map(ModelBuilder model)
    {
        var cost = model.Entry<Cost>("Costs");
        cost.Of<Cost, Vehicle>(c => c.VehicleId).Of<Cost, Job>(c => c.JobId).With(c => c.Supplier).With(c => c.Component).With(c => c.Receipt);
        cost.HasIndex(c => new { c.VehicleId, c.Date });
        cost.Filled("What").Dated().Money(c => c.Amount).Rule("Spent", "\"AmountMinor\" IS NOT NULL");
    }
}
