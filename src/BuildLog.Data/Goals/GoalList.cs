using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Goals;

/// <summary>The goals of one vehicle together.</summary>
internal static class GoalList
{
    public static OwnersGoals Understood(IReadOnlyList<GoalEntry> entries)
    {
        var goals = new OwnersGoals([.. entries.OfType<CruiseGoalEntry>().Select(goal => goal.Read())])
        {
            Hill = entries.OfType<HillGoalEntry>().SingleOrDefault()?.Read(),
        };
        return entries.OfType<LimitGoalEntry>().Aggregate(goals, (sofar, limit) => limit.Join(sofar));
    }

    /// <exception cref="RefusedException">There may be only one of this, and the vehicle has it already.</exception>
    public static void CheckAmongOthers(ShopContext db, GoalEntry entry)
    {
        switch (entry)
        {
            case HillGoalEntry hill when db.Goals.OfType<HillGoalEntry>().FirstOrDefault(other => other.VehicleId == hill.VehicleId && other.Id != hill.Id) is { } other:
                throw Refused(Spoken("hill"), Spoken($"{other.Gradient} at {other.Speed}"));
            case LimitGoalEntry limit when db.Goals.OfType<LimitGoalEntry>()
                .FirstOrDefault(other => other.VehicleId == limit.VehicleId && other.Limited == limit.Limited && other.Id != limit.Id) is { } other:
                throw Refused(limit.Limited.InWords(), other.Limit);
            case BudgetGoalEntry budget when db.Goals.OfType<BudgetGoalEntry>().FirstOrDefault(other => other.VehicleId == budget.VehicleId && other.Id != budget.Id) is { } other:
                throw Refused(Spoken("budget"), $"{other.Most}");
        }
    }

    private static RefusedException Refused(string what, string other)
        => new("goal", Spoken($"The vehicle already has a {what} goal ({other}): change that one, or take it out first."), "");
}
