using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Sessions;

internal static class SessionMapping
{
    private static readonly IReadOnlyList<(string Words, Type Kind)> Methods =
    [
        ("turn count", typeof(TurnCountSession)), ("gear count", typeof(GearCountSession)), ("roll-out", typeof(RollOutSession)), ("teeth", typeof(TeethSession)),
        ("loaded radius", typeof(LoadedRadiusSession)), ("bolt circle", typeof(BoltCircleSession)), ("shaft angles", typeof(ShaftAnglesSession)),
        ("weighbridge", typeof(WeighbridgeSession)), ("speedometer run", typeof(SpeedometerRunSession)),
    ];

    public static void Map(ModelBuilder model)
    {
        var session = model.Entity<Session>().ToTable("Sessions");
        session.Property(s => s.Version).IsConcurrencyToken();
        session.HasIndex(s => s.Uid).IsUnique();
        session.Ignore(s => s.Method);
        session.Ignore(s => s.Readings);
        session.Ignore(s => s.Subject);
        session.HasOne(s => s.Component).WithMany().HasForeignKey(s => s.ComponentId).OnDelete(DeleteBehavior.Restrict);
        session.HasOne(s => s.Vehicle).WithMany().HasForeignKey(s => s.VehicleId).OnDelete(DeleteBehavior.Restrict);
        session.Navigation(s => s.Component).AutoInclude();
        session.Navigation(s => s.Vehicle).AutoInclude();
        session.HasIndex(s => new { s.VehicleId, s.ComponentId, s.Date });
        session.HasIndex(s => new { s.ComponentId, s.Date });
        session.Property<string>("StoredMethod").HasColumnName("Method");
        var method = session.HasDiscriminator<string>("StoredMethod");
        foreach (var (words, kind) in Methods) method.HasValue(kind, words);
        session.Dated().OneOf("Method", Methods.Select(known => known.Words));
        session.Rule("Subject", $"(\"ComponentId\" IS NULL) = (\"Method\" IN ('weighbridge', 'speedometer run')) AND (\"ComponentId\" IS NOT NULL OR \"VehicleId\" IS NOT NULL)");
        MapReadings(model);

        var count = model.Entity<TurnCountSession>();
        count.Property(s => s.Align).HasColumnName("Align");
        count.Property(s => s.ReadTo).HasColumnName("ReadTo");
        count.Words(s => s.Wheels).Needs("Method", "turn count", "Wheels", "ReadTo", "Align", "Hub");

        var gear = model.Entity<GearCountSession>();
        gear.Property(s => s.Align).HasColumnName("Align");
        gear.Property(s => s.ReadTo).HasColumnName("ReadTo");
        gear.Needs("Method", "gear count", "Gear", "ReadTo", "Align").Filled("Gear");

        var rollOut = model.Entity<RollOutSession>();
        rollOut.Property(s => s.Align).HasColumnName("Align");
        rollOut.Property(s => s.Tape).HasColumnName("Tape");
        rollOut.Words(s => s.Construction).Needs("Method", "roll-out", "Loaded", "Construction", "Tape", "Align", "Pressure");

        model.Entity<TeethSession>();

        var radius = model.Entity<LoadedRadiusSession>();
        radius.Property(s => s.Tape).HasColumnName("Tape");
        radius.Needs("Method", "loaded radius", "Tape");

        var circle = model.Entity<BoltCircleSession>();
        circle.Property(s => s.Tape).HasColumnName("Tape");
        circle.Words(s => s.Between).Needs("Method", "bolt circle", "Studs", "Between", "Tape");

        model.Entity<ShaftAnglesSession>();

        var weighing = model.Entity<WeighbridgeSession>();
        weighing.Property(s => s.Step).HasColumnName("Step");
        weighing.Needs("Method", "weighbridge", "Step");

        var run = model.Entity<SpeedometerRunSession>();
        run.Property(s => s.Tape).HasColumnName("Tape");
        run.Property(s => s.Step).HasColumnName("Step");
        run.Needs("Method", "speedometer run", "Tape", "Step");
    }

    private static void MapReadings(ModelBuilder model)
    {
        var session = model.Entity<Session>();

        // Deleting is done by the program, row by row, where a log can see it.
        session.HasMany(s => s.Rows).WithOne().HasForeignKey(row => row.SessionId).OnDelete(DeleteBehavior.ClientCascade);
        session.Navigation(s => s.Rows).AutoInclude();

        var reading = model.Entity<ReadingRow>().ToTable("Readings");
        reading.HasIndex(row => new { row.SessionId, row.Ordinal }).IsUnique();
        reading.Filled("Text").Rule("Ordinal", "\"Ordinal\" >= 1");
    }
}
