using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Days;
using BuildLog.Data.Hunting;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Measurements;

namespace BuildLog.Tui.Hunting;

/// <summary>What somebody brings back from the yard, not stored yet.</summary>
/// <param name="Find">The part and its sessions.</param>
/// <param name="Claimed">What the part claims by them.</param>
internal sealed record CountedInYard(YardFind Find, string Claimed)
{
    /// <summary>What was counted otherwise on the same part before.</summary>
    public IReadOnlyList<string> Doubts { get; init; } = [];

    /// <summary>What an offer of the part claims by it: the count behind what is said of it.</summary>
    public string On(Offer offer) => YardCount.ClaimedBy(offer, Claimed);
}

/// <summary>What was counted in the yard on a part that is not the shop's, and what an offer of that part claims by it.</summary>
/// <param name="Part">The part that was looked at.</param>
/// <param name="All">Every count of it.</param>
internal sealed record YardCount(Component Part, IReadOnlyList<Session> All)
{
    /// <summary>The counts that decide; of a gearbox that of each gear, the lowest first, of an overdrive unit engaged and not.</summary>
    public IReadOnlyList<Session> Sessions { get; } = Deciding(All);

    /// <summary>What an offer of it claims that nobody says anything else of, such as <c>counted 3.350±0.027</c>.</summary>
    public string Claimed => new Claim("", Number).ToString();

    /// <summary>What was counted, such as <c>3.350±0.027</c>, or <c>1:3.320±0.025 5:0.810±0.025</c>.</summary>
    public string Number => Counted(Sessions);

    /// <summary>The day it was counted last, as far as it is known.</summary>
    public LooseDay Day => Last.Day;

    /// <summary>The day that is reckoned on.</summary>
    public DateOnly Date => Last.Date;

    /// <summary>What an offer of the part claims by it: the count behind what is said of it.</summary>
    public string On(Offer offer) => ClaimedBy(offer, Number);

    /// <summary>What is said of an offer, with a count behind it.</summary>
    public static string ClaimedBy(Offer offer, string number) => (Claim.Read(offer.Claimed) with { Counted = number }).ToString();

    /// <summary>It is what was counted on this offer; there was a time when the number was kept alone, and one when its ± was rounded to the nearest.</summary>
    public bool IsOf(Offer offer)
        => Claim.Read(offer.Claimed) is var claim && ((string[])[Number, Counted(Sessions, Math.Round)]).Any(number => claim.Counted == number || claim == new Claim(number));

    /// <summary>What was counted for a wanted part and is not bought, the latest first.</summary>
    public static IReadOnlyList<YardCount> Of(Shop shop, WantedPart wanted) =>
    [
        .. shop.Parts().Select(place => place.Component).Where(part => YardPart.IsOf(wanted, part))
            .Select(part => new YardCount(part, shop.Sessions(part))).Where(count => count.All.Count > 0)
            .OrderByDescending(count => count.Date).ThenByDescending(count => count.Last.Id),
    ];

    /// <summary>A find for the record, tried before there is anything to count on.</summary>
    /// <param name="wanted">The part that is hunted.</param>
    /// <param name="part">The one that was looked at, new.</param>
    /// <param name="sessions">Its sessions, filled in; one for each gear of a gearbox.</param>
    /// <exception cref="RefusedException">The readings make nothing.</exception>
    public static CountedInYard Found<TPart>(WantedPart wanted, TPart part, params IReadOnlyList<Func<TPart, Session>> sessions)
        where TPart : Component
    {
        List<Session> tried = [.. sessions.Select(session => session(part))];
        foreach (var session in tried) session.Check();
        return new(new(wanted, part, [.. sessions.Select(session => (Func<Component, Session>)(stored => session((TPart)stored)))]), Counted(Deciding(tried)));
    }

    /// <summary>A find on this same part: what was counted on it stays, and what the two come to is claimed.</summary>
    public CountedInYard Again(CountedInYard found, UnitSystem units)
    {
        List<Session> tried = [.. found.Find.Sessions.Select(session => session(Part))];
        return new(found.Find with { Part = Part }, Counted(Deciding([.. All, .. tried]))) { Doubts = [.. tried.SelectMany(session => Doubts(session, units))] };
    }

    /// <summary>What was counted otherwise on the same part.</summary>
    public IEnumerable<string> Doubts(Session session, UnitSystem units)
        => ContradictingSessions.Others(session, All, units).Select(other => Spoken($"Contradicts the {other.Session.Method} of {other.Session.Day.InWords}, {other.Result}: one of the two is wrong, or it is another part. The later one counts; count a third time."));

    /// <summary>Whether both may have been counted on one part; of another gear it says nothing.</summary>
    public bool AgreesWith(Session other)
        => Sessions.Where(session => IsOfTheSame(session, other)).All(session => Result(session).Value.AgreesWith(Result(other).Value));

    /// <summary>What a part of this count and another claims, by the surer of each gear.</summary>
    public string With(Session other) => Counted(Deciding([.. All, other]));

    private Session Last => Latest(All);

    // One that is not stored yet has just been counted.
    private static Session Latest(IEnumerable<Session> sessions) => sessions.MaxBy(session => (session.Date, session.Id == 0 ? long.MaxValue : session.Id))!;

    private static string? Gear(Session session) => (session as GearCountSession)?.Gear;

    private static bool IsOfTheSame(Session one, Session other) => string.Equals(Gear(one), Gear(other), StringComparison.OrdinalIgnoreCase);

    // Of each gear the surest count that the latest agrees with.
    private static IReadOnlyList<Session> Deciding(IEnumerable<Session> sessions) =>
    [
        .. sessions.GroupBy(Gear, StringComparer.OrdinalIgnoreCase).Select(gear =>
            {
                var latest = Result(Latest(gear)).Value;
                return gear.Where(session => Result(session).Value.AgreesWith(latest)).MinBy(session => Result(session).Value.Expanded95)!;
            })
            .OrderByDescending(session => Result(session).Value.Value),
    ];

    // A gear by its name, but for the top gear alone, by which a gearbox was judged at all times. Not engaged an overdrive unit tells nothing of its ratio.
    // A ± is rounded up, as wherever one is shown.
    private static string Counted(IReadOnlyList<Session> sessions) => Counted(sessions, thousandths => Math.Ceiling(thousandths - 1e-9));

    private static string Counted(IReadOnlyList<Session> sessions, Func<double, double> rounded)
    {
        IReadOnlyList<ToldGear> told = [.. sessions.Where(session => Gear(session) != OverdriveComponent.NotEngaged).Select(session => new ToldGear(Gear(session) is { } gear and not OverdriveComponent.Engaged ? gear : "", Written(Result(session), rounded), Result(session).Value))];
        return told is [var only] && new ToldGears(told).Top is not null ? only.Text : string.Join(' ', told);
    }

    private static string Written((Measured Value, string Unit) result, Func<double, double> rounded)
        => FormattableString.Invariant($"{result.Value.Value:0.000}±{rounded(result.Value.Expanded95 * 1000) / 1000:0.000}{result.Unit}");

    private static (Measured Value, string Unit) Result(Session session) => session switch
    {
        TurnCountSession count => (count.Result().Ratio, ""),
        GearCountSession count => (count.Result().Ratio, ""),
        RollOutSession roll => (roll.Result().RollingCircumference, " m"),
        _ => throw new ArgumentOutOfRangeException(nameof(session), session.Method, "Nothing is claimed by such a session."),
    };
}
