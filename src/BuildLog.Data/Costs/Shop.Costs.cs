using BuildLog.Data.Costs;
using BuildLog.Data.Goals;
using BuildLog.Data.Vehicles;
using BuildLog.Data.Workshops;

namespace BuildLog.Data;

/// <summary>Money.</summary>
public sealed partial class Shop
{
    /// <summary>The shop's own card; a new one where nobody has filled it in.</summary>
    public Workshop Workshop() => store.Read(db => db.Set<Workshop>().SingleOrDefault() ?? new Workshop());

    /// <summary>What was spent on a vehicle, the latest first.</summary>
    public IReadOnlyList<Cost> Costs(Vehicle vehicle) => store.Look(record => CostList.Of(record, vehicle));

    /// <summary>The same in all, one sum for each currency.</summary>
    public IReadOnlyList<Money> Spent(Vehicle vehicle) => store.Look(record => Money.Totals(Spending.On(record, vehicle).Select(spent => spent.Amount)));

    /// <summary>What the whole build may cost; null where nothing was set.</summary>
    public Money? Budget(Vehicle vehicle) => Goals(vehicle).OfType<BudgetGoalEntry>().SingleOrDefault()?.Most;
}
