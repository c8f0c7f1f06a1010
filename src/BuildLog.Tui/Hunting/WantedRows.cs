using BuildLog.Data.Fitments;
using BuildLog.Data.Hunting;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Options;
using BuildLog.Tui.Plans;

namespace BuildLog.Tui.Hunting;

/// <summary>Wanted parts and offers as rows.</summary>
internal static class WantedRows
{
    /// <summary>Its window is today's, and the one that is kept with the hunt where there is one.</summary>
    public static WantedRow Part(HuntBench hunt, DateOnly day, UnitSystem units)
    {
        var wanted = hunt.Wanted;
        var isOverdue = wanted.State == WantedState.Hunting && wanted.Deadline < day;
        var today = wanted.State == WantedState.Hunting ? WantedWindows.Today(hunt).ToList() : [];
        var says = wanted.Windows.Count > 0 ? wanted.Windows.Select(window => window.InWords(units)) : today.Where(window => !window.Window.IsEmpty).Select(window => window.Window.InWords(units.Shown(window.Unit)));
        return new(
            wanted.Id, null, wanted.Title, string.Join("; ", says), wanted.Most is { } most ? Spoken($"to {most}") : "", null, isOverdue ? Spoken("overdue") : wanted.State.InWords(),
            [
                .. Line("", wanted.State == WantedState.Hunting ? hunt.Says : null),
                .. wanted.Windows.Select(window => Spoken($"kept with this hunt: {window.Quantity.InWords()} {window.InWords(units)}")),
                .. wanted.State == WantedState.Hunting && WantedWindows.Doubt(today, wanted.Windows, units) is { } doubt ? (string[])[doubt] : [],
                .. today.Select(window => Spoken($"what would do today: {WindowWords.Of(window, units)}")),
                .. wanted.MustHaves.Select(must => Spoken($"must have {must.What}: {must.Text}")),
                .. Line(Spoken("costs at most"), wanted.Most?.ToString()), .. Line(Spoken("needed by"), wanted.Deadline is { } last ? DayText.InWords(last) + (isOverdue ? Spoken(", which is over") : "") : null),
                .. Line(Spoken("wanted no more, because"), wanted.DroppedFor), .. Line("", wanted.Notes),
            ])
        {
            IsOverdue = isOverdue,
            Plan = hunt.Plan?.Name,
            Windows =
            [
                .. wanted.Windows.Select(window => new HuntedWindow(window.Quantity.InWords(), WantedWindows.UnitOf(window.Quantity), window.Read(), true)),
                .. today.Where(window => !window.Window.IsEmpty).Select(window => new HuntedWindow(window.Quantity, window.Unit, window.Window, false)),
            ],
            Money = wanted.Most,
            Until = wanted.Deadline,
        };
    }

    /// <param name="hunt">What is hunted, and what it would go on.</param>
    /// <param name="rejected">What was rejected for it before.</param>
    /// <param name="offer">What is offered for it.</param>
    /// <param name="counted">What was counted on it; null for nothing.</param>
    /// <param name="bought">The part that it became; null where it was not bought.</param>
    /// <param name="others">What else is on offer.</param>
    /// <param name="today">The day it is.</param>
    /// <param name="units">The units to show.</param>
    public static WantedRow Offer(HuntBench hunt, RejectedPlans rejected, Offer offer, YardCount? counted, PartPlace? bought, IReadOnlyList<Offer> others, DateOnly today, UnitSystem units)
    {
        var wanted = hunt.Wanted;
        if (bought is not null) return Bought(wanted, offer, bought);

        var claim = Claim.Read(offer.Claimed);
        if (counted is not null && claim.IsWordAlone) claim = Claim.Read(counted.Claimed);
        var judged = JudgedOffer.Of(hunt, rejected, claim.ToString(), offer.Price, offer.What, offer.Notes, others);
        var isOver = offer.Expires < today;
        return new(
            wanted.Id, offer.Id, offer.What, claim.ToString(), offer.Price?.ToString() ?? "", judged.Verdict, isOver ? Spoken("ran out") : judged is { IsTooDear: true, Verdict: not Verdict.Clash } ? Spoken("too dear") : judged.Verdict.InWords(),
            [
                judged.InWords,
                .. Line(Spoken("claimed"), claim.Said), .. Line(Spoken("counted"), claim.Counted), .. counted is null ? [] : Read(counted, units), .. Line(Spoken("price"), offer.Price?.ToString()), .. Line(Spoken("at"), offer.Supplier?.Name), .. Line(Spoken("at"), offer.Place == offer.Supplier?.Name ? null : offer.Place), .. Line(Spoken("contact"), offer.Contact),
                Spoken($"seen {offer.SeenDay.InWords}{(offer.Expires is { } last ? $", {(isOver ? Spoken("ran out") : Spoken("runs out"))} {DayText.InWords(last)}" : "")}"),
                .. Line("", offer.Notes),
            ])
        {
            Judged = judged,
            Money = offer.Price,
            Seen = offer.Seen,
            Until = offer.Expires,
        };
    }

    // What it would do is no question any more.
    private static WantedRow Bought(WantedPart wanted, Offer offer, PartPlace bought) => new(
        wanted.Id, offer.Id, offer.What, offer.Claimed, offer.Price?.ToString() ?? "", null, bought.Fitment is null ? Spoken("bought") : Spoken("fitted"),
        [
            bought.Fitment is { } fitment ? Spoken($"Bought, and fitted to {fitment.Vehicle.Name} since {DayText.InWords(fitment.From)}.") : Spoken("Bought; it is on the shelf. f fits it, once its place is chosen."),
            .. Line(Spoken("claimed"), AsWritten.Numbers(offer.Claimed)), .. Line(Spoken("price"), offer.Price?.ToString()), .. Line(Spoken("at"), offer.Supplier?.Name), .. Line("", offer.Notes),
        ])
    {
        Money = offer.Price,
        Seen = offer.Seen,
        Until = offer.Expires,
    };

    /// <summary>A count that nobody offers the part of yet.</summary>
    public static WantedRow Counted(HuntBench hunt, RejectedPlans rejected, YardCount count, IReadOnlyList<Offer> others, UnitSystem units)
    {
        var judged = JudgedOffer.Of(hunt, rejected, count.Claimed, null, others: others);
        return new(
            hunt.Wanted.Id, null, Spoken($"counted in the yard {DayText.InShort(count.Day)}"), count.Claimed, "", judged.Verdict, judged.Verdict.InWords(),
            [judged.InWords, .. Read(count, units), Spoken("No offer of it yet: o enters one, j joins it to one that is there, d buys it or takes the count out.")])
        {
            CountedId = count.Part.Id,
            Seen = count.Date,
            Judged = judged,
        };
    }

    // A count that decides over one that it contradicts says so.
    private static IEnumerable<string> Read(YardCount count, UnitSystem units) => count.All.OrderByDescending(count.Sessions.Contains).SelectMany(session => (string[])
    [
        session is GearCountSession gear
            ? Spoken($"{session.Method} of {session.Day.InWords}, {CountedGear.InWords(gear.Gear)}: {string.Join(", ", session.ReadingsInWords)}")
            : Spoken($"{session.Method} of {session.Day.InWords}: {string.Join(", ", session.ReadingsInWords)}"),
        .. count.Sessions.Contains(session) ? count.Doubts(session, units) : [],
    ]);

    private static IEnumerable<string> Line(string name, string? text) => string.IsNullOrWhiteSpace(text) ? [] : [$"{name} {text}".Trim()];
}
