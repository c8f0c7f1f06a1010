using BuildLog.Data.Components;
using BuildLog.Data.Donors;
using BuildLog.Data.Hunting;
using BuildLog.Data.Plans;
using BuildLog.Data.Sessions;
using BuildLog.Data.Suppliers;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data;

/// <summary>Where parts come from.</summary>
public sealed partial class Shop
{
    /// <summary>What is hunted for a vehicle, then what was found and what was dropped; each by its deadline.</summary>
    public IReadOnlyList<WantedPart> Wanted(Vehicle vehicle) => store.Read(db => db.Set<WantedPart>().Where(wanted => wanted.VehicleId == vehicle.Id).AsEnumerable()
        .OrderBy(wanted => wanted.State).ThenBy(wanted => wanted.Deadline ?? DateOnly.MaxValue).ThenBy(wanted => wanted.Id).ToList());

    /// <summary>What a vehicle still hunts and needs by a day, the first of them first.</summary>
    public IReadOnlyList<WantedPart> NeededByADay(Vehicle vehicle) => store.Look(record => WantedReader.Due(record, vehicle));

    /// <summary>Hunts a part for a plan, beside whose other parts it will be judged; a plan that is not in the record yet is kept with it in one change.</summary>
    /// <exception cref="RefusedException">Something of it cannot be; nothing is stored.</exception>
    public WantedPart Hunt(WantedPart wanted, Plan plan) => Whole(db => PlannedHunt.Enter(db, wanted, plan), wanted, plan.Id == 0 ? plan : null);

    /// <summary>Ends a hunt with what was bought: the part joins the record with its cost, in one change.</summary>
    /// <returns>The part as it is stored; null where none was bought.</returns>
    /// <exception cref="RefusedException">It cannot be; nothing is stored.</exception>
    public Component? Buy(WantedPart wanted, Purchase bought)
        => Whole(db => Buying.Buy(db, wanted, bought), bought.Part is { Id: 0 } fresh ? fresh : null);

    /// <summary>Enters an offer; a supplier whom nobody knew, and what was counted on the part, are entered with it in one change.</summary>
    /// <param name="offer">The offer, filled in.</param>
    /// <param name="supplier">Who sells it; empty for nobody.</param>
    /// <param name="counted">What was counted on it in the yard; null for nothing.</param>
    /// <exception cref="RefusedException">Something of it cannot be; nothing is stored.</exception>
    public Offer Enter(Offer offer, string supplier = "", YardFind? counted = null)
        => Whole(db => Offering.Enter(db, offer, supplier, counted), offer, counted?.Part);

    /// <summary>Alters an offer; its supplier and what was counted on it since are entered with it in one change.</summary>
    /// <exception cref="RefusedException">It cannot be so; nothing is stored.</exception>
    public Offer Change(Offer asRead, string supplier, Action<Offer> edit, YardFind? counted = null)
        => Whole(db => Offering.Change(db, asRead, supplier, edit, counted), counted?.Part is { Id: 0 } fresh ? fresh : null);

    /// <summary>Keeps what was counted in the yard for a hunt: the part that was looked at, and the sessions on it, in one change.</summary>
    /// <exception cref="RefusedException">It cannot be; nothing is stored.</exception>
    public IReadOnlyList<Session> BringBack(YardFind found) => Whole(db => Offering.BringBack(db, found), found.Part);

    /// <summary>Alters a hunt; what was counted for it in the yard follows its name.</summary>
    /// <exception cref="RefusedException">It cannot be so; nothing is stored.</exception>
    public WantedPart Change(WantedPart asRead, Action<WantedPart> edit) => store.Write(db => Offering.Change(db, asRead, edit));

    /// <summary>What was offered for a wanted part, the latest first.</summary>
    public IReadOnlyList<Offer> Offers(WantedPart wanted)
        => store.Read(db => db.Set<Offer>().Where(offer => offer.WantedPartId == wanted.Id).OrderByDescending(offer => offer.Seen).ThenByDescending(offer => offer.Id).ToList());

    /// <summary>Everything offered for what a vehicle still hunts, the latest first.</summary>
    public IReadOnlyList<Offer> Offers(Vehicle vehicle) => store.Read(db => db.Set<Offer>()
        .Where(offer => offer.Wanted.VehicleId == vehicle.Id && offer.Wanted.State == WantedState.Hunting)
        .OrderByDescending(offer => offer.Seen).ThenByDescending(offer => offer.Id).ToList());

    /// <summary>Everything that can be had on a day of what the shop still hunts, for whichever vehicle, the latest first.</summary>
    public IReadOnlyList<Offer> OffersOn(DateOnly day) => store.Read(db => db.Set<Offer>()
        .Where(offer => offer.Wanted.State == WantedState.Hunting).AsEnumerable()
        .Where(offer => offer.Expires is not { } last || last >= day)
        .OrderByDescending(offer => offer.Seen).ThenByDescending(offer => offer.Id).ToList());

    /// <summary>All suppliers by name.</summary>
    public IReadOnlyList<Supplier> Suppliers()
        => store.Read(db => db.Set<Supplier>().AsEnumerable().OrderBy(supplier => supplier.Name, StringComparer.InvariantCultureIgnoreCase).ThenBy(supplier => supplier.Id).ToList());

    /// <summary>The supplier of this name, large or small letters; one who is new is entered.</summary>
    /// <exception cref="RefusedException">It is no name.</exception>
    public Supplier SupplierCalled(string name)
        => Suppliers().FirstOrDefault(supplier => supplier.IsCalled(name)) ?? Add(new Supplier { Name = name });

    // What is refused is not stored, whatever numbers the new entries in it had by then.
    private T Whole<T>(Func<ShopContext, T> write, params ReadOnlySpan<Entered?> fresh)
    {
        try
        {
            return store.Write(write);
        }
        catch
        {
            foreach (var entry in fresh) entry?.Id = 0;
            throw;
        }
    }

    /// <summary>All donors by name.</summary>
    public IReadOnlyList<Donor> Donors()
        => store.Read(db => db.Set<Donor>().AsEnumerable().OrderBy(donor => donor.Name, StringComparer.InvariantCultureIgnoreCase).ThenBy(donor => donor.Id).ToList());

    /// <summary>What is on a donor, or was: what remains first.</summary>
    public IReadOnlyList<DonorPiece> Pieces(Donor donor)
        => store.Read(db => db.Set<DonorPiece>().Where(piece => piece.DonorId == donor.Id).AsEnumerable().OrderBy(piece => piece.State).ThenBy(piece => piece.Id).ToList());
}
