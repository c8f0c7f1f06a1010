using BuildLog.Data.Vehicles;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Goals;

internal static class GoalMapping
{
    public static void Map(ModelBuilder model)
    {
        var goal = model.Entity<GoalEntry>().ToTable("Goals");
        goal.Property(g => g.Version).IsConcurrencyToken();
        goal.HasIndex(g => g.Uid).IsUnique();
        goal.HasOne<Vehicle>().WithMany().HasForeignKey(g => g.VehicleId).OnDelete(DeleteBehavior.Restrict);
        goal.Property<string>("StoredKind").HasColumnName("Kind");
        goal.HasDiscriminator<string>("StoredKind").HasValue<CruiseGoalEntry>("cruise");
        goal.OneOf("Kind", "cruise");

        var cruise = model.Entity<CruiseGoalEntry>();
        cruise.Property(g => g.SpeedSi);
        cruise.Property(g => g.EngineSpeedSi);
        cruise.Needs("Kind", "cruise", "Speed", "EngineSpeed", "Tolerance", "Gear", "SpeedSi", "EngineSpeedSi")
            .Rule("SpeedSi", "\"SpeedSi\" > 0 AND \"SpeedSi\" < 1000")
            .Rule("EngineSpeedSi", "\"EngineSpeedSi\" > 0 AND \"EngineSpeedSi\" < 1000");
    }
}
