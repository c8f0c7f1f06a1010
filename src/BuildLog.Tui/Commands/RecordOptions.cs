using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Costs;
using BuildLog.Data.Days;
using BuildLog.Data.Hunting;
using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Hunting;
using BuildLog.Tui.Plans;

namespace BuildLog.Tui.Commands;

/// <summary>Keeps what a command measured as a session of a vehicle's fitted part: <c>--record VEHICLE</c>.</summary>
internal sealed class RecordOptions
{
    private readonly Option<string?> vehicle = new("--record") { Description = Spoken("Keep this as a session of the vehicle's fitted part."), HelpName = "VEHICLE" };
    private readonly Option<string?> day = new("--date") { Description = Spoken("The day of the session, with --record (today)."), HelpName = "DATE" };
    private readonly Option<string?> helper = new("--helper") { Description = Spoken("Who helped, with --record."), HelpName = "NAME" };
    private readonly Option<string?> part;
    private readonly Option<string?> wanted = new("--wanted") { Description = Spoken("With --record: it was counted in the yard on a part for this wanted one; kept with it, and as an offer that is judged."), HelpName = "TITLE" };
    private readonly Option<string?> offered = new("--offer") { Description = Spoken("With --wanted: what is offered, and where."), HelpName = "TEXT" };
    private readonly Option<string?> supplier = new("--supplier") { Description = Spoken("With --wanted: who sells it; a new name is entered."), HelpName = "NAME" };
    private readonly Option<string?> price = new("--price") { Description = Spoken("With --wanted: what is asked for it, such as 180 EUR."), HelpName = "MONEY" };
    private readonly IReadOnlyList<(string Word, Position Place)> places;

    // What may have been measured, and the word for each; the first is meant where none is said.
    private RecordOptions(string asks, params IReadOnlyList<(string Word, Position Place)> places)
    {
        this.places = places;
        part = new("--part") { Description = asks, HelpName = string.Join('|', places.Select(each => each.Word)) };
    }

    public static RecordOptions ForAxle() => new(Spoken("Which axle, with --record on a vehicle with two."), ("rear", Position.RearAxle), ("front", Position.FrontAxle));

    public static RecordOptions ForGearbox() => new(Spoken("What was counted, with --record: the gearbox (if not said), or the overdrive unit behind it."), ("gearbox", Position.Transmission), ("overdrive", Position.Overdrive));

    public static RecordOptions ForTyres() => new("", ("tyres", Position.Tyres));

    public void AddTo(Command command)
    {
        command.Options.Add(vehicle);
        command.Options.Add(day);
        command.Options.Add(helper);
        if (places.Count > 1) command.Options.Add(part);
        command.Options.Add(wanted);
        command.Options.Add(offered);
        command.Options.Add(supplier);
        command.Options.Add(price);
    }

    public bool IsAsked(ParseResult parse) => parse.GetValue(vehicle) is not null;

    /// <summary>Stores the session, if that was asked for.</summary>
    /// <param name="edge">Opens the record.</param>
    /// <param name="parse">The command line.</param>
    /// <param name="make">The session of the fitted part, with its readings.</param>
    /// <returns>What was kept, and what an offer comes to.</returns>
    public Kept Save<TComponent>(Edge edge, ParseResult parse, Func<TComponent, Vehicle?, Session> make)
        where TComponent : Component, new()
    {
        NothingInVain(parse);
        if (parse.GetValue(vehicle) is not { } name) return Kept.Nothing;

        using var shop = edge.OpenShop(parse);
        var found = Reading.Blaming(vehicle.Name, () => shop.FindVehicle(name));
        var on = Day(edge, parse);
        if (parse.GetValue(wanted) is { } title) return InTheYard(edge, parse, shop, WantedOf(parse, shop, found, title), on, make);

        var there = FittedAt(shop, found, Where(parse), on);
        if (there.Count > 1)
        {
            throw Reading.Wrong(day.Name, new Refusal(
                "which-part", Spoken($"{found.Name} had more than one {Where(parse).InWords()} in {Shown.Quoted(on.Text)}: {string.Join(", ", there.Select(part => part.Name))}. Say the day more closely."), ""));
        }

        if (there.FirstOrDefault() is not TComponent component)
        {
            throw Reading.Wrong(vehicle.Name, new Refusal(
                "not-fitted", Spoken($"{found.Name} had no {Where(parse).InWords()} fitted on {on.InWords}, so there is nothing to keep this with."), ""));
        }

        var session = make(component, found);
        shop.Add(Dated(parse, session, on));
        return new([Spoken($"Kept as a session of {component.Name} on {found.Name}.")]);
    }

    // One part where the day leaves no other, however little is known of it.
    private static List<Component> FittedAt(Shop shop, Vehicle vehicle, Position place, LooseDay on)
        => [.. shop.Fitments(vehicle).Where(fitment => fitment.Position == place && !(fitment.From > on.Latest) && !(fitment.To <= on.Earliest)).Select(fitment => fitment.Component).DistinctBy(part => part.Id)];

    // What would not be kept is refused rather than passed over: its writer believes that it is.
    private void NothingInVain(ParseResult parse)
    {
        RefuseWithout(vehicle, [day, helper, part, wanted]);
        RefuseWithout(wanted, [offered, supplier, price]);

        void RefuseWithout(Option<string?> needed, Option<string?>[] useless)
        {
            if (parse.GetValue(needed) is not null || Array.Find(useless, option => parse.GetValue(option) is not null) is not { } vain) return;
            throw Reading.Wrong(vain.Name, new Refusal("not-kept", Spoken($"Without {needed.Name} it would not be kept: add {needed.Name}, or leave it out."), ""));
        }
    }

    // Nothing of the vehicle was counted: the part is another's, and may be bought.
    private Kept InTheYard<TComponent>(Edge edge, ParseResult parse, Shop shop, WantedPart hunted, LooseDay on, Func<TComponent, Vehicle?, Session> make)
        where TComponent : Component, new()
    {
        Money? asked = parse.GetValue(price) is { } text ? Reading.Of(price.Name, text, typed => MoneyText.ReadPrice(typed, shop.Workshop().Bare)) : null;
        var (found, claim) = Reading.Blaming(wanted.Name, () => YardCount.Found(hunted, new TComponent(), part => Dated(parse, make(part, null), on)));
        var before = Before(shop, hunted, parse.GetValue(offered) ?? YardPart.NameOf(hunted));
        var session = Dated(parse, make(new TComponent(), null), on);
        var (offer, how) = Reading.Blaming(wanted.Name, () => before.FirstOrDefault(each => each.Count.AgreesWith(session)) is { Offer: not null } same
            ? (Joined(parse, shop, same.Offer, same.Count, found with { Part = same.Count.Part }, session, asked), Spoken($"It agrees with what was counted before, {same.Count.Number}, and is kept with it."))
            : (Entered(parse, shop, hunted, claim, found, before, asked, on), ""));
        var bench = VehicleOnBench.Read(shop, shop.FindVehicle(hunted.VehicleId), edge.Today);
        var judged = JudgedOffer.Of(HuntBench.Of(shop, bench, hunted), RejectedPlans.Of(shop, bench), offer.Claimed, asked, offer.What, others: shop.OffersOn(edge.Today));
        return new([Spoken($"Kept as an offer for {hunted.Title}: {offer.What}, {Claim.Read(offer.Claimed).Counted}."), .. how.Length > 0 ? (string[])[how] : [], .. offer.Notes.Length > 0 ? (string[])[offer.Notes] : [], judged.InWords])
        {
            Offer = () => new JsonObject
            {
                ["wanted"] = hunted.Title,
                ["what"] = offer.What,
                ["claimed"] = Claim.Read(offer.Claimed).Counted,
                ["verdict"] = judged.Verdict.InWords(),
                ["reason"] = judged.Reason,
                ["standing"] = judged.Standing,
                ["judgedWith"] = judged.With,
                ["tooDear"] = judged.IsTooDear,
                ["rejected"] = judged.Rejected?.Says,
            },
        };
    }

    // What was counted for the hunt before under the same name.
    private static List<(Offer Offer, YardCount Count)> Before(Shop shop, WantedPart hunted, string name)
    {
        var counts = YardCount.Of(shop, hunted);
        return
        [
            .. shop.Offers(hunted).Where(offer => offer.What.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase))
                .SelectMany(offer => counts.Where(count => count.IsOf(offer)).Take(1).Select(count => (offer, count))),
        ];
    }

    private Offer Joined(ParseResult parse, Shop shop, Offer offer, YardCount count, YardFind found, Session session, Money? asked)
        => shop.Change(offer, parse.GetValue(supplier) ?? offer.Supplier?.Name ?? "", edited => (edited.Claimed, edited.Price) = (new Claim(Claim.Read(offer.Claimed).Said, count.With(session)).ToString(), asked ?? edited.Price), found);

    private Offer Entered(ParseResult parse, Shop shop, WantedPart hunted, string claim, YardFind found, List<(Offer Offer, YardCount Count)> before, Money? asked, LooseDay on)
        => shop.Enter(
            new Offer(hunted)
            {
                What = parse.GetValue(offered) ?? YardPart.NameOf(hunted),
                Claimed = new Claim("", claim).ToString(),
                Price = asked,
                SeenDay = on,
                Notes = before is [var other, ..] ? Spoken($"It contradicts the {other.Count.Number} that was counted {other.Count.Day.InWords}: it is another part, or one of the counts is wrong.") : "",
            },
            parse.GetValue(supplier) ?? "", found);

    private Session Dated(ParseResult parse, Session session, LooseDay on)
    {
        (session.Day, session.Helper) = (on, parse.GetValue(helper) ?? "");
        return session;
    }

    private WantedPart WantedOf(ParseResult parse, Shop shop, Vehicle vehicle, string title)
    {
        var hunting = shop.Wanted(vehicle).Where(each => each.State == WantedState.Hunting && IsCounted(each.Kind, Where(parse))).ToList();
        if (hunting.Count == 0) throw Reading.Wrong(wanted.Name, new Refusal("wanted", Spoken($"No such part is hunted for {vehicle.Name}: hunt one in the workbench, page Wanted."), ""));

        return hunting.Where(each => each.Title.StartsWith(title.Trim(), StringComparison.OrdinalIgnoreCase)).ToList() is [var found]
            ? found
            : throw Reading.Wrong(wanted.Name, new Refusal("wanted", Spoken($"'{title}' is not one of the parts hunted for {vehicle.Name}: {string.Join(", ", hunting.Select(each => each.Title))}."), hunting[0].Title));
    }

    private static bool IsCounted(WantedKind kind, Position place) => place switch
    {
        Position.Transmission => kind == WantedKind.Transmission,
        Position.Overdrive => kind == WantedKind.Overdrive,
        Position.Tyres => kind is WantedKind.Tyres or WantedKind.Wheels,
        _ => kind == WantedKind.Axle,
    };

    private LooseDay Day(Edge edge, ParseResult parse)
        => parse.GetValue(day) is { } text ? Reading.Of(day.Name, text, typed => DayText.ReadLoosePast(typed, edge.Today)) : LooseDay.On(edge.Today);

    /// <summary>What was measured.</summary>
    public Position Where(ParseResult parse)
    {
        if (places.Count == 1 || parse.GetValue(part) is not { } said) return places[0].Place;

        return places.Where(each => each.Word == said).Select(each => (Position?)each.Place).FirstOrDefault()
            ?? throw Reading.Wrong(part.Name, new Refusal("part", Spoken($"'{said}' is not one of {string.Join(", ", places.Select(each => each.Word))}."), places[^1].Word));
    }
}
