using BuildLog.Data.Costs;
using BuildLog.Data.Hunting;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Hunting;

/// <summary>Asks for an offer, and says while it is typed whether the part would do.</summary>
internal static class OfferForm
{
    /// <param name="bench">The vehicle it would go on.</param>
    /// <param name="wanted">The part that is hunted.</param>
    /// <param name="bare">The currency of a bare number: the shop's.</param>
    /// <param name="today">The day it is.</param>
    /// <param name="save">Stores an offer with the edit applied.</param>
    /// <param name="offer">What is known of it already, such as a count; of one in the record everything.</param>
    public static Form For(VehicleOnBench bench, WantedPart wanted, Currency bare, DateOnly today, Action<Action<Offer>> save, Offer offer) => new()
    {
        Title = $"Offer for {wanted.Title}",
        HelpPage = "Wanted",
        Entries =
        [
            new TextEntry("what", "What") { Initial = offer.What, Hint = "such as axle from a late pickup, cover off", Check = Checks.Filled("what", "What is offered?") },
            new TextEntry("claimed", "Claimed") { Initial = offer.Claimed, Hint = "ratio, teeth, gears or size; empty where nothing is said" },
            new TextEntry("price", "Price") { Initial = offer.Price?.ToString() ?? "", Hint = "such as 180 EUR; empty if not named", Check = Checks.IfTyped("price", text => MoneyText.ReadPrice(text, bare)) },
            new TextEntry("place", "Where") { Initial = offer.Place, Hint = "advert, yard and row, friend" },
            new TextEntry("contact", "Contact") { Initial = offer.Contact, Hint = "number, name, when to call" },
            new TextEntry("seen", "Seen") { Initial = offer.Id == 0 ? "today" : DayText.InWords(offer.Seen), Check = Checks.Needed("seen", text => DayText.ReadPast(text, today)) },
            new TextEntry("expires", "Runs out") { Initial = offer.Expires is { } last ? DayText.InWords(last) : "", Hint = "a date; empty if nobody said", Check = Checks.IfTyped("expires", text => DayText.Read(text, today)) },
            new TextEntry("notes", "Notes") { Initial = offer.Notes },
        ],
        Echo = values => [JudgedOffer.Of(bench, wanted, values["claimed"], Price(values, bare)).InWords],
        Save = values => Checks.Try(() => save(offer =>
        {
            (offer.What, offer.Claimed, offer.Place, offer.Contact, offer.Notes) = (values["what"], values["claimed"], values["place"], values["contact"], values["notes"]);
            offer.Price = Price(values, bare);
            offer.Seen = DayText.ReadPast(values["seen"], today).OrRefuse();
            offer.Expires = values.IsEmpty("expires") ? null : DayText.Read(values["expires"], today).OrRefuse();
        })),
    };

    private static Money? Price(FormValues values, Currency bare)
        => !values.IsEmpty("price") && MoneyText.Read(values["price"], bare).Understood(out var money) ? money : null;
}
