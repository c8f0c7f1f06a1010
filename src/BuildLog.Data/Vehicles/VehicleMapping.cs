using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Vehicles;

internal static class VehicleMapping
{
    public static void Map(ModelBuilder model)
    {
        var vehicle = model.Entity<Vehicle>();
        vehicle.Property(v => v.Version).IsConcurrencyToken();
        vehicle.HasIndex(v => v.Uid).IsUnique();
        vehicle.Property(v => v.NameKey);
        vehicle.HasIndex(v => v.NameKey).IsUnique();
        vehicle.Property(v => v.State).HasConversion<string>();
        vehicle.Property(v => v.OdometerUnit).HasConversion<string>();
        vehicle.ToTable("Vehicles", table =>
        {
            table.Filled("Name");
            table.Filled("NameKey");
            table.OneOf<Vehicle, VehicleState>("State");
            table.OneOf<Vehicle, OdometerUnit>("OdometerUnit");
        });
    }
}
