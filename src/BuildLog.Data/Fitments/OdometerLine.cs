using BuildLog.Data.Rows;

namespace BuildLog.Data.Fitments;

/// <summary>How far a vehicle has come, over odometers that were replaced or reset.</summary>
/// <remarks>
/// Between two changes the odometer runs on; at a change what it showed last meets what it shows first. Where nobody read the last, the highest
/// reading before stands for it, and the distance is at least so long.
/// </remarks>
internal sealed class OdometerLine
{
    private readonly IReadOnlyList<OdometerChange> changes;
    private readonly IReadOnlyList<Shown> readings;
    private readonly double[] offsets;

    public OdometerLine(IEnumerable<Fitment> ofVehicle, IEnumerable<OdometerChange> changes)
    {
        this.changes = [.. changes.OrderBy(change => change.When)];
        readings = [.. ofVehicle.SelectMany(Readings).Concat(this.changes.SelectMany(Readings)).OrderBy(shown => shown.When)];
        offsets = new double[this.changes.Count + 1];
        for (var k = 0; k < this.changes.Count; k++) offsets[k + 1] = offsets[k] + EndOf(k) - this.changes[k].First!.Metres;
    }

    public static OdometerLine Of(Snapshot record, long vehicleId) => new(FitmentReader.Of(record, vehicleId), OdometerReader.Of(record, vehicleId));

    /// <summary>The same with what is being changed just now.</summary>
    public static OdometerLine Of(ShopContext db, long vehicleId)
        => new(db.Fitments.Where(fitment => fitment.VehicleId == vehicleId), db.Set<OdometerChange>().Where(change => change.VehicleId == vehicleId));

    /// <summary>A reading, when it was taken, on which stretch between two changes, and at what.</summary>
    internal sealed record Shown(Moment When, int Stretch, OdometerReading Reading, string What);

    public IReadOnlyList<Shown> All => readings;

    /// <summary>How many changes lie before.</summary>
    public int StretchAt(Moment moment) => changes.Count(change => change.When <= moment);

    /// <summary>From when a part was fitted to when it came off, or to the last reading; null where one was not taken.</summary>
    public Distance? Under(Fitment fitment)
    {
        if (fitment.FromOdometer is not { } on) return null;

        var start = new Shown(fitment.Start, StretchAt(fitment.Start), on, "");
        if (fitment.End is not { } end) return Between(start, readings[^1]);
        return fitment.ToOdometer is { } off ? Between(start, new(end, StretchAt(end), off, "")) : null;
    }

    private Distance Between(Shown from, Shown to) => new(
        to.Reading.Metres + offsets[to.Stretch] - from.Reading.Metres - offsets[from.Stretch],
        IsAtLeast: changes.Skip(from.Stretch).Take(to.Stretch - from.Stretch).Any(change => change.Last is null));

    private double EndOf(int stretch)
        => changes[stretch].Last?.Metres
            ?? readings.Where(shown => shown.Stretch == stretch).Select(shown => shown.Reading.Metres).DefaultIfEmpty(changes[stretch].First!.Metres).Max();

    private IEnumerable<Shown> Readings(Fitment fitment)
    {
        if (fitment.FromOdometer is { } on) yield return new(fitment.Start, StretchAt(fitment.Start), on, Spoken($"{fitment.Component} fitted"));
        if (fitment is { End: { } end, ToOdometer: { } off }) yield return new(end, StretchAt(end), off, Spoken($"{fitment.Component} taken off"));
    }

    private IEnumerable<Shown> Readings(OdometerChange change)
    {
        var after = StretchAt(change.When);
        if (change.Last is { } last) yield return new(change.When, after - 1, last, Spoken($"last reading before it was {change.How.InWords()}"));
        yield return new(change.When, after, change.First!, Spoken($"odometer {change.How.InWords()}"));
    }
}

/// <summary>A way driven.</summary>
/// <param name="Metres">How long it is.</param>
/// <param name="IsAtLeast">Some of it was not read, so that it may be longer.</param>
public sealed record Distance(double Metres, bool IsAtLeast);
