using BuildLog.Data.Files;
using BuildLog.Data.Goals;
using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data;

/// <summary>Adds, alters and takes out what people enter.</summary>
internal static class Entries
{
    public static T Add<T>(ShopContext db, T entry)
        where T : Entered
    {
        if (entry.Id != 0) throw new InvalidOperationException("It is stored already; change it instead.");
        CheckAll(db, entry);
        db.Add(entry);
        return entry;
    }

    public static T Change<T>(ShopContext db, T asRead, Action<T> edit)
        where T : Entered
    {
        var stored = Stored(db, asRead);
        edit(stored);
        CheckAll(db, stored);

        // Also where only its gears or readings changed: they are part of it.
        db.Entry(stored).Property(entry => entry.Version).IsModified = true;
        return stored;
    }

    public static void Remove<T>(ShopContext db, T asRead)
        where T : Entered
        => db.Remove(Stored(db, asRead));

    /// <summary>By itself, and among all others.</summary>
    /// <exception cref="RefusedException">It cannot be.</exception>
    public static void CheckAll(ShopContext db, Entered entry)
    {
        entry.Check();
        CheckAmongOthers(db, entry);
    }

    public static T Stored<T>(ShopContext db, T asRead)
        where T : Kept
    {
        var stored = db.Set<T>().SingleOrDefault(entry => entry.Id == asRead.Id);
        return stored?.Version == asRead.Version ? stored : throw RecordException.Since(stored is null ? "deleted" : "changed");
    }

    private static void CheckAmongOthers(ShopContext db, Entered entry)
    {
        switch (entry)
        {
            case Vehicle vehicle:
                if (db.Vehicles.Any(other => other.NameKey == vehicle.NameKey && other.Id != vehicle.Id))
                    throw new RefusedException("vehicle", $"The shop already has a vehicle called '{vehicle.Name}'; give this one another name.", $"{vehicle.Name} 2");
                break;
            case Session session:
                // Loading them also links them to the session that is handed back.
                if (!db.Components.Where(component => component.Id == session.ComponentId).ToList().Any(component => session.Measures(component)))
                    throw new RefusedException("component", $"The part that this {session.Method} measured is not in the record; add it first.", "");
                if (session.VehicleId is { } on) RequireVehicle(db, on);
                break;
            case GoalEntry goal:
                RequireVehicle(db, goal.VehicleId);
                GoalList.CheckAmongOthers(db, goal);
                break;
        }
    }

    private static void RequireVehicle(ShopContext db, long id)
    {
        if (db.Vehicles.Find(id) is null) throw new RefusedException("vehicle", "The vehicle is not in the record; add it first.", "");
    }
}
