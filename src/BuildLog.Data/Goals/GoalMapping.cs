using BuildLog.Data.Vehicles;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Goals;

internal static class GoalMapping
{
    public static void Map(ModelBuilder model)
    {
        var goal = model.Entity<GoalEntry>();
        goal.Property(g => g.Version).IsConcurrencyToken();
        goal.HasIndex(g => g.Uid).IsUnique();
        goal.HasOne<Vehicle>().WithMany().HasForeignKey(g => g.VehicleId).OnDelete(DeleteBehavior.Restrict);
        goal.HasDiscriminator<string>("Kind").HasValue<CruiseGoalEntry>("cruise");
        goal.ToTable("Goals", table => table.OneOf("Kind", "cruise"));

        var cruise = model.Entity<CruiseGoalEntry>();
        cruise.Property(g => g.SpeedSi);
        cruise.Property(g => g.EngineSpeedSi);
        cruise.ToTable(table =>
        {
            table.Rule("Speed", "\"SpeedSi\" > 0 AND \"SpeedSi\" < 1000 AND length(trim(\"Speed\")) > 0");
            table.Rule("EngineSpeed", "\"EngineSpeedSi\" > 0 AND \"EngineSpeedSi\" < 1000 AND length(trim(\"EngineSpeed\")) > 0");
        });
    }
}
