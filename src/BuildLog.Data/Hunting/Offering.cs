using BuildLog.Data.Components;
using BuildLog.Data.Sessions;
using BuildLog.Data.Suppliers;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Hunting;

/// <summary>Enters what is found for a hunt: an offer, its supplier where nobody knew him, and what was counted on the part are one change.</summary>
internal static class Offering
{
    /// <exception cref="RefusedException">Something of it cannot be; nothing is stored.</exception>
    public static Offer Enter(ShopContext db, Offer offer, string supplier, YardFind? counted)
    {
        if (counted is not null) BringBack(db, counted);
        offer.SupplierId = Supplier(db, supplier)?.Id;
        Entries.Add(db, offer);
        if (counted is not null) db.Journal.Did(() => $"counted in the yard and offered for {counted.Wanted.Title}: {offer.What}");
        return offer;
    }

    /// <exception cref="RefusedException">It cannot be so; nothing is stored.</exception>
    public static Offer Change(ShopContext db, Offer asRead, string supplier, Action<Offer> edit, YardFind? counted)
    {
        if (counted is not null) BringBack(db, counted);
        var from = Supplier(db, supplier);
        return Entries.Change(db, asRead, offer =>
        {
            edit(offer);
            offer.SupplierId = from?.Id;
        });
    }

    /// <summary>The part, where it is new, and its sessions, without an offer.</summary>
    /// <exception cref="RefusedException">Something of it cannot be; nothing is stored.</exception>
    public static IReadOnlyList<Session> BringBack(ShopContext db, YardFind found)
    {
        if (found.Part.Id == 0)
        {
            YardPart.Put(found.Wanted.Title, found.Part);
            Entries.Add(db, found.Part);
        }

        // A session names the part by its number, which it has only once it is stored.
        db.SaveChanges();
        db.Journal.Did(() => $"counted in the yard for {found.Wanted.Title}");
        return [.. found.Sessions.Select(session => Entries.Add(db, session(found.Part)))];
    }

    /// <summary>Alters a hunt; what was counted for it follows its name.</summary>
    /// <exception cref="RefusedException">It cannot be so; nothing is stored.</exception>
    public static WantedPart Change(ShopContext db, WantedPart asRead, Action<WantedPart> edit)
    {
        var changed = Entries.Change(db, asRead, edit);
        if (changed.Title == asRead.Title) return changed;

        foreach (var part in db.Set<Component>().AsEnumerable().Where(part => YardPart.IsOf(asRead.Title, part)).ToList())
            Entries.Change(db, part, counted => YardPart.Put(changed.Title, counted));
        return changed;
    }

    private static Supplier? Supplier(ShopContext db, string name)
    {
        if (string.IsNullOrWhiteSpace(name)) return null;
        if (db.Set<Supplier>().AsEnumerable().FirstOrDefault(each => each.IsCalled(name)) is { } known) return known;

        var added = Entries.Add(db, new Supplier { Name = name });
        db.SaveChanges();
        return added;
    }
}
