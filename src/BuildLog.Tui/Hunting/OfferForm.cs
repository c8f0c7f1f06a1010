using BuildLog.Data;
using BuildLog.Data.Costs;
using BuildLog.Data.Hunting;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Plans;

namespace BuildLog.Tui.Hunting;

/// <summary>Asks for an offer, and says while it is typed whether the part would do.</summary>
internal static class OfferForm
{
    /// <param name="hunt">The part that is hunted, and what it would go on.</param>
    /// <param name="shop">The record: its currency is that of a bare number, and it knows the suppliers.</param>
    /// <param name="today">The day it is.</param>
    /// <param name="save">Stores an offer with the edit applied, and who sells it; empty for nobody.</param>
    /// <param name="offer">What is known of it already, such as a count; of one in the record everything.</param>
    /// <param name="counted">What was counted on it since, which stands behind its claim; null for nothing.</param>
    public static Form For(HuntBench hunt, Shop shop, DateOnly today, Action<Action<Offer>, string> save, Offer offer, CountedInYard? counted = null)
    {
        var (wanted, bare) = (hunt.Wanted, shop.Workshop().Bare);
        var claimed = counted?.On(offer) ?? offer.Claimed;
        var names = shop.Offers(wanted).Where(other => other.Id != offer.Id).Select(other => other.What).ToList();
        var (rejected, others) = (RejectedPlans.Of(shop, hunt.Bench), shop.OffersOn(today));
        return new()
        {
            Title = Spoken($"Offer for {wanted.Title}"),
            HelpPage = "Wanted",
            Entries =
            [
                new TextEntry("what", Spoken("What")) { AnswersFor = ["offer"], Initial = offer.What, Hint = Spoken($"such as {wanted.Kind.InWords()} from a late pickup, row 9"), Check = values => Named(values, names) },
                new TextEntry("claimed", Spoken("Claimed")) { AnswersFor = ["claimed-ratio-or-size"], Initial = claimed, Hint = Claimed(wanted.Kind), Echo = values => Unread(wanted, values["claimed"]) },
                MoneyEntry.IfAny("price", Spoken("Price"), Spoken("such as 180 EUR; empty if not named"), text => MoneyText.ReadPrice(text, bare), offer.Price),
                new TextEntry("place", Spoken("Where")) { AnswersFor = ["place-of-the-offer"], Initial = offer.Place, Hint = Spoken("advert, yard and row, friend") },
                new TextEntry("supplier", Spoken("Supplier")) { IsRemembered = true, RememberedAs = "supplier", Initial = offer.Supplier?.Name ?? "", Hint = KnownSuppliers(shop) },
                new TextEntry("contact", Spoken("Contact")) { Initial = offer.Contact, Hint = Spoken("number, name, when to call") },
                DayEntry.Past("seen", Spoken("Seen"), today, offer.Id == 0 ? null : offer.SeenDay) with { AnswersFor = ["day-it-was-seen"] },
                new TextEntry("expires", Spoken("Runs out")) { AnswersFor = ["day-it-expires"], Initial = offer.Expires is { } last ? DayText.InWords(last) : "", Hint = Spoken("a date; empty if nobody said"), Check = Checks.IfTyped("expires", text => DayText.Read(text, today)) },
                new TextEntry("notes", Spoken("Notes")) { Initial = offer.Notes, Hint = wanted.MustHaves is [var must, ..] ? Spoken($"what is told of what it must have, such as {must.What}: {must.Text}") : "" },
            ],
            Echo = values => [.. counted?.Doubts ?? [], JudgedOffer.Of(hunt, rejected, values["claimed"], Price(values, bare), values["what"], values["notes"], others).InWords],
            Save = values => Checks.Try(() => save(
                edited =>
                {
                    (edited.What, edited.Claimed, edited.Place, edited.Contact, edited.Notes) = (values["what"], values["claimed"], values["place"], values["contact"], values["notes"]);
                    edited.Price = Price(values, bare);
                    edited.SeenDay = DayEntry.In(values, "seen", today);
                    edited.Expires = values.IsEmpty("expires") ? null : DayText.Read(values["expires"], today).OrRefuse();
                },
                values["supplier"])),
        };
    }

    // Counts from the command line, and the part that it becomes, know an offer by its name.
    private static string? Named(FormValues values, IReadOnlyList<string> others)
        => values.IsEmpty("what") ? Spoken("What is offered?")
            : others.Contains(values["what"].Trim(), StringComparer.OrdinalIgnoreCase) ? Spoken($"{Shown.Quoted(values["what"].Trim())} is offered already: give this one a name that tells them apart, such as '{values["what"].Trim()}, second'.")
            : null;

    private static string Claimed(WantedKind kind) => kind switch
    {
        WantedKind.Axle => Spoken("ratio or teeth; behind it what was counted: 3.36; counted 3.35±0.03"),
        WantedKind.Transmission => Spoken("all gears, 3.32 2.05 1.38 1.00 0.81; some, 1:3.32 5:0.81; or top alone, 0.81"),
        WantedKind.Overdrive => Spoken("ratio; behind it what was counted: 0.78; counted 0.775±0.008"),
        WantedKind.Tyres or WantedKind.Wheels => Spoken("size; behind it what was rolled: 205/65R15; counted 2.05±0.01 m"),
        _ => Spoken("what is said of it, in a line"),
    };

    // Beside the claim, what stands in the way of judging by it. As it is said it can be kept.
    private static string? Unread(WantedPart wanted, string claimed)
    {
        if (claimed.Trim().Length == 0 || OfferJudgement.Of(wanted, claimed, null).Windows.Any(window => window.Claimed is not null)) return null;

        var claim = Claim.Read(claimed);
        var refusal = wanted.Kind switch
        {
            WantedKind.Axle => ToldPart.Axle(claim, "", null).Refusal,
            WantedKind.Transmission => ToldPart.Gearbox(claim, "", null).Refusal,
            WantedKind.Overdrive => ToldPart.Overdrive(claim, "").Refusal,
            WantedKind.Tyres or WantedKind.Wheels => ToldPart.Tyres(claim, "", null).Refusal,
            _ => null,
        };
        return refusal is null ? null : Spoken($"! It can be kept so, but nothing is judged by it: {refusal.Sentence}");
    }

    private static string KnownSuppliers(Shop shop)
        => shop.Suppliers() is [var first, ..] ? Spoken($"such as {first.Name}; a new name is entered; empty for none") : Spoken("whoever sells for a living; a new name is entered; empty for none");

    private static Money? Price(FormValues values, Currency bare)
        => !values.IsEmpty("price") && MoneyText.Read(values["price"], bare).Understood(out var money) ? money : null;
}
