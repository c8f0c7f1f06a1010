using BuildLog.Data.Components;
using BuildLog.Data.Vehicles;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Plans;

internal static class PlanMapping
{
    public static void Map(ModelBuilder model)
    {
        var plan = model.Entry<Plan>("Plans").Of<Plan, Vehicle>(p => p.VehicleId);
        plan.Ignore(p => p.Changes).Ignore(p => p.Wishes);
        plan.Rows(p => p.Rows, row => row.PlanId);
        plan.Rows(p => p.Wished, row => row.PlanId);
        plan.Filled("Name").Day("Date").Words(p => p.State)
            .Rule("Rejected", "\"State\" <> 'Rejected' OR length(trim(\"Reason\")) > 0");

        var change = model.Entity<PlannedChangeRow>().ToTable("PlannedChanges");
        change.HasIndex(row => new { row.PlanId, row.Position }).IsUnique();
        change.Of<PlannedChangeRow, Component>(row => row.ComponentId).Words(row => row.Position)
            .Rule("What", "\"ComponentId\" IS NOT NULL OR length(trim(\"Listed\")) > 0");

        var wish = model.Entity<PlannedWishRow>().ToTable("PlannedWishes");
        wish.HasIndex(row => new { row.PlanId, row.Wish }).IsUnique();
        wish.Words(row => row.Wish).Filled("Typed");
    }
}
