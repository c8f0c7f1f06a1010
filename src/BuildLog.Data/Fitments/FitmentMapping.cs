using BuildLog.Data.Files;
using BuildLog.Data.Vehicles;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Fitments;

/// <remarks>Overlaps in time are guarded by <see cref="Triggers"/>, which a model cannot hold.</remarks>
internal static class FitmentMapping
{
    public static void Map(ModelBuilder model)
    {
        var fitment = model.Entity<Fitment>().ToTable("Fitments");
        fitment.Property(f => f.Version).IsConcurrencyToken();
        fitment.HasIndex(f => f.Uid).IsUnique();
        fitment.HasOne(f => f.Component).WithMany().HasForeignKey(f => f.ComponentId).OnDelete(DeleteBehavior.Restrict);
        fitment.HasOne(f => f.Vehicle).WithMany().HasForeignKey(f => f.VehicleId).OnDelete(DeleteBehavior.Restrict);
        fitment.Navigation(f => f.Component).AutoInclude();
        fitment.Navigation(f => f.Vehicle).AutoInclude();
        fitment.Property(f => f.From).HasColumnName("FromDate");
        fitment.Property(f => f.To).HasColumnName("ToDate");
        fitment.Ignore(f => f.FromDay).Ignore(f => f.ToDay);
        fitment.Odometer(f => f.FromOdometer, "From").Odometer(f => f.ToOdometer, "To");

        fitment.HasIndex(f => new { f.VehicleId, f.From });
        fitment.HasIndex(f => new { f.ComponentId, f.From });
        fitment.HasIndex(f => new { f.From, f.FromOrder });
        fitment.HasIndex(f => new { f.To, f.ToOrder });
        fitment.HasIndex(f => f.ComponentId, "IX_Fitments_OnePlaceAtATime").IsUnique().HasFilter("\"ToDate\" IS NULL");
        fitment.HasIndex(f => new { f.VehicleId, f.Position }, "IX_Fitments_OnePartAtATime").IsUnique().HasFilter("\"ToDate\" IS NULL");
        fitment.Words(f => f.Position)
            .Day("FromDate")
            .Day("ToDate")
            .AllOrNone("Off", "ToDate", "ToOrder")
            .LooseDay(f => f.FromAsTyped)
            .LooseDay(f => f.ToAsTyped)
            .Rule("FromWithin", """("FromAsTypedEarliest" IS NULL OR "FromAsTypedEarliest" <= "FromDate") AND ("FromAsTypedLatest" IS NULL OR "FromDate" <= "FromAsTypedLatest")""")
            .Rule("ToWithin", """("ToAsTypedText" IS NULL OR "ToDate" IS NOT NULL) AND ("ToAsTypedEarliest" IS NULL OR "ToAsTypedEarliest" <= "ToDate") AND ("ToAsTypedLatest" IS NULL OR "ToDate" <= "ToAsTypedLatest")""")
            .Rule("Forward", """("FromDate", "FromOrder") < ("ToDate", "ToOrder")""");
        MapOdometerChanges(model);
    }

    private static void MapOdometerChanges(ModelBuilder model)
    {
        var change = model.Entry<OdometerChange>("OdometerChanges").Of<OdometerChange, Vehicle>(c => c.VehicleId);
        change.Ignore(c => c.When);
        change.HasIndex(c => new { c.Day, c.Order });
        change.Words(c => c.How).Day("Day").Odometer(c => c.Last, "Last").Odometer(c => c.First, "First").Rule("Starts", "\"FirstOdometerMetres\" IS NOT NULL");
    }
}
