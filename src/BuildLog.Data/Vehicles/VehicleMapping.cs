using BuildLog.Gearing.RoadLoad;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Vehicles;

internal static class VehicleMapping
{
    public static void Map(ModelBuilder model)
    {
        var vehicle = model.Entity<Vehicle>().ToTable("Vehicles");
        vehicle.Property(v => v.Version).IsConcurrencyToken();
        vehicle.HasIndex(v => v.Uid).IsUnique();
        vehicle.Property(v => v.NameKey);
        vehicle.HasIndex(v => v.NameKey).IsUnique();
        vehicle.Filled("Name").Filled("NameKey").Words(v => v.State).Words(v => v.OdometerUnit)
            .OneOf("BodyClass", BodyClass.All.Select(body => body.Name))
            .OneOf("RollingClass", RollingClass.All.Select(tyre => tyre.Name));
    }
}
