using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Tyres;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Sessions;

internal static class SessionMapping
{
    public static void Map(ModelBuilder model)
    {
        var session = model.Entity<Session>();
        session.Property(s => s.Version).IsConcurrencyToken();
        session.HasIndex(s => s.Uid).IsUnique();
        session.Ignore(s => s.Method);
        session.Ignore(s => s.Readings);
        session.HasOne(s => s.Component).WithMany().HasForeignKey(s => s.ComponentId).OnDelete(DeleteBehavior.Restrict);
        session.HasOne(s => s.Vehicle).WithMany().HasForeignKey(s => s.VehicleId).OnDelete(DeleteBehavior.Restrict);
        session.HasIndex(s => new { s.VehicleId, s.Date });
        session.HasIndex(s => new { s.ComponentId, s.Date });
        session.HasDiscriminator<string>("Method").HasValue<TurnCountSession>("turn count").HasValue<RollOutSession>("roll-out");
        session.ToTable("Sessions", table =>
        {
            table.Day("Date");
            table.OneOf("Method", "turn count", "roll-out");
        });

        // Deleting is done by the program, row by row, where a log can see it.
        session.HasMany(s => s.Rows).WithOne().HasForeignKey(row => row.SessionId).OnDelete(DeleteBehavior.ClientCascade);
        session.Navigation(s => s.Rows).AutoInclude();
        session.Navigation(s => s.Component).AutoInclude();
        session.Navigation(s => s.Vehicle).AutoInclude();
        var reading = model.Entity<ReadingRow>();
        reading.HasIndex(row => new { row.SessionId, row.Ordinal }).IsUnique();
        reading.ToTable("Readings", table =>
        {
            table.Filled("Text");
            table.Rule("Ordinal", "\"Ordinal\" >= 1");
        });

        var count = model.Entity<TurnCountSession>();
        count.Property(s => s.Wheels).HasConversion<string>();
        count.Property(s => s.Align).HasColumnName("Align");
        count.ToTable(table => table.OneOf<TurnCountSession, Wheels>("Wheels"));

        var rollOut = model.Entity<RollOutSession>();
        rollOut.Property(s => s.Construction).HasConversion<string>();
        rollOut.Property(s => s.Align).HasColumnName("Align");
        rollOut.ToTable(table => table.OneOf<RollOutSession, Construction>("Construction"));
    }
}
