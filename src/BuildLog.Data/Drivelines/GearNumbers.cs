using BuildLog.Data.Components;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Data.Drivelines;

/// <summary>A gearbox's ratios: teeth counted, then the turn count of the gear that counts, then what is stated.</summary>
internal static class GearNumbers
{
    /// <param name="box">The gearbox.</param>
    /// <param name="counts">The counts of its gears, the latest first.</param>
    public static IEnumerable<NumberKnown?> Of(TransmissionComponent box, IReadOnlyList<GearCountSession> counts)
    {
        var counted = counts.ToLookup(count => count.Gear, count => PartNumbers.Counted(count, count.Result()), StringComparer.OrdinalIgnoreCase);
        return Names(box, counted).Select((name, k) => PartNumbers.Strongest(PartNumbers.Gear(name), Units.One, Evidence(box, name, k, counted[name])));
    }

    // Where nobody has written the gears down, those that were counted are the gears.
    private static IReadOnlyList<string> Names(TransmissionComponent box, ILookup<string, (Known Known, Session? Session)> counted)
        => box.GearNames is { Count: > 0 } names
            ? names
            : [.. counted.OrderByDescending(gear => gear.First().Known.Value.Value).Select(gear => gear.Key)];

    private static IEnumerable<(Known, Session?)> Evidence(TransmissionComponent box, string name, int k, IEnumerable<(Known Known, Session? Session)> counted)
    {
        if (box.Train is { } train) yield return (new(train.Gears[k].Ratio, Source.TeethCounted, train.Gears[k].Says), null);
        foreach (var count in PartNumbers.BestKnownFirst(counted)) yield return count;
        if (box.Gears.FirstOrDefault(gear => gear.Name == name) is { } stated) yield return (PartNumbers.Quoted(stated.Ratio, RatioRange.Gear, PartNumbers.Gear(name)), null);
    }
}
