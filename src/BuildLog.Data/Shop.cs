using BuildLog.Data.Changes;
using BuildLog.Data.Components;
using BuildLog.Data.Days;
using BuildLog.Data.Drivelines;
using BuildLog.Data.Files;
using BuildLog.Data.Fitments;
using BuildLog.Data.Goals;
using BuildLog.Data.Search;
using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data;

/// <summary>The shop's record: everything that is read from it or written to it goes through here.</summary>
/// <remarks>
/// What is handed out is a copy; <see cref="Change{T}"/> is the way to alter what is stored. Every change is stored whole or not at all.
/// Impossible entries throw <see cref="RefusedException"/>, trouble with the file throws <see cref="RecordException"/>; both speak in sentences.
/// </remarks>
public sealed partial class Shop : IDisposable
{
    private readonly ShopStore store;

    internal Shop(string path, PlainConnection presence, TimeProvider clock) => store = new(path, presence, clock);

    public string Path => store.Path;

    /// <summary>Why nothing can be stored, as far as it is known before anybody tries; null where nothing speaks against it.</summary>
    public string? NotWritable => store.NotWritable;

    /// <summary>Asked each time a change has waited in vain for another program that writes: whether it goes on waiting. Nobody there, it is refused after three seconds.</summary>
    public Func<OtherWriter, bool>? GoesOnWaiting
    {
        get => store.GoesOnWaiting;
        set => store.GoesOnWaiting = value;
    }

    /// <summary>All vehicles by name; quick, because the first screen waits for it.</summary>
    public IReadOnlyList<Vehicle> Vehicles() => store.Look(VehicleList.All);

    /// <summary>The vehicle of this name, or the only one whose name begins so; large and small letters are alike.</summary>
    /// <exception cref="RefusedException">None or several; the sentence lists them.</exception>
    public Vehicle FindVehicle(string beginning) => VehicleList.Find(Vehicles(), beginning);

    /// <summary>The vehicle of this number.</summary>
    /// <exception cref="RefusedException">It is gone.</exception>
    public Vehicle FindVehicle(long id) => store.Look(record => VehicleReader.Stored(record, id));

    /// <summary>All parts by kind and name, with where they are now.</summary>
    public IReadOnlyList<PartPlace> Parts() => store.Look(PartPlaces.Now);

    /// <summary>Of each part that was fitted once and lies on the shelf now, the fitment it came off last, which says why.</summary>
    public IReadOnlyList<Fitment> LastOfLooseParts() => store.Look(FitmentReader.LastOfLooseParts);

    /// <summary>What was fitted at the end of that day, computed with what is known today.</summary>
    public DrivelineOfDay DrivelineOn(Vehicle vehicle, DateOnly day) => store.Look(record => VehicleHistory.OnOneDay(record, vehicle, day));

    /// <summary>The same of a day as far as it is known; null where that leaves open whether it was before a swap.</summary>
    public DrivelineOfDay? DrivelineWhen(Vehicle vehicle, LooseDay day) => store.Look(record => VehicleHistory.OnOneDay(record, vehicle, day));

    /// <summary>What differs between two days, with the driveline of each.</summary>
    public DrivelineDifference Difference(Vehicle vehicle, DateOnly before, DateOnly after)
        => store.Look(record => DrivelineDifference.Between(VehicleHistory.Load(record, vehicle), before, after));

    /// <summary>The driveline with each of the parts there in turn, computed with what is known of them today; nothing is fitted.</summary>
    public IReadOnlyList<Driveline> Trying(Driveline driveline, Position position, IReadOnlyList<Component> components)
        => store.Look(record =>
        {
            var evidence = new PartEvidence(SessionList.Of(record, [.. components.Select(component => component.Id)]));
            return components.Select(component => evidence.Joined(driveline, component, position)).ToList();
        });

    /// <summary>Every swap from the first to the last, with the driveline before and after.</summary>
    public IReadOnlyList<Swap> History(Vehicle vehicle) => store.Look(record => VehicleHistory.Load(record, vehicle).Swaps());

    /// <summary>The fitments of a vehicle from the first to the last.</summary>
    public IReadOnlyList<Fitment> Fitments(Vehicle vehicle) => store.Look(record => FitmentReader.Of(record, VehicleReader.Stored(record, vehicle).Id));

    /// <summary>What the owner wants, understood.</summary>
    public OwnersGoals GoalsOf(Vehicle vehicle) => GoalList.Understood(Goals(vehicle));

    /// <summary>Everything the owner wants, as typed, in the order it was set.</summary>
    public IReadOnlyList<GoalEntry> Goals(Vehicle vehicle)
        => store.Look(record => GoalReader.Of(record, vehicle));

    /// <summary>Sessions on this vehicle or on any part that was ever fitted to it, the latest first.</summary>
    public IReadOnlyList<Session> Sessions(Vehicle vehicle) => store.Look(record => SessionList.Of(record, vehicle));

    /// <summary>Sessions on one part, the latest first.</summary>
    public IReadOnlyList<Session> Sessions(Component component) => store.Look(record => SessionList.Of(record, component));

    /// <summary>The changes of the whole record, or those that speak of a vehicle or of a part that was ever on it; the latest first.</summary>
    /// <param name="vehicle">Null for the whole record.</param>
    /// <param name="before">Only changes before this one, for the next page; null for the latest.</param>
    /// <param name="most">How many at most.</param>
    public IReadOnlyList<ChangeSet> Changes(Vehicle? vehicle = null, ChangeSet? before = null, int most = 50)
        => store.Read(db => ChangeList.Read(db, vehicle, before, most));

    /// <summary>What was taken out and has not come back, the latest first; <see cref="Undo(ChangeSet)"/> brings it back.</summary>
    public IReadOnlyList<ChangeSet> Removals(int most = 20) => store.Read(db => ChangeList.Removals(db, most));

    /// <summary>Takes the latest change back that stands, also after a restart, and says in words which it was.</summary>
    /// <exception cref="RefusedException">There is none, or a later change stands on it; nothing is changed.</exception>
    public string Undo() => store.Write(Undoing.Undo);

    /// <summary>Takes back what was undone last, as long as nothing new was entered since.</summary>
    /// <exception cref="RefusedException">There is nothing; nothing is changed.</exception>
    public string Redo() => store.Write(Undoing.Redo);

    /// <summary>Takes one change back, however long ago: so a deletion is brought back.</summary>
    /// <exception cref="RefusedException">A later change stands on it; nothing is changed.</exception>
    public string Undo(ChangeSet change) => store.Write(db => Undoing.Undo(db, change.Id));

    /// <summary>What holds all of these words, the last of them perhaps only begun; the best first.</summary>
    /// <remarks>Of very many matches only the latest 2,000 are weighed, so that it keeps up with typing.</remarks>
    public IReadOnlyList<Found> Find(string typed, int limit = 50) => store.Read(db => FindableList.Find(db, typed, limit));

    /// <summary>Stores something new and returns it.</summary>
    /// <exception cref="RefusedException">It cannot be; nothing is stored.</exception>
    public T Add<T>(T entry)
        where T : Entered
        => store.Enter(entry);

    /// <summary>Stores something new after it was filled in.</summary>
    /// <exception cref="RefusedException">It cannot be; nothing is stored.</exception>
    public T Add<T>(T entry, Action<T> edit)
        where T : Entered
    {
        edit(entry);
        return Add(entry);
    }

    /// <summary>Alters what is stored and returns it as it then is; <paramref name="asRead"/> stays as it was.</summary>
    /// <exception cref="RefusedException">It cannot be so; nothing is stored.</exception>
    /// <exception cref="RecordException">Somebody else changed it since it was read.</exception>
    public T Change<T>(T asRead, Action<T> edit)
        where T : Entered
        => store.Write(db => Entries.Change(db, asRead, edit));

    /// <summary>Takes out what was entered by mistake or is wanted no more, with the notes and papers about it.</summary>
    /// <exception cref="RefusedException">Something else in the record names it or hangs on it, or a part was ever fitted; nothing is taken out.</exception>
    public void Remove<T>(T entry)
        where T : Entered
        => store.Write(db => Removing.Remove(db, entry));

    /// <summary>The same with everything that speaks of nothing else, such as the hours of a job.</summary>
    /// <exception cref="RefusedException">It cannot go, such as a part that was ever fitted; nothing is taken out.</exception>
    public void Remove(Entered entry, bool withEverything) => store.Write(db => Removing.Remove(db, entry, withEverything));

    /// <summary>Fits a part; what sits there comes off the same day.</summary>
    /// <param name="component">The part, which must not be fitted anywhere that day; one that is not in the record yet is added with its fitting, or neither is.</param>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="position">Where on it.</param>
    /// <param name="day">When.</param>
    /// <param name="odometer">As typed, in the vehicle's unit if bare; empty if it was not read.</param>
    /// <param name="reason">Why.</param>
    /// <exception cref="RefusedException">The sentence names the other fitment; nothing is stored.</exception>
    public Fitment Fit(Component component, Vehicle vehicle, Position position, DateOnly day, string odometer = "", string reason = "")
        => store.Write(db => Fitting.Fit(db, component, vehicle, new(position, LooseDay.On(day), odometer, reason)));

    /// <summary>The same of a day that nobody knows to the day: it is reckoned from the first of its days that nothing else speaks against.</summary>
    /// <param name="component">The part.</param>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="position">Where on it.</param>
    /// <param name="day">When, such as <c>spring 2024</c>.</param>
    /// <param name="odometer">As typed; empty if it was not read.</param>
    /// <param name="reason">Why.</param>
    /// <exception cref="RefusedException">It cannot have been on any of these days; nothing is stored.</exception>
    public Fitment FitSometime(Component component, Vehicle vehicle, Position position, LooseDay day, string odometer = "", string reason = "")
        => store.Write(db => Fitting.Fit(db, component, vehicle, new(position, day, odometer, reason)));

    /// <summary>Takes a part off without putting another in its place.</summary>
    /// <exception cref="RefusedException">It is not fitted, or the date or odometer runs backwards; nothing is stored.</exception>
    public Fitment TakeOff(Component component, DateOnly day, string odometer = "", string reason = "")
        => TakeOffSometime(component, LooseDay.On(day), odometer, reason);

    /// <summary>The same of a day that nobody knows to the day.</summary>
    /// <exception cref="RefusedException">It cannot have come off on any of these days; nothing is stored.</exception>
    public Fitment TakeOffSometime(Component component, LooseDay day, string odometer = "", string reason = "")
        => store.Write(db => Fitting.TakeOff(db, component.Id, day, odometer, reason));

    /// <summary>Puts right what was entered wrongly of a fitment; where it took another's place, the end of that one follows.</summary>
    /// <exception cref="RefusedException">It cannot be so; the sentence names the other fitment; nothing is stored.</exception>
    /// <exception cref="RecordException">Somebody else changed it since it was read.</exception>
    public Fitment Correct(Fitment asRead, Action<FitmentFacts> edit) => store.Write(db => Correcting.Correct(db, asRead, edit));

    /// <summary>Strikes a fitment that never was; what it displaced gets its place back, unless it has been fitted elsewhere since.</summary>
    public void Remove(Fitment fitment) => store.Write(db => Correcting.Strike(db, fitment));

    /// <summary>Takes a vehicle out of the record with everything that hangs on it; its parts go back to the shelf.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="withEverything">Also if parts are fitted to it now, or goals, jobs, past fitments and the like would go along.</param>
    /// <exception cref="RefusedException">Something hangs on it; the sentence lists what. Nothing is changed.</exception>
    public void Remove(Vehicle vehicle, bool withEverything) => store.Write(db => Removing.Remove(db, vehicle, withEverything));

    /// <summary>Takes a part out of the record that was never fitted, with everything that hangs on it.</summary>
    /// <param name="component">The part.</param>
    /// <param name="withEverything">Also if sessions or the like would go along.</param>
    /// <exception cref="RefusedException">Something hangs on it; the sentence lists what. Or it was ever fitted. Nothing is changed.</exception>
    public void Remove(Component component, bool withEverything) => store.Write(db => Removing.Remove(db, component, withEverything));

    /// <summary>What would go with a vehicle or a part, in words such as <c>7 fitments and 2 goals</c>; empty if nothing would.</summary>
    public string WhatGoesWith(Kept record) => store.Read(db => Removing.WhatGoesWith(db, record));

    /// <summary>Closes the file for good; others may then move or delete it.</summary>
    public void Dispose() => store.Close();
}
