using BuildLog.Data.Changes;
using BuildLog.Data.Components;
using BuildLog.Data.Fitments;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using Microsoft.EntityFrameworkCore.Metadata;

namespace BuildLog.Data;

/// <summary>Takes a vehicle or a part out of the record, with everything that speaks of nothing else.</summary>
internal static class Removing
{
    /// <summary>A vehicle and a part go with what hangs on them; anything else only where nothing does, unless that may go too.</summary>
    /// <exception cref="RefusedException">It cannot go; the sentence says why.</exception>
    public static void Remove(ShopContext db, Entered asRead, bool withEverything = false)
    {
        switch (asRead)
        {
            case Vehicle vehicle: Remove(db, vehicle, withEverything); break;
            case Component component: Remove(db, component, withEverything); break;
            default:
                if (withEverything) Take(db, Entries.Stored(db, asRead));
                else Entries.Remove(db, asRead);
                break;
        }
    }

    /// <exception cref="RefusedException">Parts are fitted or something else hangs on it, and nobody said that it may go; the sentence says what.</exception>
    public static void Remove(ShopContext db, Vehicle asRead, bool withEverything)
    {
        var vehicle = Entries.Stored(db, asRead);
        var fitted = db.Fitments.Where(fitment => fitment.VehicleId == vehicle.Id && fitment.To == null).ToList();
        if (fitted.Count > 0 && !withEverything)
        {
            throw new RefusedException(
                "vehicle",
                Spoken($"{vehicle} still has the {fitted[0].Component} fitted{(fitted.Count > 1 ? Spoken($" and {fitted.Count - 1} more") : "")}: take everything off first, or remove it with everything."), "");
        }

        if (InWords(Hanging(db, vehicle)) is { Length: > 0 } with && !withEverything)
        {
            throw new RefusedException(
                "vehicle", Spoken($"{vehicle} would take along {with}: remove it with everything if they may go, or keep it and say that it was handed over."), "");
        }

        Take(db, vehicle);
    }

    /// <exception cref="RefusedException">It was fitted somewhere: the history of that vehicle would have a hole. Or something hangs on it, and nobody said that it may go.</exception>
    public static void Remove(ShopContext db, Component asRead, bool withEverything)
    {
        var component = Entries.Stored(db, asRead);
        if (db.Fitments.Where(fitment => fitment.ComponentId == component.Id).AsEnumerable().OrderBy(fitment => fitment.Start).LastOrDefault() is { } last)
        {
            throw new RefusedException(
                "component",
                Spoken($"The {component} was fitted to {last.Vehicle} as {last.Position.InWords()} {last.TimeInWords}: strike that fitment first if it never was."), "");
        }

        if (InWords(Hanging(db, component)) is { Length: > 0 } with && !withEverything)
            throw new RefusedException("component", Spoken($"The {component} would take along {with}: remove it with everything if they may go."), "");

        Take(db, component);
    }

    /// <summary>What goes with it, such as <c>7 fitments, 2 goals and 1 turn count</c>; empty if nothing does.</summary>
    public static string WhatGoesWith(ShopContext db, Kept record) => InWords(Hanging(db, record));

    private static string InWords(IReadOnlyList<Kept> going)
    {
        var kinds = going.Select(hanging => hanging.KindInWords.Text).GroupBy(kind => kind).OrderByDescending(kind => kind.Count()).ThenBy(kind => kind.Key, StringComparer.Ordinal)
            .Select(kind => FormattableString.Invariant($"{kind.Count()} {(kind.Count() == 1 ? Spoken(kind.Key) : Several(kind.Key))}")).ToList();
        return kinds.Count < 2 ? string.Concat(kinds) : Spoken($"{string.Join(", ", kinds.SkipLast(1))} and {kinds[^1]}");
    }

    // The words behind a number above one; a language whose plurals follow no rule writes "7 × goal".
    private static string Several(string kind) => kind switch
    {
        "work" => Spoken("entries of work"),
        "work given out" => Spoken("pieces of work given out"),
        "piece of a donor" => Spoken("pieces of a donor"),
        _ => Spoken($"{Spoken(kind)}s"),
    };

    private static void Take(ShopContext db, Kept record)
    {
        var going = Hanging(db, record);
        db.Journal.Did(() => $"{ChangeList.Removed}{record.KindInWords} {record}{(InWords(going) is { Length: > 0 } with ? $" with {with}" : "")}");

        // What hangs deepest goes first; what can do without it stays and lets go.
        foreach (var hanging in going.Reverse()) Entries.Take(db, hanging);
        foreach (var (key, free) in Free(db, record, going)) db.Entry(free).Property(key.Properties[0].Name).CurrentValue = null;
        Entries.Take(db, record);
    }

    private static IReadOnlyList<Kept> Hanging(ShopContext db, Kept record)
    {
        var found = new List<Kept>();
        Gather(db, record, found);
        return found;
    }

    private static void Gather(ShopContext db, Kept record, List<Kept> found)
    {
        foreach (var key in Keys(db, record))
        {
            foreach (var hanging in Everything.Referring(db, key, record.Id).ToList().Where(hanging => (key.IsRequired || hanging.HangsOn(key.Properties[0].Name)) && !found.Contains(hanging)))
            {
                found.Add(hanging);
                Gather(db, hanging, found);
            }
        }
    }

    private static List<(IForeignKey Key, Kept Record)> Free(ShopContext db, Kept record, IReadOnlyList<Kept> going)
        => [
            .. going.Append(record)
                .SelectMany(gone => Keys(db, gone).Where(key => !key.IsRequired).SelectMany(key => Everything.Referring(db, key, gone.Id).AsEnumerable().Select(free => (key, free))))
                .Where(pair => !going.Contains(pair.free)),
        ];

    private static IEnumerable<IForeignKey> Keys(ShopContext db, Kept record)
        => db.Model.FindEntityType(record.GetType())!.GetReferencingForeignKeys().Where(key => key.DeclaringEntityType.IsKept());
}
