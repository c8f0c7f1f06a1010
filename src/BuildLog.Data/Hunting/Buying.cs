using BuildLog.Data.Components;
using BuildLog.Data.Costs;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Hunting;

/// <summary>Ends a hunt with what was bought: the part, its cost and the end of the hunt are one change, so that one undo takes all of it back.</summary>
internal static class Buying
{
    /// <exception cref="RefusedException">Something of it cannot be, or the part is hunted no more; nothing is stored.</exception>
    public static Component? Buy(ShopContext db, WantedPart asRead, Purchase bought)
    {
        var wanted = Entries.Stored(db, asRead);
        if (wanted.State != WantedState.Hunting)
            throw new RefusedException("wanted", Spoken($"'{wanted.Title}' is {wanted.State.InWords()} already: hunt it again first, or enter what was bought as a part and a cost."), "");

        var part = bought.Part switch
        {
            null => null,
            { Id: 0 } fresh => Entries.Add(db, fresh),
            var known => Entries.Change(db, known, bought.Edit),
        };
        if (part is not null) (part.Price, part.Bought) = (bought.Paid ?? part.Price, bought.Day);

        // The cost names the part by its number, which it has only once it is stored.
        db.SaveChanges();
        if (bought.Paid is { } paid)
        {
            var vehicle = db.Vehicles.Find(wanted.VehicleId)!;
            Entries.Add(db, new Cost(vehicle) { What = bought.What, Day = bought.Day, Amount = paid, ComponentId = part?.Id, SupplierId = bought.SupplierId });
        }

        Entries.Change(db, wanted, edited => edited.State = WantedState.Found);
        db.Journal.Did(() => $"bought {bought.What} for {wanted.Title}");
        return part;
    }
}
