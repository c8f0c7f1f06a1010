using BuildLog.Data.Attachments;
using BuildLog.Data.Components;
using BuildLog.Data.Costs;
using BuildLog.Data.Files;
using BuildLog.Data.Fitments;
using BuildLog.Data.Goals;
using BuildLog.Data.Jobs;
using BuildLog.Data.Notes;
using BuildLog.Data.Rows;
using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.Data.Workshops;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data;

/// <summary>Adds, alters and takes out what people enter.</summary>
internal static class Entries
{
    public static T Add<T>(ShopContext db, T entry)
        where T : Entered
    {
        CheckNew(entry);
        CheckAll(db, entry);
        db.Add(entry);
        return entry;
    }

    /// <summary>The same by hand, for what is entered by itself.</summary>
    public static T Enter<T>(ShopContext db, T entry)
        where T : Entered
    {
        CheckNew(entry);
        CheckAllByHand(db, entry);
        NewRecord.Link(db, entry);
        NewRecord.Insert(db, entry);
        return entry;
    }

    public static T Change<T>(ShopContext db, T asRead, Action<T> edit)
        where T : Entered
    {
        var stored = Stored(db, asRead);
        edit(stored);
        CheckAll(db, stored);

        // Also where only its gears or readings changed: they are part of it. What is saved as it was has not changed.
        if (db.ChangeTracker.HasChanges()) db.Entry(stored).Property(entry => entry.Version).IsModified = true;
        return stored;
    }

    public static void Remove<T>(ShopContext db, T asRead)
        where T : Entered
    {
        var stored = Stored(db, asRead);
        References.CheckFree(db, stored);
        Take(db, stored);
    }

    /// <summary>Takes it out with what was noted about it and filed with it.</summary>
    public static void Take(ShopContext db, Kept stored)
    {
        db.RemoveRange(db.Set<Note>().Where(note => note.AboutUid == stored.Uid));
        db.RemoveRange(db.Set<Attachment>().Where(attachment => attachment.AboutUid == stored.Uid));
        db.Remove(stored);
    }

    /// <summary>By itself, and among all others.</summary>
    /// <exception cref="RefusedException">It cannot be.</exception>
    public static void CheckAll(ShopContext db, Entered entry)
    {
        entry.Check();
        CheckAmongOthers(db, entry);
        References.Check(db, entry);
    }

    /// <summary>The same, with what it names looked for by hand and not linked.</summary>
    /// <exception cref="RefusedException">It cannot be.</exception>
    public static void CheckAllByHand(ShopContext db, Entered entry)
    {
        entry.Check();
        CheckAmongOthers(db, entry);
        References.CheckByHand(db, entry);
    }

    public static T Stored<T>(ShopContext db, T asRead)
        where T : Kept
    {
        var stored = (T?)Everything.Of(db, asRead.GetType()).SingleOrDefault(entry => entry.Id == asRead.Id);
        return stored?.Version == asRead.Version ? stored : throw RecordException.Since(stored is null ? Spoken("deleted") : Spoken("changed"));
    }

    private static void CheckAmongOthers(ShopContext db, Entered entry)
    {
        switch (entry)
        {
            case Vehicle vehicle:
                if (db.Vehicles.Any(other => other.NameKey == vehicle.NameKey && other.Id != vehicle.Id))
                    throw new RefusedException("vehicle", Spoken($"The shop already has a vehicle called '{vehicle.Name}'; give this one another name."), $"{vehicle.Name} 2");
                break;
            case Session session:
                if (!session.Measures(session.ComponentId is { } part ? (Component?)db.Record.Find(typeof(Component), part) : null))
                    throw new RefusedException("component", Spoken($"What this {session.Method} measured is not in the record; add it first."), "");
                break;
            case GoalEntry goal:
                GoalList.CheckAmongOthers(db, goal);
                break;
            case Job job:
                JobList.CheckAmongOthers(db, job);
                break;
            case Cost cost:
                CostList.CheckAmongOthers(db, cost);
                break;
            case OdometerChange change:
                References.Check(db, change);
                Fitting.Check(db, change);
                break;
            case Note note:
                References.Check(db, note.About, note.AboutUid);
                break;
            case Attachment attachment:
                References.Check(db, attachment.About, attachment.AboutUid);
                break;
            case Workshop workshop when db.Set<Workshop>().Any(other => other.Id != workshop.Id):
                throw new RefusedException("shop", Spoken("The record has its shop already; change that one."), "");
        }
    }

    private static void CheckNew(Entered entry)
    {
        if (entry.Id != 0) throw new InvalidOperationException("It is stored already; change it instead.");
    }
}
