using BuildLog.Data.Specs;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Tyres;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Components;

/// <summary>All kinds of parts lie in one table; each has its own columns for its spec.</summary>
internal static class ComponentMapping
{
    public static void Map(ModelBuilder model)
    {
        var component = model.Entity<Component>().ToTable("Components");
        component.Property(c => c.Version).IsConcurrencyToken();
        component.HasIndex(c => c.Uid).IsUnique();
        component.Ignore(c => c.Kind);
        component.Ignore(c => c.Positions);
        component.Property<string>("StoredKind").HasColumnName("Kind");
        component.HasDiscriminator<string>("StoredKind")
            .HasValue<EngineComponent>("engine")
            .HasValue<TransmissionComponent>("transmission")
            .HasValue<OverdriveComponent>("overdrive")
            .HasValue<TransferCaseComponent>("transfer case")
            .HasValue<AxleComponent>("axle")
            .HasValue<PropshaftComponent>("propshaft")
            .HasValue<WheelSetComponent>("wheels")
            .HasValue<SpeedometerComponent>("speedometer");
        component.Filled("Name").OneOf("Kind", "engine", "transmission", "overdrive", "transfer case", "axle", "propshaft", "wheels", "speedometer");
        component.With(c => c.TakenFrom).With(c => c.Supplier).Money(c => c.Price).LooseDay(c => c.Bought).Words(c => c.Ownership).Filled("Condition");

        model.Entity<EngineComponent>().Noted(c => c.Idle, 0, 1000).Noted(c => c.Redline, 0, 1000).Words(c => c.Induction);
        MapTransmission(model);
        MapOverdrive(model);
        model.Entity<TransferCaseComponent>().Noted(c => c.High, RatioRange.Transfer).Noted(c => c.Low, RatioRange.Transfer).Words(c => c.FrontDrive);
        MapBolted(model);
        MapAxle(model);
        MapWheelSet(model);
        MapPropshaft(model);
        model.Entity<SpeedometerComponent>().Words(c => c.Per).Words(c => c.Pickup)
            .Rule("DriveTeeth", "\"DriveTeeth\" BETWEEN 1 AND 60")
            .Rule("DrivenTeeth", "\"DrivenTeeth\" BETWEEN 3 AND 99")
            .AllOrNone("SpeedometerTeeth", "DriveTeeth", "DrivenTeeth");
    }

    private static void MapBolted(ModelBuilder model)
        => model.Entity<BoltedComponent>().Words(c => c.Seat).Rule("Studs", "\"Studs\" BETWEEN 3 AND 10").Filled("Thread");

    private static void MapPropshaft(ModelBuilder model)
    {
        var propshaft = model.Entity<PropshaftComponent>();
        propshaft.Ignore(c => c.Pieces);

        // Deleting is done by the program, row by row, where a log can see it.
        propshaft.HasMany(c => c.Rows).WithOne().HasForeignKey(row => row.PropshaftId).OnDelete(DeleteBehavior.ClientCascade);
        propshaft.Navigation(c => c.Rows).AutoInclude();

        var piece = model.Entity<PieceRow>().ToTable("ShaftPieces");
        piece.HasIndex(row => new { row.PropshaftId, row.Ordinal }).IsUnique();
        piece.Words(row => row.Yokes)
            .Rule("Ordinal", "\"Ordinal\" BETWEEN 1 AND 3")
            .Noted(row => row.Outer, SpecSheet.ShaftOuter)
            .Noted(row => row.Wall, SpecSheet.ShaftWall)
            .Noted(row => row.Length, SpecSheet.ShaftLength)
            .Noted(row => row.Side, SpecSheet.ShaftSide)
            .Noted(row => row.Plan, SpecSheet.ShaftPlan);
    }

    private static void MapTransmission(ModelBuilder model)
    {
        var transmission = model.Entity<TransmissionComponent>();
        transmission.Ignore(c => c.Gears).Ignore(c => c.Train).Ignore(c => c.GearNames);
        transmission.Filled("GearTeeth");

        // Deleting is done by the program, row by row, where a log can see it.
        transmission.HasMany(c => c.Rows).WithOne().HasForeignKey(row => row.TransmissionId).OnDelete(DeleteBehavior.ClientCascade);
        transmission.Navigation(c => c.Rows).AutoInclude();

        var gear = model.Entity<GearRow>().ToTable("Gears");
        gear.HasIndex(row => new { row.TransmissionId, row.Ordinal }).IsUnique();
        gear.Filled("Name").Rule("Ordinal", "\"Ordinal\" >= 1").Noted(row => row.Ratio, RatioRange.Gear);
    }

    private static void MapOverdrive(ModelBuilder model)
    {
        var overdrive = model.Entity<OverdriveComponent>();
        overdrive.Ignore(c => c.Teeth);
        overdrive.Property(c => c.OverdriveRing);
        overdrive.Property(c => c.OverdriveSun);
        overdrive.AllOrNone("OverdriveTeeth", "OverdriveRing", "OverdriveSun")
            .Rule("OverdriveRing", "\"OverdriveRing\" BETWEEN 4 AND 200")
            .Rule("OverdriveSun", "\"OverdriveSun\" BETWEEN 4 AND 200")
            .Noted(c => c.OverdriveRatio, RatioRange.Overdrive);
    }

    private static void MapAxle(ModelBuilder model)
    {
        var axle = model.Entity<AxleComponent>();
        axle.Ignore(c => c.Teeth);
        axle.Property(c => c.Ring);
        axle.Property(c => c.Pinion);
        axle.AllOrNone("Teeth", "Ring", "Pinion")
            .Rule("Ring", "\"Ring\" BETWEEN 4 AND 200")
            .Rule("Pinion", "\"Pinion\" BETWEEN 4 AND 200")
            .Noted(c => c.StatedRatio, RatioRange.Axle)
            .Noted(c => c.HubReduction, RatioRange.Hub);
    }

    private static void MapWheelSet(ModelBuilder model)
    {
        var wheels = model.Entity<WheelSetComponent>();
        wheels.Ignore(c => c.Size);
        wheels.Property(c => c.StoredPassengerOnTruck).HasColumnName("PassengerOnTruck");
        wheels.Property(c => c.StoredTwinRear).HasColumnName("TwinRear");
        wheels.Words(c => c.Construction)
            .Needs("Kind", "wheels", "SizeText", "Construction")
            .Noted(c => c.Worn, 0, 0.03)
            .Noted(c => c.StatedCircumference, RollReading.Smallest, RollReading.Largest);
    }
}
