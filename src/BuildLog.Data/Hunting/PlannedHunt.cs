using BuildLog.Data.Plans;

namespace BuildLog.Data.Hunting;

/// <summary>Enters a hunt for a plan, with the plan where nobody kept it yet, as one change.</summary>
internal static class PlannedHunt
{
    public static WantedPart Enter(ShopContext db, WantedPart wanted, Plan plan)
    {
        if (plan.Id == 0)
        {
            // The hunt names the plan by its number, which it has only once it is stored.
            Entries.Add(db, plan);
            db.SaveChanges();
            db.Journal.Did(() => $"hunted {wanted} and kept the plan {plan}");
        }

        wanted.PlanId = plan.Id;
        return Entries.Add(db, wanted);
    }
}
