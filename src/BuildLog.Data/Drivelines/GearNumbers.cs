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
        => Names(box, counts).Select((name, k) => PartNumbers.Strongest(PartNumbers.Gear(name), Units.One, Evidence(box, name, k, counts)));

    // Where nobody has written the gears down, those that were counted are the gears.
    private static IReadOnlyList<string> Names(TransmissionComponent box, IReadOnlyList<GearCountSession> counts)
        => box.GearNames is { Count: > 0 } names
            ? names
            : [.. counts.DistinctBy(count => count.Gear, StringComparer.OrdinalIgnoreCase).OrderByDescending(count => count.Result().Ratio.Value).Select(count => count.Gear)];

    private static IEnumerable<(Known, Session?)> Evidence(TransmissionComponent box, string name, int k, IReadOnlyList<GearCountSession> counts)
    {
        if (box.Train is { } train) yield return (new(train.Gears[k].Ratio, Source.TeethCounted, train.Gears[k].Says), null);
        var ofGear = counts.Where(count => string.Equals(count.Gear, name, StringComparison.OrdinalIgnoreCase));
        foreach (var counted in PartNumbers.BestKnownFirst(ofGear.Select(count => (new Known(count.Result().Ratio, Source.Measured, Spoken($"count of {count.Date.InWords()}")), (Session?)count)))) yield return counted;
        if (box.Gears.FirstOrDefault(gear => gear.Name == name) is { } stated) yield return (PartNumbers.Quoted(stated.Ratio, RatioRange.Gear, PartNumbers.Gear(name)), null);
    }
}
