using BuildLog.Data.Donors;
using BuildLog.Data.Hunting;
using BuildLog.Data.Plans;
using BuildLog.Data.Suppliers;
using BuildLog.Data.Vehicles;
using BuildLog.Data.Workshops;

namespace BuildLog.Data.Moving;

/// <summary>What of the record goes along with one vehicle.</summary>
/// <remarks>
/// Everything that names the vehicle, or a part that was on it, and everything those entries name. What cannot be told without another vehicle
/// stays behind; where an entry merely mentions one, the mention is left out.
/// </remarks>
internal sealed class VehicleShare
{
    private readonly RecordEntries record;
    private readonly Vehicle vehicle;
    private readonly bool changesHands;
    private readonly HashSet<Kept> taken = [];

    private VehicleShare(RecordEntries record, Vehicle vehicle, bool changesHands) => (this.record, this.vehicle, this.changesHands) = (record, vehicle, changesHands);

    /// <param name="record">All there is.</param>
    /// <param name="vehicle">Whose share.</param>
    /// <param name="changesHands">It leaves the shop: whose shop it was, what it hunted for and was offered, and what it planned stay there.</param>
    public static HashSet<Kept> Of(RecordEntries record, Vehicle vehicle, bool changesHands)
    {
        var share = new VehicleShare(record, vehicle, changesHands);
        share.Take(vehicle);
        foreach (var shop in record.All.OfType<Workshop>().Where(share.CanCome)) share.Take(shop);
        while (share.TakeWhatNamesIt()) { }
        return share.taken;
    }

    private bool TakeWhatNamesIt()
    {
        var coming = record.All.Where(entry => !taken.Contains(entry) && record.NamedBy(entry).Any(named => taken.Contains(named.Named) && Leads(named.Named)) && CanCome(entry)).ToList();
        coming.ForEach(Take);
        return coming.Count > 0;
    }

    private void Take(Kept entry)
    {
        if (!taken.Add(entry)) return;
        foreach (var (named, _) in record.NamedBy(entry).Where(named => CanCome(named.Named))) Take(named);
    }

    private bool CanCome(Kept entry)
        => entry == vehicle || entry is not Vehicle && !(changesHands && IsTheShopsOwn(entry)) && record.NamedBy(entry).Where(named => named.Needed).All(named => CanCome(named.Named));

    private static bool IsTheShopsOwn(Kept entry) => entry is Workshop or WantedPart or Offer or Plan;

    // The whole shop deals with these: what else hangs on them is no matter of this vehicle.
    private static bool Leads(Kept entry) => entry is not (Supplier or Donor or Workshop);
}
