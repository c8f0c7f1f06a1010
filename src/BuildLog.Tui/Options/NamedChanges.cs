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

    private static string AsItIs => Spoken("as it is");

    /// <param name="bench">The vehicle.</param>
    /// <param name="text">The changes, a comma between them.</param>
    /// <param name="ways">The options that a number is the place of; asked for only then.</param>
    /// <exception cref="RefusedException">A word names no change, a change cannot be made, or there are too many.</exception>
    public static OptionComparison Beside(VehicleOnBench bench, string text, Func<WaysOut?> ways)
    {
        var asked = new Lazy<WaysOut?>(ways);
        var changes = text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return Beside(bench, [.. changes.Select(change => Changed(bench, change, asked))]);
    }

    /// <summary>What is fitted beside ways out.</summary>
    /// <param name="bench">The vehicle.</param>
    /// <param name="others">The ways out.</param>
    /// <param name="currency">What their prices are in.</param>
    public static OptionComparison Beside(VehicleOnBench bench, IEnumerable<Option> others, string? currency) => Beside(bench, [.. others.Select(option => Column(option, currency))]);

    private static OptionComparison Beside(VehicleOnBench bench, IReadOnlyList<ComparedDriveline> others)
        => OptionComparison.Of(bench.Goals, [new(AsItIs, bench.Driveline, Spoken("nothing to buy")), .. others]);

    private static ComparedDriveline Column(Option option, string? currency)
        => new(OptionWords.Short(option), option.Driveline, option.CostMinor is null ? null : OptionWords.Cost(option, currency));

    private static ComparedDriveline Changed(VehicleOnBench bench, string change, Lazy<WaysOut?> ways)
        => Alternative(bench, change) is { } listed ? new(listed.Name, listed.Driveline) : Place(change, ways);

    // Parts that are merely listed, so nobody has named a price.
    private static (string Name, Driveline Driveline)? Alternative(VehicleOnBench bench, string change) => change switch
    {
        "tyre-up" => Alternatives.TyreSizeUp(bench.Driveline),
        "tyre-down" => Alternatives.TyreSizeDown(bench.Driveline),
        "overdrive" => Alternatives.Overdrive(bench.Driveline, bench.Goals),
        "axle" => Alternatives.AxleForCruise(bench.Driveline, bench.Goals),
        "launch" => Alternatives.AxleForLaunch(bench.Driveline, bench.Goals),
        _ => null,
    };

    private static ComparedDriveline Place(string change, Lazy<WaysOut?> ways)
    {
        if (!int.TryParse(change, out var place))
            throw new RefusedException("change", Spoken($"'{change}' is no change: tyre-up, tyre-down, overdrive, axle, launch, or a place in the list of options."), "tyre-up,axle");

        var options = ways.Value?.InOrder ?? [];
        return place >= 1 && place <= options.Count
            ? Column(options[place - 1], ways.Value!.Currency)
            : throw new RefusedException("change", Spoken($"There is no option {place}: the list has {options.Count}."), "1,2");
    }
}
