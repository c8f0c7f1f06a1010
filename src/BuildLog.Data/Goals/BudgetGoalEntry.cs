using BuildLog.Data.Costs;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Goals;

/// <summary>What the whole build may cost.</summary>
public sealed class BudgetGoalEntry : GoalEntry
{
    public BudgetGoalEntry(Vehicle vehicle) => VehicleId = vehicle.Id;

    internal BudgetGoalEntry() { }

    public Money? Most { get; set; }

    internal override Later KindInWords => new Later("budget goal");

    public override void Check()
    {
        if (Most is not { Minor: > 0 }) throw new RefusedException("budget", Spoken("A budget is an amount above zero."), "4000 EUR");
    }
}
