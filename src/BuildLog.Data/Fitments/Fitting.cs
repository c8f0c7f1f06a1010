using BuildLog.Data.Components;
using BuildLog.Data.Days;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Fitments;

/// <summary>Fits parts and takes them off, as far as the record's past and future allow.</summary>
internal static class Fitting
{
    private const int FirstYear = 1900;
    private const int LastYear = 2200;

    /// <summary>What is asked for.</summary>
    internal sealed record Wish(Position Position, LooseDay Day, string Odometer, string Reason)
    {
        /// <summary>Null where the day is known.</summary>
        public LooseDay? AsTyped => Day.IsExact ? null : Day;
    }

    /// <remarks>A part that is new is stored together with its fitting, or neither is.</remarks>
    public static Fitment Fit(ShopContext db, Component part, Vehicle on, Wish wish)
    {
        var component = part.Id == 0 ? Entries.Add(db, part) : Stored(db, part.Id);
        var vehicle = db.Vehicles.Find(on.Id) ?? throw new RefusedException("vehicle", Spoken("The vehicle is not in the record; add it first."), "");
        if (!component.Positions.Contains(wish.Position))
            throw new RefusedException("position", Spoken($"The {component} is no {wish.Position.InWords()}: it is fitted as {component.Positions[0].InWords()}."), component.Positions[0].InWords());

        var ofComponent = db.Fitments.Where(fitment => fitment.ComponentId == component.Id).ToList();
        var ofVehicle = db.Fitments.Where(fitment => fitment.VehicleId == vehicle.Id).ToList();
        var odometer = OdometerReading.Read(wish.Odometer, vehicle.OdometerUnit);
        var line = OdometerLine.Of(db, vehicle.Id);
        var (moment, old) = (default(Moment), default(Fitment));
        Reckoning.First(wish.Day, Reckoning.DaysOf(ofComponent.Concat(ofVehicle)), day =>
        {
            moment = Next(db, day);
            OnePlaceAtATime.Check(ofComponent, component, vehicle, wish.Position, moment);
            old = OnePartAtATime.Occupant(ofVehicle, component, vehicle, wish.Position, moment);
            OdometerRunsForward.Check(line, vehicle, odometer, moment);
        });

        if (old is not null) End(old, moment, wish.AsTyped, odometer, wish.Reason);
        db.Journal.Did(() => $"fitted {component} to {vehicle}");
        return db.Add(new Fitment
        {
            Component = component,
            Vehicle = vehicle,
            Position = wish.Position,
            From = moment.Day,
            FromOrder = moment.Order,
            FromAsTyped = wish.AsTyped,
            FromOdometer = odometer,
            Reason = wish.Reason.Trim(),
        }).Entity;
    }

    public static Fitment TakeOff(ShopContext db, long componentId, LooseDay day, string odometerText, string reason)
    {
        var component = Stored(db, componentId);
        var fitment = db.Fitments.SingleOrDefault(f => f.ComponentId == componentId && f.To == null)
            ?? throw new RefusedException("component", Spoken($"The {component} is not fitted to anything, so it cannot come off."), "");
        var odometer = OdometerReading.Read(odometerText, fitment.Vehicle.OdometerUnit);
        var line = OdometerLine.Of(db, fitment.VehicleId);
        var moment = default(Moment);
        Reckoning.First(day, Reckoning.DaysOf(db.Fitments.Where(f => f.VehicleId == fitment.VehicleId)), candidate =>
        {
            moment = Next(db, candidate);
            if (moment < fitment.Start)
                throw new RefusedException(
                    "date",
                    Spoken($"The {component} was fitted to {fitment.Vehicle} on {fitment.From.InWords()}, so it cannot come off on {candidate.InWords()}, before that."),
                    FormattableString.Invariant($"{fitment.From:O}"));
            OdometerRunsForward.Check(line, fitment.Vehicle, odometer, moment);
        });
        End(fitment, moment, day.IsExact ? null : day, odometer, reason);
        db.Journal.Did(() => $"took {component} off {fitment.Vehicle}");
        return fitment;
    }

    /// <summary>The odometer of a vehicle starts anew; the readings on each side still have to run forward.</summary>
    /// <exception cref="RefusedException">They would not.</exception>
    public static void Check(ShopContext db, OdometerChange change)
    {
        if (change.Id == 0) change.Order = Next(db, change.Day).Order;
        var vehicle = db.Vehicles.Find(change.VehicleId)!;
        var others = db.Set<OdometerChange>().Where(other => other.VehicleId == change.VehicleId && other.Id != change.Id).AsEnumerable();
        OdometerRunsForward.Check(new OdometerLine(db.Fitments.Where(fitment => fitment.VehicleId == change.VehicleId), others.Append(change)), vehicle);
    }

    private static void End(Fitment fitment, Moment moment, LooseDay? asTyped, OdometerReading? odometer, string reason)
    {
        (fitment.To, fitment.ToOrder, fitment.ToAsTyped) = (moment.Day, moment.Order, asTyped);
        (fitment.ToOdometer, fitment.ReasonOff) = (odometer, reason.Trim());
    }

    private static Component Stored(ShopContext db, long id)
        => db.Components.Find(id) ?? throw new RefusedException("component", Spoken("The part is not in the record; add it first."), "");

    // One order for the whole shop: a part may leave one vehicle and join another on the same day.
    public static Moment Next(ShopContext db, DateOnly day)
    {
        if (day.Year is < FirstYear or > LastYear)
            throw new RefusedException("date", Spoken($"{day:O} is no day of this shop: the year lies between {FirstYear} and {LastYear}."), "2026-05-03");

        var on = db.Fitments.Where(fitment => fitment.From == day).Max(fitment => (int?)fitment.FromOrder) ?? 0;
        var off = db.Fitments.Where(fitment => fitment.To == day).Max(fitment => fitment.ToOrder) ?? 0;
        var odometer = db.Set<OdometerChange>().Where(change => change.Day == day).Max(change => (int?)change.Order) ?? 0;
        return new(day, Math.Max(Math.Max(on, off), odometer) + 1);
    }
}
