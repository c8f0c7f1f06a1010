using BuildLog.Gearing.Drivelines;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Fitments;

internal static class FitmentMapping
{
    public static void Map(ModelBuilder model)
    {
        var fitment = model.Entity<Fitment>();
        fitment.Property(f => f.Version).IsConcurrencyToken();
        fitment.HasIndex(f => f.Uid).IsUnique();
        fitment.HasOne(f => f.Component).WithMany().HasForeignKey(f => f.ComponentId).OnDelete(DeleteBehavior.Restrict);
        fitment.HasOne(f => f.Vehicle).WithMany().HasForeignKey(f => f.VehicleId).OnDelete(DeleteBehavior.Restrict);
        fitment.Navigation(f => f.Component).AutoInclude();
        fitment.Navigation(f => f.Vehicle).AutoInclude();
        fitment.Property(f => f.Position).HasConversion<string>();
        fitment.Ignore(f => f.Start);
        fitment.Ignore(f => f.End);
        MapOdometer(fitment, f => f.FromOdometer, "From");
        MapOdometer(fitment, f => f.ToOdometer, "To");

        fitment.HasIndex(f => new { f.VehicleId, f.From });
        fitment.HasIndex(f => new { f.ComponentId, f.From });
        fitment.HasIndex(f => f.ComponentId, "IX_Fitments_OnePlaceAtATime").IsUnique().HasFilter("\"To\" IS NULL");
        fitment.HasIndex(f => new { f.VehicleId, f.Position }, "IX_Fitments_OnePartAtATime").IsUnique().HasFilter("\"To\" IS NULL");
        fitment.ToTable("Fitments", table =>
        {
            table.OneOf<Fitment, Position>("Position");
            table.Day("From");
            table.Day("To");
            table.Rule("Off", """("To" IS NULL) = ("ToOrder" IS NULL)""");
            table.Rule("Forward", """("From", "FromOrder") < ("To", "ToOrder")""");
        });
    }

    private static void MapOdometer(
        Microsoft.EntityFrameworkCore.Metadata.Builders.EntityTypeBuilder<Fitment> fitment,
        System.Linq.Expressions.Expression<Func<Fitment, OdometerReading?>> reading,
        string end)
    {
        fitment.ComplexProperty(reading, odometer =>
        {
            odometer.Property(o => o!.Metres).HasColumnName($"{end}OdometerMetres");
            odometer.Property(o => o!.Unit).HasColumnName($"{end}OdometerUnit");
            odometer.Property(o => o!.Text).HasColumnName($"{end}OdometerText");
        });
        fitment.ToTable(table => table.Rule($"{end}Odometer", $"\"{end}OdometerMetres\" BETWEEN 0 AND 10000000000"));
    }
}
