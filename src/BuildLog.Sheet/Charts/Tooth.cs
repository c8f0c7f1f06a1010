using BuildLog.Sheet.Content;

namespace BuildLog.Sheet.Charts;

/// <summary>A place on the chart, in its own units.</summary>
internal readonly record struct ChartPoint(double Speed, double Engine);

/// <summary>One gear of the sawtooth. It is used from where the gear below it ends.</summary>
/// <param name="Name">The gear.</param>
/// <param name="Lowest">Where its line begins.</param>
/// <param name="Start">Where it is shifted into.</param>
/// <param name="End">Where its line ends.</param>
/// <param name="Drop">The top of the shift into it; none when the two lines have no road speed in common.</param>
internal sealed record Tooth(string Name, ChartPoint Lowest, ChartPoint Start, ChartPoint End, ChartPoint? Drop)
{
    public static IReadOnlyList<Tooth> Of(IReadOnlyList<GearLine> gears) =>
        [.. gears.Select((gear, i) => Of(gear, i == 0 ? null : gears[i - 1]))];

    private static Tooth Of(GearLine gear, GearLine? below)
    {
        var (lowest, end) = (new ChartPoint(gear.FromSpeed, gear.FromEngine), new ChartPoint(gear.ToSpeed, gear.ToEngine));
        if (below is null || below.ToSpeed < gear.FromSpeed || below.ToSpeed >= gear.ToSpeed)
            return new Tooth(gear.Name, lowest, lowest, end, null);

        var along = (below.ToSpeed - gear.FromSpeed) / (gear.ToSpeed - gear.FromSpeed);
        var start = new ChartPoint(below.ToSpeed, gear.FromEngine + along * (gear.ToEngine - gear.FromEngine));
        return new Tooth(gear.Name, lowest, start, end, new ChartPoint(below.ToSpeed, below.ToEngine));
    }
}
