using BuildLog.Data.Components;
using BuildLog.Data.Vehicles;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Specs;

/// <summary>Numbers that few parts have lie one to a row, under their heading; each heading has its range.</summary>
internal static class SpecMapping
{
    public static void Map(ModelBuilder model)
    {
        // Deleting is done by the program, row by row, where a log can see it.
        var component = model.Entity<Component>();
        component.HasMany(c => c.Specs).WithOne().HasForeignKey(row => row.ComponentId).OnDelete(DeleteBehavior.ClientCascade);
        component.Navigation(c => c.Specs).AutoInclude();
        var vehicle = model.Entity<Vehicle>();
        vehicle.HasMany(v => v.Specs).WithOne().HasForeignKey(row => row.VehicleId).OnDelete(DeleteBehavior.ClientCascade);
        vehicle.Navigation(v => v.Specs).AutoInclude();

        var spec = model.Entity<SpecRow>().ToTable("Specs");
        spec.HasIndex(row => new { row.ComponentId, row.Spec }).IsUnique();
        spec.HasIndex(row => new { row.VehicleId, row.Spec }).IsUnique();
        spec.Words(row => row.Spec)
            .Noted(row => row.Number, -1, 2_000_000)
            .Rule("Owner", """("ComponentId" IS NULL) + ("VehicleId" IS NULL) = 1""");
        foreach (var heading in Enum.GetValues<Spec>())
            spec.Rule($"{heading}", FormattableString.Invariant($"\"Spec\" <> '{heading}' OR \"NumberSi\" BETWEEN {heading.Line().Low:0.0######} AND {heading.Line().High:0.0######}"));
    }
}
