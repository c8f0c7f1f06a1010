using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Hunting;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;

namespace BuildLog.Tui.Hunting;

/// <summary>What was counted in the yard on a part that is not the shop's, and what an offer of that part claims by it.</summary>
/// <param name="Part">The part that was looked at.</param>
/// <param name="Session">What was counted on it last.</param>
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
            .SelectMany(part => shop.Sessions(part).Take(1).Select(session => new YardCount(part, session)))
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

    private static string Counted(Session session) => session switch
    {
        TurnCountSession count => Counted(count.Result().Ratio, ""),
        GearCountSession count => Counted(count.Result().Ratio, ""),
        RollOutSession roll => Counted(roll.Result().RollingCircumference, " m"),
        _ => throw new ArgumentOutOfRangeException(nameof(session), session.Method, "Nothing is claimed by such a session."),
    };

    private static string Counted(Measured value, string unit) => FormattableString.Invariant($"{value.Value:0.000}±{value.Expanded95:0.000}{unit}");
}
