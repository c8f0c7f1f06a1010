using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Hunting;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Tui.Hunting;

/// <summary>What was counted in the yard on a part that is not the shop's: it is kept as a part with its session, and says what an offer of it claims.</summary>
internal static class YardCount
{
    private const string NotBought = "Not bought: ";

    /// <summary>It stands in the record for its count alone.</summary>
    public static bool IsNotBought(Component part) => part.Notes.StartsWith(NotBought, StringComparison.Ordinal);

    /// <summary>It is the shop's to use: neither looked at only for its count, nor gone.</summary>
    public static bool IsAtHand(Component part) => part.Ownership != Ownership.Gone && !IsNotBought(part);

    /// <param name="shop">The record.</param>
    /// <param name="wanted">The part that is hunted.</param>
    /// <param name="part">The one that was looked at, new.</param>
    /// <param name="session">Its session, filled in; made twice: it is tried before there is anything to count on.</param>
    /// <returns>The claim of an offer, such as <c>3.350±0.027</c>.</returns>
    /// <exception cref="Gearing.Quantities.RefusedException">The readings make nothing; nothing is stored.</exception>
    public static string Keep<TPart, TSession>(Shop shop, WantedPart wanted, TPart part, Func<TPart, TSession> session)
        where TPart : Component
        where TSession : Session
    {
        session(part).Check();
        part.Name = NameOf(wanted);
        part.Notes = $"{NotBought}counted for {wanted.Title}.";
        return Claim(shop.Add(session(shop.Add(part))));
    }

    public static string NameOf(WantedPart wanted) => $"{wanted.Title}, counted in the yard";

    /// <summary>What a session makes, as an offer claims it.</summary>
    public static string Claim(Session session) => session switch
    {
        TurnCountSession count => Claim(count.Result().Ratio, ""),
        GearCountSession count => Claim(count.Result().Ratio, ""),
        RollOutSession roll => Claim(roll.Result().RollingCircumference, " m"),
        _ => throw new ArgumentOutOfRangeException(nameof(session), session.Method, "Nothing is claimed by such a session."),
    };

    private static string Claim(Measured value, string unit) => FormattableString.Invariant($"{value.Value:0.000}±{value.Expanded95:0.000}{unit}");
}
