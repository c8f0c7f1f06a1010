using BuildLog.Data.Components;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Data.Drivelines;

/// <summary>An axle's ratio: teeth counted, then the turn count that counts, then what is stated.</summary>
/// <remarks>Propshaft turns per wheel turn. A count has a hub reduction inside; teeth and statements are of the differential and get it on top.</remarks>
internal static class AxleNumbers
{
    /// <param name="axle">The axle.</param>
    /// <param name="sessions">What was measured of it, the latest first.</param>
    public static IEnumerable<NumberKnown?> Of(AxleComponent axle, IReadOnlyList<Session> sessions)
    {
        var hub = axle.HubReduction is { } noted ? PartNumbers.Quoted(noted, RatioRange.Hub, Spoken("hub reduction")) : null;
        yield return PartNumbers.Strongest(PartNumbers.Ratio, Units.One, Ratio(axle, sessions, hub));
        if (hub is not null) yield return PartNumbers.Strongest(PartNumbers.HubReduction, Units.One, (hub, null));
    }

    private static IEnumerable<(Known, Session?)> Ratio(AxleComponent axle, IReadOnlyList<Session> sessions, Known? hub)
    {
        foreach (var counted in sessions.OfType<TeethSession>()) yield return (Through(hub, Counted(counted.Result())), counted);
        if (axle.Teeth is { } teeth) yield return (Through(hub, Counted(teeth)), null);
        foreach (var counted in PartNumbers.BestKnownFirst(sessions.OfType<TurnCountSession>().Select(count => PartNumbers.Counted(count, count.Result())))) yield return counted;
        if (axle.StatedRatio is { } stated) yield return (Through(hub, PartNumbers.Quoted(stated, RatioRange.Axle, Spoken("axle ratio"))), null);
    }

    private static Known Counted(Teeth teeth) => new(teeth.ToMeasured(), Source.TeethCounted, teeth.ToString());

    private static Known Through(Known? hub, Known differential)
        => hub is null ? differential : differential with { Value = differential.Value * hub.Value, Says = Spoken($"{differential.Says}, hub {hub.Says}") };
}
