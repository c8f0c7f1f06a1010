using BuildLog.Data.Donors;
using BuildLog.Data.Hunting;
using BuildLog.Data.Plans;
using BuildLog.Data.Suppliers;
using BuildLog.Data.Vehicles;
using BuildLog.Data.Workshops;
using Microsoft.EntityFrameworkCore.Metadata;

namespace BuildLog.Data.Moving;

/// <summary>What of the record goes along with one vehicle.</summary>
/// <remarks>
/// Everything that names the vehicle, or a part that was on it, and everything those entries name. What cannot be told without another vehicle
/// stays behind; where an entry merely mentions one, the mention is left out.
/// </remarks>
internal sealed class VehicleShare
{
    private readonly NamedEntries names;
    private readonly EntryPlace vehicle;
    private readonly bool changesHands;
    private readonly HashSet<EntryPlace> taken = [];
    private readonly Dictionary<EntryPlace, bool> comes = [];
    private readonly Queue<EntryPlace> fresh = [];

    private VehicleShare(NamedEntries names, EntryPlace vehicle, bool changesHands) => (this.names, this.vehicle, this.changesHands) = (names, vehicle, changesHands);

    /// <param name="db">The record.</param>
    /// <param name="record">Its entries.</param>
    /// <param name="vehicle">Whose share.</param>
    /// <param name="changesHands">It leaves the shop: whose shop it was, what it hunted for and was offered, and what it planned stay there.</param>
    public static HashSet<EntryPlace> Of(ShopContext db, StoredEntries record, Vehicle vehicle, bool changesHands)
    {
        var root = db.Model.FindEntityType(typeof(Vehicle))!;
        var share = new VehicleShare(new(db, record), new(root, record.IdOf(root, vehicle.Uid)!.Value), changesHands);
        share.Take(share.vehicle);
        foreach (var shop in record.Kinds.Where(kind => Is<Workshop>(kind.Root)).SelectMany(kind => record.Of(kind).Select(row => new EntryPlace(kind.Root, (long)row["Id"]!)))) share.TakeIfItCan(shop);
        share.TakeWhatHangsOnIt();
        return share.taken;
    }

    private void TakeWhatHangsOnIt()
    {
        while (fresh.TryDequeue(out var entry))
        {
            foreach (var (named, _) in names.By(entry)) TakeIfItCan(named);
            if (!Leads(entry)) continue;
            foreach (var naming in names.Naming(entry)) TakeIfItCan(naming);
        }
    }

    private void TakeIfItCan(EntryPlace entry)
    {
        if (!taken.Contains(entry) && CanCome(entry)) Take(entry);
    }

    private void Take(EntryPlace entry)
    {
        taken.Add(entry);
        fresh.Enqueue(entry);
    }

    private bool CanCome(EntryPlace entry)
    {
        if (!comes.TryGetValue(entry, out var can))
        {
            comes[entry] = can = entry == vehicle
                || (!Is<Vehicle>(entry) && !(changesHands && IsTheShopsOwn(entry)) && names.By(entry).Where(named => named.Needed).All(named => CanCome(named.Named)));
        }

        return can;
    }

    private static bool IsTheShopsOwn(EntryPlace entry) => Is<Workshop>(entry) || Is<WantedPart>(entry) || Is<Offer>(entry) || Is<Plan>(entry);

    // The whole shop deals with these: what else hangs on them is no matter of this vehicle.
    private static bool Leads(EntryPlace entry) => !(Is<Supplier>(entry) || Is<Donor>(entry) || Is<Workshop>(entry));

    private static bool Is<T>(EntryPlace entry) => Is<T>(entry.Root);

    private static bool Is<T>(IEntityType root) => root.ClrType == typeof(T);
}
