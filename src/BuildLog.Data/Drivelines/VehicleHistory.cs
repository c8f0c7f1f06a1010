using BuildLog.Data.Costs;
using BuildLog.Data.Fitments;
using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Drivelines;

/// <summary>One vehicle's fitments with the evidence on their parts: the driveline of any day, and every swap.</summary>
internal sealed class VehicleHistory
{
    private readonly Vehicle vehicle;
    private readonly PartEvidence evidence;
    private readonly VehicleNumbers numbers;
    private readonly IReadOnlyList<Cost> costs;

    private VehicleHistory(Vehicle vehicle, IReadOnlyList<Fitment> fitments, IReadOnlyList<Session> sessions, IReadOnlyList<Cost> costs)
        => (this.vehicle, Fitments, evidence, numbers, this.costs) = (vehicle, fitments, new(sessions), new(vehicle), costs);

    public IReadOnlyList<Fitment> Fitments { get; }

    public static VehicleHistory Load(ShopContext db, Vehicle vehicle) => Load(db, vehicle, db.Fitments.Where(fitment => fitment.VehicleId == vehicle.Id));

    /// <summary>Only what is needed for one day, however long the history.</summary>
    public static VehicleHistory LoadFor(ShopContext db, Vehicle vehicle, DateOnly day)
        => Load(db, vehicle, db.Fitments.Where(fitment => fitment.VehicleId == vehicle.Id && fitment.From <= day && (fitment.To == null || fitment.To > day)));

    public DrivelineOfDay On(DateOnly day)
    {
        var fitted = Fitments.Where(fitment => fitment.Holds(day)).OrderBy(fitment => fitment.Position).ToList();
        return new(vehicle, day, Chain(fitted), fitted, [.. fitted.SelectMany(fitment => evidence.NumbersOf(fitment.Component, fitment.Position)), .. numbers.All]);
    }

    /// <summary>Spent on the vehicle until the end of that day, one sum for each currency.</summary>
    public IReadOnlyList<Money> SpentUntil(DateOnly day) => Money.Totals(costs.Where(cost => cost.Date <= day).Select(cost => cost.Amount));

    public IReadOnlyList<Swap> Swaps()
    {
        var changes = Fitments.Select(fitment => (When: fitment.Start, fitment.Position))
            .Concat(Fitments.Where(fitment => fitment.End is not null).Select(fitment => (When: fitment.End!.Value, fitment.Position)))
            .Distinct()
            .OrderBy(change => change.When);

        var swaps = new List<Swap>();
        var before = Chain([]);
        foreach (var (when, position) in changes)
        {
            var removed = Fitments.SingleOrDefault(fitment => fitment.Position == position && fitment.End == when);
            var fitted = Fitments.SingleOrDefault(fitment => fitment.Position == position && fitment.Start == when);
            var after = Chain([.. Fitments.Where(fitment => fitment.Holds(when))]);
            swaps.Add(new()
            {
                Date = when.Day,
                Day = fitted?.FromDay ?? removed!.ToDay!,
                Position = position,
                Removed = removed?.Component,
                Fitted = fitted?.Component,
                Reason = fitted is null ? removed!.ReasonOff : fitted.Reason,
                Odometer = fitted?.FromOdometer ?? removed?.ToOdometer,
                Before = before,
                After = after,
                SpentBefore = SpentUntil(when.Day.AddDays(-1)),
                SpentAfter = SpentUntil(when.Day),
            });
            before = after;
        }

        return swaps;
    }

    private static VehicleHistory Load(ShopContext db, Vehicle vehicle, IQueryable<Fitment> which)
    {
        var stored = db.Vehicles.SingleOrDefault(v => v.Id == vehicle.Id)
            ?? throw new RefusedException("vehicle", $"{vehicle} is not in the record any more.", "");
        var fitments = which.AsEnumerable().OrderBy(fitment => fitment.Start).ToList();
        return new(stored, fitments, SessionList.Of(db, [.. fitments.Select(fitment => fitment.ComponentId).Distinct()]), CostList.Amounts(db, vehicle));
    }

    private Driveline Chain(IReadOnlyList<Fitment> fitted)
    {
        var chain = new Driveline { DrivesInFront = vehicle.DrivesInFront };
        foreach (var fitment in fitted) chain = evidence.Joined(chain, fitment.Component, fitment.Position);
        return numbers.Moved(chain);
    }
}
