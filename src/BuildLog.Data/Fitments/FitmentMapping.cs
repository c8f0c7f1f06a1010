using System.Linq.Expressions;
using BuildLog.Data.Files;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

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
        Odometer(fitment, f => f.FromOdometer, "From");
        Odometer(fitment, f => f.ToOdometer, "To");

        fitment.HasIndex(f => new { f.VehicleId, f.From });
        fitment.HasIndex(f => new { f.ComponentId, f.From });
        fitment.HasIndex(f => f.ComponentId, "IX_Fitments_OnePlaceAtATime").IsUnique().HasFilter("\"ToDate\" IS NULL");
        fitment.HasIndex(f => new { f.VehicleId, f.Position }, "IX_Fitments_OnePartAtATime").IsUnique().HasFilter("\"ToDate\" IS NULL");
        fitment.Words(f => f.Position)
            .Day("FromDate")
            .Day("ToDate")
            .AllOrNone("Off", "ToDate", "ToOrder")
            .Rule("Forward", """("FromDate", "FromOrder") < ("ToDate", "ToOrder")""");
    }

    private static void Odometer(EntityTypeBuilder<Fitment> fitment, Expression<Func<Fitment, OdometerReading?>> reading, string end)
    {
        fitment.ComplexProperty(reading, odometer =>
        {
            odometer.Property(o => o!.Metres).HasColumnName($"{end}OdometerMetres");
            odometer.Property(o => o!.Unit).HasColumnName($"{end}OdometerUnit");
            odometer.Property(o => o!.Text).HasColumnName($"{end}OdometerText");
        });
        fitment.AllOrNone($"{end}Odometer", $"{end}OdometerMetres", $"{end}OdometerUnit", $"{end}OdometerText")
            .Rule($"{end}OdometerMetres", $"\"{end}OdometerMetres\" BETWEEN 0 AND 10000000000");
    }
}
