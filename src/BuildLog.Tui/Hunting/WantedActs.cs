using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Costs;
using BuildLog.Data.Hunting;
using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Measurements;
using BuildLog.Tui.Options;
using BuildLog.Tui.Plans;
using BuildLog.Tui.Workbench;
using BuildLog.Tui.YardCards;

namespace BuildLog.Tui.Hunting;

/// <summary>What the keys of the wanted page do to the record.</summary>
internal sealed class WantedActs(Shop shop, TimeProvider clock, ForNow forNow) : IWantedActs
{
    private const string Bought = "bought";
    private const string Again = "again";
    private const string Found = "found";
    private const string Dropped = "dropped";
    private const string OfferGone = "gone";
    private const string CountGone = "uncounted";
    private const string OtherAxle = "other-axle";

    private DateOnly Today => clock.Today();

    // Of a price without a sign or letters.
    private Currency Bare => shop.Workshop().Bare;

    public WantedModel Read(long vehicleId)
    {
        var bench = Bench(vehicleId);
        var rejected = RejectedPlans.Of(shop, bench);
        return new([.. shop.Wanted(bench.Vehicle).SelectMany(wanted => Rows(bench, rejected, wanted))]);
    }

    // A count that is an offer's claim is told with the offer.
    private IEnumerable<WantedRow> Rows(VehicleOnBench bench, RejectedPlans rejected, WantedPart wanted)
    {
        var (offers, counts, others) = (shop.Offers(wanted), YardCount.Of(shop, wanted), shop.OffersOn(Today));
        var hunt = HuntBench.Of(shop, bench, wanted);
        return
        [
            WantedRows.Part(hunt, Today, forNow.Units),
            .. offers.Select(offer => WantedRows.Offer(hunt, rejected, offer, counts.FirstOrDefault(count => count.IsOf(offer)), BoughtPart.Of(shop, wanted, offer), others, Today, forNow.Units)),
            .. counts.Where(count => !offers.Any(count.IsOf)).Select(count => WantedRows.Counted(hunt, rejected, count, others, forNow.Units)),
        ];
    }

    public string? New(IWorkbenchView view, long vehicleId)
    {
        var bench = Bench(vehicleId);
        var (driveline, vehicle) = (bench.Driveline, bench.Vehicle.Name);
        var kinds = Enum.GetValues<WantedKind>().Select(each => new ChoiceOption(each.ToString(), each.InWords())).ToList();
        if (driveline.OtherAxle is not null) kinds.Insert(kinds.FindIndex(kind => kind.Value == nameof(WantedKind.Axle)) + 1, new(OtherAxle, driveline.OtherPosition.InWords()));
        var kind = view.Choose(Spoken($"Hunt what for {vehicle}?"), kinds);
        var chosen = kind == OtherAxle ? WantedKind.Axle : Enum.TryParse<WantedKind>(kind, out var parsed) ? parsed : (WantedKind?)null;
        if (chosen is not { } sought) return null;

        WantedPart Made() => new(bench.Vehicle, sought) { Title = HuntedName.Free(shop, bench.Vehicle, Spoken($"{(kind == OtherAxle ? driveline.OtherPosition.InWords() : sought.InWords())} for {vehicle}")) };
        var such = WantedWindows.Today(new(Made(), bench)).FirstOrDefault() is { } of ? WouldDo.Of(driveline, bench.Goals, of) : [];
        WantedPart Noted()
        {
            var made = Made();
            made.Notes = such.Count == 0 ? "" : Spoken($"Such as {string.Join(", ", such)}.");
            return made;
        }

        WantedPart? added = null;
        return view.Fill(Form(bench, Noted(), edit => added = shop.Add(Noted(), edit))) ? Kept(bench, added!, Spoken($"Hunted now: {added!.Title}.")) : null;
    }

    public string? Edit(IWorkbenchView view, long vehicleId, WantedRow row)
    {
        var wanted = Wanted(vehicleId, row);
        if (row.OfferId is not null || row.CountedId is not null) return Offer(view, Bench(vehicleId), wanted, row);

        var (bench, changed) = (Bench(vehicleId), wanted);
        return view.Fill(Form(bench, wanted, edit => changed = shop.Change(wanted, edit))) ? Kept(bench, changed, Spoken($"Changed: {row.What}.")) : null;
    }

    public string? Offer(IWorkbenchView view, long vehicleId, WantedRow row)
        => Offer(view, Bench(vehicleId), Wanted(vehicleId, row), row.CountedId is null ? row with { OfferId = null } : row);

    public string? Count(IWorkbenchView view, long vehicleId, WantedRow row)
    {
        var (bench, wanted) = (Bench(vehicleId), Wanted(vehicleId, row));
        var (offer, before) = (Of(wanted, row), Before(wanted, row));
        CountedInYard? found = null;
        Offer? kept = null;

        // Made on an offer that is there it belongs to that, and one form asks for all of it.
        void Take(CountedInYard counted)
        {
            found = before?.Part.GetType() == counted.Find.Part.GetType() ? before.Again(counted, forNow.Units) : counted;
            kept = offer is null ? null : shop.Change(offer, offer.Supplier?.Name ?? "", edited => edited.Claimed = found.On(edited), found.Find);
        }

        Form? form = wanted.Kind switch
        {
            WantedKind.Axle => TurnCountForm.For(row.What, Today, edit => Take(YardCount.Found(wanted, new AxleComponent(), axle => Filled(new TurnCountSession(axle), edit)))),
            WantedKind.Transmission => YardCounts.OfGearbox(wanted, Today, Take),
            WantedKind.Overdrive => YardCounts.OfOverdrive(wanted, Today, Take),
            WantedKind.Tyres or WantedKind.Wheels when Rolled(bench, row) is var wheels
                => RollOutForm.For(wheels, Today, forNow.Units, edit => Take(YardCount.Found(wanted, wheels, set => Filled(new RollOutSession(set), edit)))),
            _ => null,
        };
        if (form is null)
        {
            view.Say(Spoken($"There is no count for {wanted.Kind.InWords()} here: enter the offer with o, and what it measured as its claim."));
            return null;
        }

        // It was counted in the yard, with the card and its cautions in hand: nothing is turned now.
        if (!view.Fill(form with { Cautions = [], SetUp = [] }) || found is not { } counted) return null;
        if (kept is not null) return string.Join(' ', [Spoken($"Counted on {kept.What}: {AsWritten.Numbers(counted.Claimed)}. Enter changes the offer."), .. counted.Doubts, InWords(HuntBench.Of(shop, bench, wanted), bench, kept)]);
        if (Offer(view, bench, wanted, row, counted) is { } said) return said;

        shop.BringBack(counted.Find);
        return string.Join(' ', [Spoken($"Kept: the count, {counted.Claimed}. No offer was entered; it stands below {wanted.Title}."), .. counted.Doubts]);
    }

    public string? Join(IWorkbenchView view, long vehicleId, WantedRow row)
    {
        var (bench, wanted) = (Bench(vehicleId), Wanted(vehicleId, row));
        if (YardCount.Of(shop, wanted).FirstOrDefault(each => each.Part.Id == row.CountedId) is not { } count)
        {
            view.Say(Spoken("Choose a count that stands by itself: it is joined to the offer of the part that was counted."));
            return null;
        }

        var offers = shop.Offers(wanted).Where(offer => BoughtPart.Of(shop, wanted, offer) is null && Claim.Read(offer.Claimed).Counted.Length == 0).ToList();
        if (offers.Count == 0)
        {
            view.Say(Spoken($"No offer for {wanted.Title} is without a count: o enters the one that this part belongs to."));
            return null;
        }

        if (view.Choose(Spoken($"Counted on which offer: {AsWritten.Numbers(count.Number)}?"), [.. offers.Select(offer => new ChoiceOption(offer.What, $"{offer.What}  {AsWritten.Numbers(offer.Claimed)}".TrimEnd()))], help: "Wanted") is not { } what) return null;

        var joined = shop.Change(offers.First(offer => offer.What == what), edited => edited.Claimed = count.On(edited));
        return Spoken($"Joined: the count, {AsWritten.Numbers(count.Number)}, was made on {joined.What}; z parts them. {InWords(HuntBench.Of(shop, bench, wanted), bench, joined)}");
    }

    public string? Card(IWorkbenchView view, long vehicleId, WantedRow row)
    {
        var wanted = Wanted(vehicleId, row);
        var hunt = HuntBench.Of(shop, Bench(vehicleId), wanted);
        return new CardActs(shop, clock, forNow.Units).Run(view, hunt.Bench, wanted.Kind, hunt);
    }

    public string? Close(IWorkbenchView view, long vehicleId, WantedRow row)
    {
        var wanted = Wanted(vehicleId, row);
        switch (view.Choose(row.What, [.. WaysToClose(wanted, row)]))
        {
            case Bought:
                return Buy(view, wanted, row);
            case Again:
                shop.Change(wanted, edited => edited.State = WantedState.Hunting);
                return Spoken($"Hunted again: {wanted.Title}.");
            case Found:
                shop.Change(wanted, edited => edited.State = WantedState.Found);
                return Spoken($"Found: {wanted.Title}.");
            case CountGone:
                shop.Remove(shop.Parts().First(place => place.Component.Id == row.CountedId).Component, withEverything: true);
                return Spoken($"Taken out: {row.What}.");
            case OfferGone:
                shop.Remove(Of(wanted, row)!);
                return Spoken($"No longer on offer: {row.What}.");
            case Dropped:
                return view.Fill(DropForm(wanted)) ? Spoken($"Wanted no more: {wanted.Title}.") : null;
            default:
                return null;
        }
    }

    public string Strike(long vehicleId, WantedRow row)
    {
        var wanted = Wanted(vehicleId, row);
        Entered struck = row.OfferId is { } offer ? shop.Offers(wanted).First(each => each.Id == offer)
            : row.CountedId is { } count ? shop.Parts().First(place => place.Component.Id == count).Component
            : wanted;
        shop.Remove(struck, withEverything: true);
        return Spoken($"Struck: {row.What}. z brings it back.");
    }

    private static IEnumerable<ChoiceOption> WaysToClose(WantedPart wanted, WantedRow row)
    {
        if (wanted.State == WantedState.Hunting)
        {
            yield return new(Bought, Spoken($"bought{(row is { OfferId: null, CountedId: null } ? "" : Spoken(" this one"))}: it joins the shop with its cost"));
            yield return new(Found, Spoken("found: hunted no more, nothing else noted"));
        }
        else
        {
            yield return new(Again, Spoken("hunt it again"));
        }

        if (wanted.State != WantedState.Dropped) yield return new(Dropped, Spoken("wanted no more, for a reason"));
        if (row.OfferId is not null) yield return new(OfferGone, Spoken("this offer is gone"));
        if (row.CountedId is not null) yield return new(CountGone, Spoken("this count is of no use: take it out"));
    }

    private string? Buy(IWorkbenchView view, WantedPart wanted, WantedRow row)
    {
        var offer = Of(wanted, row);
        Purchase? bought = null;
        var form = BoughtForm.For(wanted, offer, Counted(wanted, row) ?? BoughtPart.Counted(shop, wanted, offer), Bare, Today, purchase =>
        {
            shop.Buy(wanted, purchase);
            bought = purchase;
        });
        return view.Fill(form) && bought is not null
            ? Spoken($"Bought: {bought.What}{(bought.Part is null ? "" : Spoken(", on the shelf now"))}{(bought.Paid is { } paid ? Spoken($"; {paid} noted") : Spoken("; no cost noted"))}.")
            : null;
    }

    private static T Filled<T>(T session, Action<T> edit)
    {
        edit(session);
        return session;
    }

    private static WheelSetComponent Rolled(VehicleOnBench bench, WantedRow row)
        => new() { Name = row.What, Construction = bench.Driveline.DrivingTyres?.Size?.Construction ?? Gearing.Tyres.Construction.Radial };

    private Form DropForm(WantedPart wanted) => new()
    {
        Title = Spoken($"Drop {wanted.Title}"),
        HelpPage = "Wanted",
        SaveCaption = Spoken("Drop"),
        Entries = [new TextEntry("why", Spoken("Why")) { AnswersFor = ["dropped", "reason-for-dropping-it"], Hint = Spoken("the rule that failed, so that nobody hunts it again"), Check = Checks.Filled("why", Spoken("Which rule failed?")) }],
        Save = values => Checks.Try(() => shop.Change(wanted, edited => (edited.State, edited.DroppedFor) = (WantedState.Dropped, values["why"]))),
    };

    // A new offer, or the one of the row; with what was counted on the part it is one change.
    private string? Offer(IWorkbenchView view, VehicleOnBench bench, WantedPart wanted, WantedRow row, CountedInYard? counted = null)
    {
        Offer? kept = null;
        var hunt = HuntBench.Of(shop, bench, wanted);
        var known = Of(wanted, row);
        var form = OfferForm.For(
            hunt, shop, Today,
            (edit, supplier) => kept = known is null ? shop.Enter(Filled(new Offer(wanted), edit), supplier, counted?.Find) : shop.Change(known, supplier, edit, counted?.Find),
            known ?? new(wanted) { Claimed = row.CountedId is null ? "" : row.Says },
            counted);
        return view.Fill(form) && kept is not null
            ? $"{(known is null ? Spoken("Kept") : Spoken("Changed"))}: {kept.What}. {InWords(hunt, bench, kept)}"
            : null;
    }

    private string InWords(HuntBench hunt, VehicleOnBench bench, Offer offer)
        => JudgedOffer.Of(hunt, RejectedPlans.Of(shop, bench), offer.Claimed, offer.Price, offer.What, offer.Notes, shop.OffersOn(Today)).InWords;

    private Offer? Of(WantedPart wanted, WantedRow row) => shop.Offers(wanted).FirstOrDefault(each => each.Id == row.OfferId);

    // What was counted before on what the row is of.
    private YardCount? Before(WantedPart wanted, WantedRow row)
    {
        var offer = Of(wanted, row);
        return YardCount.Of(shop, wanted).FirstOrDefault(count => offer is null ? count.Part.Id == row.CountedId : count.IsOf(offer));
    }

    private Component? Counted(WantedPart wanted, WantedRow row) => YardCount.Of(shop, wanted).FirstOrDefault(count => count.Part.Id == row.CountedId)?.Part;

    private Form Form(VehicleOnBench bench, WantedPart wanted, Action<Action<WantedPart>> save)
    {
        var today = WantedWindows.Today(HuntBench.Of(shop, bench, wanted)).ToList();
        var others = shop.Wanted(bench.Vehicle).Where(other => other.Id != wanted.Id).Select(other => other.Title).ToList();
        return WantedForm.For(wanted, Bare, Today, today, others, forNow.Units, save);
    }

    // What was kept with a doubt is told once more.
    private string Kept(VehicleOnBench bench, WantedPart wanted, string said)
        => string.Join(' ', ((string?[])[said, WantedWindows.Doubt([.. WantedWindows.Today(HuntBench.Of(shop, bench, wanted))], wanted.Windows, forNow.Units)]).OfType<string>());

    private VehicleOnBench Bench(long vehicleId) => VehicleOnBench.Read(shop, shop.FindVehicle(vehicleId), Today);

    private WantedPart Wanted(long vehicleId, WantedRow row) => shop.Wanted(shop.FindVehicle(vehicleId)).First(wanted => wanted.Id == row.WantedId);
}
