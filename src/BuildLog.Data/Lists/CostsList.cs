using BuildLog.Data.Costs;
using BuildLog.Data.Jobs;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Lists;

/// <summary>What was spent, a line a receipt: what an insurer takes instead of ninety of them.</summary>
internal sealed class CostsList : SpreadsheetList
{
    public override IReadOnlyList<string> Columns { get; } = ["vehicle", "date", "what", "amount", "supplier", "job"];

    public override IEnumerable<IReadOnlyList<string>> Rows(ShopContext db, Vehicle? vehicle)
    {
        var vehicles = db.Vehicles.ToDictionary(known => known.Id, known => known.Name);
        var jobs = db.Set<Job>().ToDictionary(job => job.Id, job => job.Title);
        return db.Set<Cost>().Where(cost => vehicle == null || cost.VehicleId == vehicle.Id).OrderBy(cost => cost.Date).ThenBy(cost => cost.Id).AsEnumerable()
            .Select(cost => (IReadOnlyList<string>)[
                vehicles[cost.VehicleId], InWords(cost.Day), cost.What, cost.Amount?.Listed ?? "", cost.Supplier?.Name ?? "", cost.JobId is { } job ? jobs[job] : ""])
            .ToList();
    }

    public override Entered Entry(NamedInRows named, IReadOnlyDictionary<string, string> row)
    {
        var on = named.Vehicle(row["vehicle"]);
        return new Cost(on, named.Job(on, row["job"]))
        {
            Day = ReadLooseDay(row["date"]) ?? throw new RefusedException("date", Spoken("the date is missing."), "2026-05-03"),
            What = row["what"],
            Amount = named.Money(row["amount"]),
            SupplierId = named.Supplier(row["supplier"]),
        };
    }
}
