using BuildLog.Data.Days;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Fitments;

/// <summary>Puts right what was entered wrongly of a fitment, or strikes it.</summary>
/// <remarks>
/// A swap is two fitments that meet: the one that makes room ends when the other begins. What is corrected of the second goes for the end of the
/// first too; where the second is struck or was in another place, the first gets its place back for as long as the second had it.
/// </remarks>
internal static class Correcting
{
    public static Fitment Correct(ShopContext db, Fitment asRead, Action<FitmentFacts> edit)
    {
        var fitment = Entries.Stored(db, asRead);
        var facts = new FitmentFacts(fitment);
        edit(facts);
        CheckPlace(fitment, facts);

        var (before, after) = Neighbours(db, fitment);
        var end = End(db, fitment, facts, after);
        var start = facts.From == fitment.From ? fitment.Start : Fitting.Next(db, facts.From);
        if (end < start) throw new RefusedException("date", Spoken($"The {fitment.Component} cannot come off on {facts.To!.Value.InWords()}, before it was fitted on {facts.From.InWords()}."), "");

        var stay = new Stay(facts.Position, start, end);
        var moves = facts.Position != fitment.Position;
        if (moves && after is not null) throw Meets(fitment, after, Spoken("place"));
        if (!moves && before is not null && start <= before.Start)
            throw new RefusedException(
                "date",
                Spoken($"The {before.Component}, which made room, was fitted on {before.From.InWords()}; fit the {fitment.Component} on that day or later."),
                FormattableString.Invariant($"{before.From:O}"));

        db.Journal.Did(() => $"corrected {fitment.Component} on {fitment.Vehicle}");
        if (!moves && before is not null && start < fitment.Start)
        {
            // One after the other, so that the two never share the place; the later one may be longer only when the earlier one is shorter.
            Follow(before, fitment, start, facts);
            db.SaveChanges();
            Put(db, fitment, facts, stay, before);
            FitmentRules.Check(db, before);
            return fitment;
        }

        var old = new Off(fitment);
        var (odometer, reason) = (fitment.FromOdometer, fitment.Reason);
        Put(db, fitment, facts, stay, before);
        db.SaveChanges();
        if (before is null) return fitment;

        if (moves) GiveBack(db, before, old);
        else Follow(before, odometer, reason, fitment);
        FitmentRules.Check(db, before);
        return fitment;
    }

    public static void Strike(ShopContext db, Fitment asRead)
    {
        var fitment = Entries.Stored(db, asRead);
        var (before, _) = Neighbours(db, fitment);
        var off = new Off(fitment);
        db.Journal.Did(() => $"struck the fitting of {fitment.Component} to {fitment.Vehicle}");
        db.Remove(fitment);
        db.SaveChanges();
        if (before is not null) GiveBack(db, before, off);
    }

    private static void CheckPlace(Fitment fitment, FitmentFacts facts)
    {
        if (!fitment.Component.Positions.Contains(facts.Position))
            throw new RefusedException(
                "position",
                Spoken($"The {fitment.Component} is no {facts.Position.InWords()}: it is fitted as {fitment.Component.Positions[0].InWords()}."),
                fitment.Component.Positions[0].InWords());
        if (facts.To < facts.From)
            throw new RefusedException("date", Spoken($"The {fitment.Component} cannot come off on {facts.To.Value.InWords()}, before it was fitted on {facts.From.InWords()}."), "");
        if (facts.To is null && facts.OdometerOff.Length + facts.ReasonOff.Length > 0 && fitment.To is null)
            throw new RefusedException("date", Spoken($"The {fitment.Component} has not come off yet, so nothing can be noted of that; take it off instead."), "");
    }

    private static (Fitment? Before, Fitment? After) Neighbours(ShopContext db, Fitment fitment)
    {
        var there = db.Fitments.Where(other => other.VehicleId == fitment.VehicleId && other.Position == fitment.Position && other.Id != fitment.Id).ToList();
        return (there.Find(other => other.End == fitment.Start), there.Find(other => other.Start == fitment.End));
    }

    private static Moment? End(ShopContext db, Fitment fitment, FitmentFacts facts, Fitment? after)
    {
        if (facts.To == fitment.To && facts.ToAsTyped == fitment.ToAsTyped) return fitment.End;
        if (after is not null) throw Meets(fitment, after, Spoken("day"));
        return facts.To == fitment.To ? fitment.End : facts.To is { } day ? Fitting.Next(db, day) : null;
    }

    private static RefusedException Meets(Fitment fitment, Fitment after, string what)
        => new("date", Spoken($"The {fitment.Component} made room for the {after.Component} on {after.From.InWords()}: correct the {what} there first."), "");

    private static void Put(ShopContext db, Fitment fitment, FitmentFacts facts, Stay stay, Fitment? before)
    {
        var unit = fitment.Vehicle.OdometerUnit;
        fitment.FromOdometer = Reread(fitment.FromOdometer, facts.Odometer, unit);
        fitment.ToOdometer = stay.End is null ? null : Reread(fitment.ToOdometer, facts.OdometerOff, unit);
        FitmentRules.Check(db, fitment, stay, before);
        (fitment.Position, fitment.From, fitment.FromOrder, fitment.Reason) = (stay.Position, stay.Start.Day, stay.Start.Order, facts.Reason.Trim());
        (fitment.FromAsTyped, fitment.ToAsTyped) = (facts.FromAsTyped, facts.ToAsTyped);
        (fitment.To, fitment.ToOrder, fitment.ReasonOff) = (stay.End?.Day, stay.End?.Order, stay.End is null ? "" : facts.ReasonOff.Trim());
    }

    // What was not touched stays as it was typed.
    private static OdometerReading? Reread(OdometerReading? was, string text, Vehicles.OdometerUnit unit)
        => was?.InWords == text ? was : OdometerReading.Read(text, unit);

    private static void Follow(Fitment before, Fitment fitment, Moment start, FitmentFacts facts)
    {
        (before.To, before.ToOrder, before.ToAsTyped) = (start.Day, start.Order, facts.FromAsTyped);
        if (before.ToOdometer == fitment.FromOdometer) before.ToOdometer = Reread(fitment.FromOdometer, facts.Odometer, fitment.Vehicle.OdometerUnit);
        if (before.ReasonOff == fitment.Reason) before.ReasonOff = facts.Reason.Trim();
    }

    private static void Follow(Fitment before, OdometerReading? oldOdometer, string oldReason, Fitment fitment)
    {
        (before.To, before.ToOrder, before.ToAsTyped) = (fitment.From, fitment.FromOrder, fitment.FromAsTyped);
        if (before.ToOdometer == oldOdometer) before.ToOdometer = fitment.FromOdometer;
        if (before.ReasonOff == oldReason) before.ReasonOff = fitment.Reason;
    }

    // It stays off where it has been fitted elsewhere in that time: then it did come off.
    private static void GiveBack(ShopContext db, Fitment before, Off off)
    {
        var stay = new Stay(before.Position, before.Start, off.When);
        if (db.Fitments.Where(other => other.ComponentId == before.ComponentId && other.Id != before.Id).AsEnumerable().Any(stay.Overlaps)) return;
        (before.To, before.ToOrder, before.ToAsTyped, before.ToOdometer, before.ReasonOff) = (off.When?.Day, off.When?.Order, off.AsTyped, off.Odometer, off.Reason);
    }

    /// <summary>How a fitment ended.</summary>
    private sealed record Off(Moment? When, LooseDay? AsTyped, OdometerReading? Odometer, string Reason)
    {
        public Off(Fitment fitment) : this(fitment.End, fitment.ToAsTyped, fitment.ToOdometer, fitment.ReasonOff) { }
    }
}
