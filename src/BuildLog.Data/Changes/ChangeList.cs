using BuildLog.Data.Vehicles;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Changes;

/// <summary>Reads changes, the latest first.</summary>
internal static class ChangeList
{
    /// <summary>How the label of a change begins that took something out.</summary>
    public const string Removed = "removed ";

    public static IReadOnlyList<ChangeSet> Read(ShopContext db, Vehicle? vehicle, ChangeSet? before, int most)
    {
        IQueryable<ChangeSet> sets = db.Changes;
        if (vehicle is not null)
        {
            var parts = db.Fitments.Where(fitment => fitment.VehicleId == vehicle.Id).Select(fitment => fitment.Component.Uid);
            sets = sets.Where(set => set.Rows.Any(row => row.VehicleId == vehicle.Id || parts.Contains(row.RecordUid)));
        }

        if (before is not null) sets = sets.Where(set => set.Id < before.Id);
        return Whole(db, sets.OrderByDescending(set => set.Id).Take(most).Include(set => set.Rows));
    }

    /// <summary>What was taken out and has not come back.</summary>
    public static IReadOnlyList<ChangeSet> Removals(ShopContext db, int most)
        => [
            .. db.Changes
                .Where(set => !db.Changes.Any(later => later.UndoesId == set.Id))
                .Where(set => (set.Step == ChangeStep.Forward && set.Label.StartsWith(Removed)) || (set.Step == ChangeStep.Redo && set.Label.Contains(": " + Removed)))
                .OrderByDescending(set => set.Id)
                .Take(most),
        ];

    private static List<ChangeSet> Whole(ShopContext db, IQueryable<ChangeSet> asked)
    {
        var sets = asked.ToList();
        AmountColumns.Complete(db, sets.SelectMany(set => set.Rows));
        return sets;
    }
}
