using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Sessions;

internal static class SessionMapping
{
    public static void Map(ModelBuilder model)
    {
        var session = model.Entity<Session>().ToTable("Sessions");
        session.Property(s => s.Version).IsConcurrencyToken();
        session.HasIndex(s => s.Uid).IsUnique();
        session.Ignore(s => s.Method);
        session.Ignore(s => s.Readings);
        session.HasOne(s => s.Component).WithMany().HasForeignKey(s => s.ComponentId).OnDelete(DeleteBehavior.Restrict);
        session.HasOne(s => s.Vehicle).WithMany().HasForeignKey(s => s.VehicleId).OnDelete(DeleteBehavior.Restrict);
        session.Navigation(s => s.Component).AutoInclude();
        session.Navigation(s => s.Vehicle).AutoInclude();
        session.HasIndex(s => new { s.VehicleId, s.Date });
        session.HasIndex(s => new { s.ComponentId, s.Date });
        session.Property<string>("StoredMethod").HasColumnName("Method");
        session.HasDiscriminator<string>("StoredMethod").HasValue<TurnCountSession>("turn count").HasValue<GearCountSession>("gear count").HasValue<RollOutSession>("roll-out");
        session.Day("Date").OneOf("Method", "turn count", "gear count", "roll-out");
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
        rollOut.Words(s => s.Construction).Needs("Method", "roll-out", "Loaded", "Construction", "Tape", "Align", "Pressure");
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
