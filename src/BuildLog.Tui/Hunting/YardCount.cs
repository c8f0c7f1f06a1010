using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Hunting;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;

namespace BuildLog.Tui.Hunting;

/// <summary>What was counted in the yard on a part that is not the shop's, and what an offer of that part claims by it.</summary>
/// <param name="Part">The part that was looked at.</param>
/// <param name="Session">The surest count of it.</param>
internal sealed record YardCount(Component Part, Session Session)
{
    /// <summary>What an offer of it claims that nobody says anything else of, such as <c>counted 3.350±0.027</c>.</summary>
    public string Claimed => new Claim("", Number).ToString();

    /// <summary>What was counted, such as <c>3.350±0.027</c>.</summary>
    public string Number => Counted(Session);

    /// <summary>It is what was counted on this offer; there was a time when the number was kept alone.</summary>
    public bool IsOf(Offer offer) => Claim.Read(offer.Claimed) is var claim && (claim.Counted == Number || claim == new Claim(Number));

    /// <summary>What was counted for a wanted part and is not bought, the latest first.</summary>
    public static IReadOnlyList<YardCount> Of(Shop shop, WantedPart wanted) =>
    [
        .. shop.Parts().Select(place => place.Component).Where(part => YardPart.IsOf(wanted, part))
            .SelectMany(part => shop.Sessions(part).OrderBy(session => Result(session).Value.Expanded95).Take(1).Select(session => new YardCount(part, session)))
            .OrderByDescending(count => count.Session.Date).ThenByDescending(count => count.Session.Id),
    ];

    /// <summary>A find for the record, tried before there is anything to count on.</summary>
    /// <param name="wanted">The part that is hunted.</param>
    /// <param name="part">The one that was looked at, new.</param>
    /// <param name="session">Its session, filled in.</param>
    /// <exception cref="Gearing.Quantities.RefusedException">The readings make nothing.</exception>
    public static (YardFind Find, string Claimed) Found<TPart, TSession>(WantedPart wanted, TPart part, Func<TPart, TSession> session)
        where TPart : Component
        where TSession : Session
    {
        var tried = session(part);
        tried.Check();
        return (new(wanted, part, stored => session((TPart)stored)), Counted(tried));
    }

    /// <summary>Whether both may have been counted on one part.</summary>
    public bool AgreesWith(Session other) => Result(Session).Value.AgreesWith(Result(other).Value);

    /// <summary>The surer of this count and another: what a part of both claims.</summary>
    public string SurerOf(Session other) => Result(other).Value.Expanded95 < Result(Session).Value.Expanded95 ? Counted(other) : Number;

    private static string Counted(Session session) => Written(Result(session));

    private static string Written((Measured Value, string Unit) result) => FormattableString.Invariant($"{result.Value.Value:0.000}±{result.Value.Expanded95:0.000}{result.Unit}");

    private static (Measured Value, string Unit) Result(Session session) => session switch
    {
        TurnCountSession count => (count.Result().Ratio, ""),
        GearCountSession count => (count.Result().Ratio, ""),
        RollOutSession roll => (roll.Result().RollingCircumference, " m"),
        _ => throw new ArgumentOutOfRangeException(nameof(session), session.Method, "Nothing is claimed by such a session."),
    };
}
