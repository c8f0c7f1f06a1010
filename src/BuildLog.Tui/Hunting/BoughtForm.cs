using BuildLog.Data.Components;
using BuildLog.Data.Costs;
using BuildLog.Data.Hunting;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Hunting;

/// <summary>Asks for what a part is called that was hunted and bought, and what was paid; it ends the hunt.</summary>
internal static class BoughtForm
{
    /// <param name="wanted">The part that was hunted.</param>
    /// <param name="offer">What was taken of the offers; null where it was none of them.</param>
    /// <param name="counted">The part in the record that it was counted on; null for none.</param>
    /// <param name="bare">The currency of a bare number: the shop's.</param>
    /// <param name="today">The day it is.</param>
    /// <param name="buy">Stores what was bought.</param>
    public static Form For(WantedPart wanted, Offer? offer, Component? counted, Currency bare, DateOnly today, Action<Purchase> buy)
    {
        var asksClaim = counted is null && BoughtPart.HasClaim(wanted.Kind);
        return new()
        {
            Title = Spoken($"Bought: {wanted.Title}"),
            HelpPage = "Wanted",
            SaveCaption = Spoken("Bought"),
            Entries =
            [
                new TextEntry("what", Spoken("Name")) { AnswersFor = ["component"], Initial = offer?.What ?? wanted.Title.Split(':')[0], Hint = Spoken("what the shop will call it"), Check = Checks.Filled("what", Spoken("What will the shop call it?")) },
                MoneyEntry.IfAny("paid", Spoken("Paid"), Spoken("such as 180 EUR; empty: no cost is noted"), text => MoneyText.ReadPrice(text, bare), offer?.Price),
                DayEntry.Past("day", Spoken("Bought on"), today),
                new TextEntry("donor", Spoken("From")) { IsRemembered = true, Initial = offer is null ? "" : string.Join(", ", ((string?[])[offer.Supplier?.Name, offer.Place]).Where(text => !string.IsNullOrWhiteSpace(text))), Hint = Spoken("yard, seller or donor vehicle") },
                .. asksClaim
                    ? [new TextEntry("claimed", Spoken("Said of it")) { Initial = Said(offer), Hint = Spoken("ratio, gears or size, by somebody's word; empty: count it"), Check = Checks.IfTyped("claimed", text => ReadClaim(wanted.Kind, text)) }]
                    : Array.Empty<Entry>(),
                new TextEntry("shelf", Spoken("Lies where")) { Hint = Spoken("such as rack B, bottom") },
            ],
            Echo = _ =>
            [
                .. MustHaveWords.Untold(OfferJudgement.Of(wanted, "", null, $"{offer?.What}\n{offer?.Notes}")),
                counted is null ? Spoken("The part, its cost and the end of the hunt are one change; z takes all of it back.") : Spoken("Its count in the yard stays its evidence. All of it is one change; z takes it back."),
            ],
            Save = values => Checks.Try(() => buy(Bought(wanted, offer, counted, values, bare, today))),
        };
    }

    private static Purchase Bought(WantedPart wanted, Offer? offer, Component? counted, FormValues values, Currency bare, DateOnly today)
    {
        var part = counted ?? BoughtPart.New(wanted.Kind);
        void Put(Component bought)
        {
            (bought.Name, bought.Donor, bought.Shelf, bought.SupplierId) = (values["what"], values["donor"], values["shelf"], offer?.SupplierId);
            bought.Notes = offer?.Notes ?? "";
        }

        if (part is { Id: 0 })
        {
            Put(part);
            if (!values.IsEmpty("claimed")) BoughtPart.Put(part, values["claimed"]);
        }
        else if (counted is not null && Claim.Read(offer?.Claimed ?? "").Said is { Length: > 0 } said && ReadClaim(wanted.Kind, said).Refusal is null)
        {
            // What its seller said stays beside the count, in the record too.
            BoughtPart.Put(counted, said);
        }

        return new(values["what"], DayEntry.In(values, "day", today), values.IsEmpty("paid") ? null : MoneyText.ReadPrice(values["paid"], bare).OrRefuse())
        {
            Part = part,
            Edit = Put,
            SupplierId = offer?.SupplierId,
        };
    }

    private static string Said(Offer? offer) => offer is null ? "" : Claim.Read(offer.Claimed) is { Said.Length: > 0 } claim ? claim.Said : Claim.Read(offer.Claimed).Counted;

    private static Parsed<Component> ReadClaim(WantedKind kind, string text)
        => Parsed.From(() =>
        {
            var part = BoughtPart.New(kind)!;
            BoughtPart.Put(part, text);
            part.Name = Spoken("it");
            part.Check();
            return part;
        });
}
