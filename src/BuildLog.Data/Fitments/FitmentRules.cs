using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Fitments;

/// <summary>What holds for a fitment as it stands among all others, wherever in time it lies.</summary>
internal static class FitmentRules
{
    /// <summary>Also for one that came back.</summary>
    /// <exception cref="RefusedException">It cannot be; the sentence names the other fitment or reading.</exception>
    public static void Check(ShopContext db, Fitment fitment) => Check(db, fitment, new(fitment.Position, fitment.Start, fitment.End), makesRoom: null);

    /// <param name="db">The record.</param>
    /// <param name="fitment">With its odometer readings as they are to be.</param>
    /// <param name="stay">Where and when it is to be.</param>
    /// <param name="makesRoom">A fitment whose end follows this one's beginning.</param>
    /// <exception cref="RefusedException">It cannot be; the sentence names the other fitment or reading.</exception>
    public static void Check(ShopContext db, Fitment fitment, Stay stay, Fitment? makesRoom)
    {
        var ofVehicle = db.Fitments.Where(other => other.VehicleId == fitment.VehicleId && other.Id != fitment.Id).ToList();
        foreach (var other in db.Fitments.Where(other => other.ComponentId == fitment.ComponentId && other.Id != fitment.Id).AsEnumerable().Where(other => stay.Overlaps(other)))
        {
            throw new RefusedException(
                "fitted-elsewhere",
                Spoken($"The {fitment.Component} was fitted to {other.Vehicle} as {other.Position.InWords()} {other.TimeInWords}, so it cannot have been fitted to {fitment.Vehicle} {stay.InWords()}."), "");
        }

        foreach (var other in ofVehicle.Where(other => other != makesRoom && other.Position == stay.Position && stay.Overlaps(other)))
        {
            throw new RefusedException(
                "place-taken",
                Spoken($"The {other.Component} was the {stay.Position.InWords()} of {fitment.Vehicle} {other.TimeInWords}, so the {fitment.Component} cannot have been that {stay.InWords()}."), "");
        }

        // Its other end counts among the readings, what makes room does not: it ends with this one's beginning.
        var line = new OdometerLine(ofVehicle.Where(other => other != makesRoom), db.Set<OdometerChange>().Where(change => change.VehicleId == fitment.VehicleId));
        OdometerRunsForward.Check(line, fitment.Vehicle, fitment.FromOdometer, stay.Start);
        if (stay.End is not { } end) return;

        OdometerRunsForward.Check(line, fitment.Vehicle, fitment.ToOdometer, end);
        OdometerRunsForward.CheckBetween(line, fitment, stay.Start, end);
    }
}

/// <summary>A place on a vehicle from one moment to another; no end while it lasts.</summary>
internal sealed record Stay(Position Position, Moment Start, Moment? End)
{
    public bool Overlaps(Fitment other) => !(other.End <= Start) && !(End <= other.Start);

    /// <summary><c>from 3 May 2026 on</c>.</summary>
    public string InWords() => End is { } end ? Spoken($"from {Start.Day.InWords()} to {end.Day.InWords()}") : Spoken($"from {Start.Day.InWords()} on");
}
