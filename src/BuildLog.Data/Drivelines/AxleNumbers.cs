using BuildLog.Data.Components;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Data.Drivelines;

/// <summary>An axle's ratio: teeth counted, then the latest turn count, then what is stated.</summary>
/// <remarks>Propshaft turns per wheel turn. A count has a hub reduction inside; teeth and statements are of the differential and get it on top.</remarks>
internal static class AxleNumbers
{
    /// <param name="axle">The axle.</param>
    /// <param name="counts">Its counts, the latest first.</param>
    public static IEnumerable<NumberKnown?> Of(AxleComponent axle, IEnumerable<TurnCountSession> counts)
    {
        var hub = axle.HubReduction is { } noted ? PartNumbers.Quoted(noted, RatioRange.Hub, "hub reduction") : null;
        yield return PartNumbers.Strongest(PartNumbers.Ratio, Units.One, Ratio(axle, counts, hub));
        if (hub is not null) yield return PartNumbers.Strongest(PartNumbers.HubReduction, Units.One, (hub, null));
    }

    private static IEnumerable<(Known, Session?)> Ratio(AxleComponent axle, IEnumerable<TurnCountSession> counts, Known? hub)
    {
        if (axle.Teeth is { } teeth) yield return (Through(hub, new(teeth.ToMeasured(), Source.TeethCounted, teeth.ToString())), null);
        foreach (var count in counts) yield return (new(count.Result().Ratio, Source.Measured, $"count of {count.Date.InWords()}"), count);
        if (axle.StatedRatio is { } stated) yield return (Through(hub, PartNumbers.Quoted(stated, RatioRange.Axle, "axle ratio")), null);
    }

    private static Known Through(Known? hub, Known differential)
        => hub is null ? differential : differential with { Value = differential.Value * hub.Value, Says = $"{differential.Says}, hub {hub.Says}" };
}
