using BuildLog.Data.Costs;
using BuildLog.Data.Days;
using BuildLog.Data.Fitments;
using BuildLog.Data.RoadTests;
using BuildLog.Data.Rows;
using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Drivelines;

/// <summary>One vehicle's fitments with the evidence on their parts: the driveline of any day, and every swap.</summary>
internal sealed class VehicleHistory
{
    private readonly Vehicle vehicle;
    private readonly PartEvidence evidence;
    private readonly VehicleNumbers numbers;
    private readonly IReadOnlyList<RoadTest> drives;
    private readonly IReadOnlyList<Spending> spending;

    private VehicleHistory(Vehicle vehicle, IReadOnlyList<Fitment> fitments, IReadOnlyList<Session> sessions, IReadOnlyList<RoadTest> drives, IReadOnlyList<Spending> spending)
        => (this.vehicle, Fitments, evidence, numbers, this.drives, this.spending)
            = (vehicle, fitments, new(sessions), new(vehicle, [.. sessions.Where(session => session.ComponentId is null)]), drives, spending);

    public IReadOnlyList<Fitment> Fitments { get; }

    public static VehicleHistory Load(Snapshot record, Vehicle vehicle)
    {
        var stored = VehicleReader.Stored(record, vehicle);
        var fitments = FitmentReader.Of(record, stored.Id);
        return new(stored, fitments, SessionsOn(record, stored, fitments), RoadTestReader.Of(record, stored), Spending.On(record, stored));
    }

    /// <summary>The driveline of one day alone: no more is read than held then, however long the history.</summary>
    public static DrivelineOfDay OnOneDay(Snapshot record, Vehicle vehicle, DateOnly day)
    {
        var stored = VehicleReader.Stored(record, vehicle);
        var fitments = FitmentReader.On(record, stored, day);
        return new VehicleHistory(stored, fitments, SessionsOn(record, stored, [.. fitments.Where(fitment => fitment.Holds(day))]), RoadTestReader.Of(record, stored), spending: []).On(day);
    }

    /// <summary>The same of a day as far as it is known; null where that leaves open whether it was before a swap.</summary>
    public static DrivelineOfDay? OnOneDay(Snapshot record, Vehicle vehicle, LooseDay day)
        => (day.Earliest ?? day.Latest) is not { } reckoned || (!day.IsExact && Reckoning.DaysOf(FitmentReader.Of(record, vehicle.Id)).Any(day.Straddles)) ? null
            : OnOneDay(record, vehicle, reckoned);

    public DrivelineOfDay On(DateOnly day)
    {
        var fitted = AlongTheDriveline(fitment => fitment.Holds(day));
        var known = NumbersOf(fitted);
        return new(vehicle, day, Driven(numbers.Driven(Chain(fitted, known), AlikeSince(fitted), day), AlikeSince(fitted, Position.Speedometer), day), fitted, [.. known, .. numbers.All]) { Doubts = UncertainDay.Of(Fitments, day) };
    }

    /// <summary>Spent on the vehicle until the end of that day, one sum for each currency.</summary>
    public IReadOnlyList<Money> SpentUntil(DateOnly day) => Money.Totals(spending.Where(spent => spent.Date <= day).Select(spent => spent.Amount));

    public IReadOnlyList<Swap> Swaps()
    {
        var changes = Fitments.Select(fitment => (When: fitment.Start, fitment.Position))
            .Concat(Fitments.Where(fitment => fitment.End is not null).Select(fitment => (When: fitment.End!.Value, fitment.Position)))
            .Distinct()
            .OrderBy(change => change.When);

        var swaps = new List<Swap>();
        var before = Chain([], []);
        foreach (var (when, position) in changes)
        {
            var removed = Fitments.SingleOrDefault(fitment => fitment.Position == position && fitment.End == when);
            var fitted = Fitments.SingleOrDefault(fitment => fitment.Position == position && fitment.Start == when);
            var held = AlongTheDriveline(fitment => fitment.Holds(when));
            var after = Chain(held, NumbersOf(held));
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

    private static IReadOnlyList<Session> SessionsOn(Snapshot record, Vehicle vehicle, IReadOnlyList<Fitment> fitments)
        => SessionList.Of(record, vehicle, [.. fitments.Select(fitment => fitment.ComponentId).Distinct()]);

    // Whoever fits a part and drives on the same day fits it first. Engine and shafts may change: no ratio is theirs.
    private static DateOnly AlikeSince(List<Fitment> fitted, Position? whatever = null)
        => fitted.Where(fitment => fitment.Position is not (Position.Engine or Position.Propshaft or Position.FrontPropshaft) && fitment.Position != whatever)
            .Select(fitment => fitment.From).DefaultIfEmpty().Max();

    // What drives with these parts say of the axle, beside what it is known as. One whose day leaves open whether it was with these says nothing.
    private Driveline Driven(Driveline chain, DateOnly since, DateOnly until)
        => chain.DrivingAxle?.Ratio is { } known
            ? chain with
            {
                MeasuredAgain =
                [
                    .. chain.MeasuredAgain,
                    .. drives.Where(drive => drive.Day.LiesWithin(since, until))
                        .Select(drive => drive.AxleRatio(chain) is { } read && read.Understood(out var ratio) ? new Known(ratio, Source.Measured, Spoken($"road test {drive}")) : null)
                        .OfType<Known>()
                        .Select(ratio => new MeasuredAgain(chain.DrivingPosition, PartNumbers.Ratio, Units.One, known, ratio)),
                ],
            }
            : chain;

    // From engine to tyres, the rear set before the front one, as a chain is joined.
    private List<Fitment> AlongTheDriveline(Func<Fitment, bool> holds) => [.. Fitments.Where(holds).OrderBy(fitment => fitment.Position)];

    private List<NumberKnown> NumbersOf(List<Fitment> fitted) => [.. fitted.SelectMany(fitment => evidence.NumbersOf(fitment.Component, fitment.Position))];

    private Driveline Chain(List<Fitment> fitted, List<NumberKnown> known)
    {
        var chain = new Driveline { DrivesInFront = vehicle.DrivesInFront };
        foreach (var fitment in fitted) chain = evidence.Joined(chain, fitment.Component, fitment.Position);
        return numbers.Moved(chain with { MeasuredAgain = [.. known.SelectMany(number => number.MeasuredAgain)] });
    }
}
