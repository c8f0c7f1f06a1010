using BuildLog.Gearing.Tyres;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Components;

/// <summary>All kinds of parts lie in one table; each has its own columns for its spec.</summary>
internal static class ComponentMapping
{
    public static void Map(ModelBuilder model)
    {
        var component = model.Entity<Component>();
        component.Property(c => c.Version).IsConcurrencyToken();
        component.HasIndex(c => c.Uid).IsUnique();
        component.Ignore(c => c.Kind);
        component.Ignore(c => c.Positions);
        component.HasDiscriminator<string>("Kind")
            .HasValue<EngineComponent>("engine")
            .HasValue<TransmissionComponent>("transmission")
            .HasValue<OverdriveComponent>("overdrive")
            .HasValue<TransferCaseComponent>("transfer case")
            .HasValue<AxleComponent>("axle")
            .HasValue<WheelSetComponent>("wheels");
        component.ToTable("Components", table =>
        {
            table.Filled("Name");
            table.OneOf("Kind", "engine", "transmission", "overdrive", "transfer case", "axle", "wheels");
            table.Rule("Teeth", """("Ring" IS NULL) = ("Pinion" IS NULL) AND "Ring" BETWEEN 4 AND 200 AND "Pinion" BETWEEN 4 AND 200""");
        });

        MapEngine(model);
        MapTransmission(model);
        model.Entity<OverdriveComponent>().Noted(c => c.OverdriveRatio, 0.4, 1);
        MapTransferCase(model);
        MapAxle(model);
        MapWheelSet(model);
    }

    private static void MapEngine(ModelBuilder model)
    {
        var engine = model.Entity<EngineComponent>();
        engine.Noted(c => c.Idle, 0, 1000);
        engine.Noted(c => c.Redline, 0, 1000);
    }

    private static void MapTransmission(ModelBuilder model)
    {
        var transmission = model.Entity<TransmissionComponent>();
        transmission.Ignore(c => c.Gears);

        // Deleting is done by the program, row by row, where a log can see it.
        transmission.HasMany(c => c.Rows).WithOne().HasForeignKey(row => row.TransmissionId).OnDelete(DeleteBehavior.ClientCascade);
        transmission.Navigation(c => c.Rows).AutoInclude();
        var gear = model.Entity<GearRow>();
        gear.HasIndex(row => new { row.TransmissionId, row.Ordinal }).IsUnique();
        gear.ToTable("Gears", table =>
        {
            table.Filled("Name");
            table.Rule("Ordinal", "\"Ordinal\" >= 1");
        });
        gear.Noted(row => row.Ratio, 0.3, 20);
    }

    private static void MapTransferCase(ModelBuilder model)
    {
        var transferCase = model.Entity<TransferCaseComponent>();
        transferCase.Noted(c => c.High, 0.5, 6);
        transferCase.Noted(c => c.Low, 0.5, 6);
    }

    private static void MapAxle(ModelBuilder model)
    {
        var axle = model.Entity<AxleComponent>();
        axle.Ignore(c => c.Teeth);
        axle.Property(c => c.Ring);
        axle.Property(c => c.Pinion);
        axle.Noted(c => c.StatedRatio, 1.5, 12);
        axle.Noted(c => c.HubReduction, 1, 6);
    }

    private static void MapWheelSet(ModelBuilder model)
    {
        var wheels = model.Entity<WheelSetComponent>();
        wheels.Ignore(c => c.Size);
        wheels.Property(c => c.Construction).HasConversion<string>();
        wheels.Noted(c => c.Worn, 0, 0.03);
        wheels.Noted(c => c.StatedCircumference, 0.8, 6);
        wheels.ToTable(table => table.OneOf<WheelSetComponent, Construction>("Construction"));
    }
}
