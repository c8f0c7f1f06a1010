using BuildLog.Data.Sessions;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Measurements;

/// <summary>Two sessions of one part that cannot both be right: each says so, and names the other.</summary>
public static class ContradictingSessions
{
    /// <summary>What a session's row says of those it contradicts.</summary>
    public static IEnumerable<string> Of(Session session, IReadOnlyList<Session> all, UnitSystem units)
        => Others(session, all, units).Select(other => Spoken($"Contradicts the {other.Session.Method} of {other.Session.Day.InWords}, {other.Result}: measure a third time, and strike the one that is wrong."));

    /// <summary>Those it contradicts, and what each came to.</summary>
    public static IEnumerable<(Session Session, string Result)> Others(Session session, IReadOnlyList<Session> all, UnitSystem units)
    {
        var result = MeasurementsWords.Result(session, units);
        foreach (var other in all.Where(other => other.Id != session.Id && IsOfTheSame(session, other)))
        {
            var theirs = MeasurementsWords.Result(other, units);
            if (!result.Value.AgreesWith(theirs.Value)) yield return (other, Rounded.WithInterval(theirs.Value, theirs.Unit));
        }
    }

    // What a vehicle weighs, how a shaft lies and how a tyre stands change with the build; what a part is does not.
    private static bool IsOfTheSame(Session session, Session other)
        => session is not (WeighbridgeSession or ShaftAnglesSession or LoadedRadiusSession or SpeedometerRunSession)
            && session.ComponentId == other.ComponentId && session.Method == other.Method && (session as GearCountSession)?.Gear == (other as GearCountSession)?.Gear;
}
