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
        goal.HasDiscriminator<string>("StoredKind").HasValue<CruiseGoalEntry>("cruise").HasValue<HillGoalEntry>("hill").HasValue<LimitGoalEntry>("limit")
            .HasValue<BudgetGoalEntry>("budget");
        goal.OneOf("Kind", "cruise", "hill", "limit", "budget");

        var cruise = model.Entity<CruiseGoalEntry>();
        cruise.Property(g => g.Speed).HasColumnName("Speed");
        cruise.Property(g => g.Gear).HasColumnName("Gear");
        cruise.Property(g => g.SpeedSi);
        cruise.Property(g => g.EngineSpeedSi);
        cruise.Needs("Kind", "cruise", "Speed", "EngineSpeed", "Tolerance", "Gear", "SpeedSi", "EngineSpeedSi")
            .Rule("SpeedSi", "\"SpeedSi\" > 0 AND \"SpeedSi\" < 1000")
            .Rule("EngineSpeedSi", "\"EngineSpeedSi\" > 0 AND \"EngineSpeedSi\" < 1000");

        var hill = model.Entity<HillGoalEntry>();
        hill.Property(g => g.Speed).HasColumnName("Speed");
        hill.Property(g => g.Gear).HasColumnName("Gear");
        hill.HasIndex(g => g.VehicleId, "IX_Goals_OneHill").IsUnique().HasFilter("\"Kind\" = 'hill'");
        hill.Needs("Kind", "hill", "Gradient", "Speed", "Gear");

        var limit = model.Entity<LimitGoalEntry>();
        limit.HasIndex(g => new { g.VehicleId, g.Limited }, "IX_Goals_OneLimitOfEach").IsUnique();
        limit.Words(g => g.Limited).Needs("Kind", "limit", "Limited", "Limit");

        var budget = model.Entity<BudgetGoalEntry>();
        budget.HasIndex(g => g.VehicleId, "IX_Goals_OneBudget").IsUnique().HasFilter("\"Kind\" = 'budget'");
        budget.Money(g => g.Most).Needs("Kind", "budget", "MostMinor");
    }
}
