using BuildLog.Data.Hunting;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Lists;

/// <summary>What was offered for the parts that are hunted.</summary>
internal sealed class OffersList : SpreadsheetList
{
    public override IReadOnlyList<string> Columns { get; } = ["wanted", "what", "place", "supplier", "claimed", "price", "contact", "seen", "expires", "notes"];

    public override IEnumerable<IReadOnlyList<string>> Rows(ShopContext db, Vehicle? vehicle)
        => db.Set<Offer>().Where(offer => vehicle == null || offer.Wanted.VehicleId == vehicle.Id).OrderBy(offer => offer.Seen).ThenBy(offer => offer.Id).AsEnumerable()
            .Select(offer => (IReadOnlyList<string>)[
                offer.Wanted.Title, offer.What, offer.Place, offer.Supplier?.Name ?? "", offer.Claimed, offer.Price?.Listed ?? "", offer.Contact, InWords(offer.SeenDay), InWords(offer.Expires), offer.Notes])
            .ToList();

    public override Entered Entry(NamedInRows named, IReadOnlyDictionary<string, string> row) => new Offer(named.WantedPart(row["wanted"]))
    {
        What = row["what"],
        Place = row["place"],
        SupplierId = named.Supplier(row["supplier"]),
        Claimed = row["claimed"],
        Price = named.Money(row["price"]),
        Contact = row["contact"],
        SeenDay = ReadLooseDay(row["seen"]) ?? throw new RefusedException("date", Spoken("the day it was seen is missing."), "2026-05-03"),
        Expires = ReadDay(row["expires"]),
        Notes = row["notes"],
    };
}
