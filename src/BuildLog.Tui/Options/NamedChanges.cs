using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Options;

/// <summary>What is fitted beside one to three changes that were named in a text, such as <c>tyre-up,axle</c>.</summary>
internal static class NamedChanges
{
    public const string All = "tyre-up,tyre-down,overdrive,axle,launch,PLACE";

    /// <summary>An overdrive against an axle swap: what is asked first.</summary>
    public const string Usual = "axle,overdrive";

    private const string AsItIs = "as it is";

    /// <param name="bench">The vehicle.</param>
    /// <param name="text">The changes, a comma between them.</param>
    /// <param name="ways">The options that a number is the place of; asked for only then.</param>
    /// <exception cref="RefusedException">A word names no change, a change cannot be made, or there are too many.</exception>
    public static OptionComparison Beside(VehicleOnBench bench, string text, Func<IReadOnlyList<Option>> ways)
    {
        var asked = new Lazy<IReadOnlyList<Option>>(ways);
        var changes = text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return Beside(bench, [.. changes.Select(change => Changed(bench, change, asked))]);
    }

    /// <summary>What is fitted beside drivelines that have a name already.</summary>
    public static OptionComparison Beside(VehicleOnBench bench, IReadOnlyList<(string Name, Driveline Driveline)> others)
        => OptionComparison.Of(bench.Goals, [(AsItIs, bench.Driveline), .. others]);

    private static (string Name, Driveline Driveline) Changed(VehicleOnBench bench, string change, Lazy<IReadOnlyList<Option>> ways) => change switch
    {
        "tyre-up" => Alternatives.TyreSizeUp(bench.Driveline),
        "tyre-down" => Alternatives.TyreSizeDown(bench.Driveline),
        "overdrive" => Alternatives.Overdrive(bench.Driveline, bench.Goals),
        "axle" => Alternatives.AxleForCruise(bench.Driveline, bench.Goals),
        "launch" => Alternatives.AxleForLaunch(bench.Driveline, bench.Goals),
        _ => Place(change, ways),
    };

    private static (string Name, Driveline Driveline) Place(string change, Lazy<IReadOnlyList<Option>> ways)
    {
        if (!int.TryParse(change, out var place))
            throw new RefusedException("change", $"'{change}' is no change: tyre-up, tyre-down, overdrive, axle, launch, or a place in the list of options.", "tyre-up,axle");

        return place >= 1 && place <= ways.Value.Count
            ? (OptionWords.Short(ways.Value[place - 1]), ways.Value[place - 1].Driveline)
            : throw new RefusedException("change", $"There is no option {place}: the list has {ways.Value.Count}.", "1,2");
    }
}
