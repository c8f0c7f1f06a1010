using BuildLog.Gearing.Quantities;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data;

/// <summary>What entries say of each other has to be in the record: asked of the model, so that a new kind of entry is held to it as well.</summary>
internal static class References
{
    /// <summary>Everything it names is there; what is found is linked to it.</summary>
    /// <exception cref="RefusedException">The sentence says what is not.</exception>
    public static void Check(ShopContext db, Entered entry)
    {
        foreach (var reference in db.Model.FindEntityType(entry.GetType())!.GetForeignKeys())
        {
            if (reference.Properties[0].PropertyInfo!.GetValue(entry) is not long id) continue;

            var type = reference.PrincipalEntityType.ClrType;
            if (db.Find(type, id) is null) throw Missing(Matters.Of(type));
        }
    }

    /// <summary>The same without the object mapper, and nothing is linked.</summary>
    /// <exception cref="RefusedException">The sentence says what is not there.</exception>
    public static void CheckByHand(ShopContext db, Entered entry)
    {
        foreach (var reference in db.Model.FindEntityType(entry.GetType())!.GetForeignKeys())
        {
            if (reference.Properties[0].PropertyInfo!.GetValue(entry) is long id && db.Rows.Ask($"SELECT 1 FROM \"{reference.PrincipalEntityType.GetTableName()}\" WHERE \"Id\" = $0", id) is null)
                throw Missing(Matters.Of(reference.PrincipalEntityType.ClrType));
        }
    }

    /// <summary>A note or a paper is about something that is there.</summary>
    /// <exception cref="RefusedException">It is not.</exception>
    public static void Check(ShopContext db, Matter about, Guid uid)
    {
        if (!Holds(db, about, uid)) throw Missing(about);
    }

    /// <summary>Nothing else names it, so that it can be taken out.</summary>
    /// <exception cref="RefusedException">The sentence says what does.</exception>
    public static void CheckFree(ShopContext db, Entered entry)
    {
        foreach (var reference in db.Model.FindEntityType(entry.GetType())!.GetReferencingForeignKeys().Where(reference => reference.DeclaringEntityType.IsKept()))
        {
            if (Everything.Referring(db, reference, entry.Id).Any())
            {
                string what = Matters.Of(entry).InWords(), other = Matters.Of(reference.DeclaringEntityType.ClrType).InWords();
                throw new RefusedException("in-use", Spoken($"The {what} cannot be taken out while a {other} in the record names it; take that out first."), "");
            }
        }
    }

    private static bool Holds(ShopContext db, Matter about, Guid uid)
        => db.Rows.Ask($"SELECT 1 FROM \"{db.Model.FindEntityType(Matters.TypeOf(about))!.GetTableName()}\" WHERE \"Uid\" = $0", uid) is not null;

    private static RefusedException Missing(Matter matter) => new(matter.InWords().Text.Replace(' ', '-'), Spoken($"The {matter.InWords()} is not in the record; add it first."), "");
}
