using System.Globalization;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Options;

/// <summary>A way out in words.</summary>
internal static class OptionWords
{
    /// <summary>The parts that would be changed, where each comes from.</summary>
    public static IReadOnlyList<string> Parts(Option option) =>
    [
        .. Part("gearbox", option.Gearbox), .. Part("overdrive", option.Overdrive), .. Part("axle", option.Axle), .. Part("tyres", option.Tyres),
    ];

    /// <summary><c>2420 ± 40 rev/min; 0 clash, 3 open, 1 watch; price not known; fits in 97 %</c>.</summary>
    public static string Figures(Option option, string? currency)
    {
        var n = option.CruiseEngineSpeed is { } cruise ? $"{Rounded.WithInterval(cruise, Units.RevolutionPerMinute)}; " : "";
        var cost = option.CostMinor switch
        {
            null => "price not known",
            0 => "costs nothing",
            var minor => string.Create(CultureInfo.InvariantCulture, $"{currency} {minor / 100m:0.00}"),
        };
        return string.Create(CultureInfo.InvariantCulture, $"{n}{option.Score.Clash} clash, {option.Score.Open} open, {option.Score.Watch} watch; {cost}; sure by {Math.Floor(option.Robustness * 100)} %");
    }

    public static string Heading(int changes) => changes == 1 ? "One part changed:" : string.Create(CultureInfo.InvariantCulture, $"{changes} parts changed:");

    private static IEnumerable<string> Part<T>(string what, Candidate<T> candidate)
        where T : class
    {
        if (candidate.IsInPlace) yield break;

        var where = candidate.FittedTo is { } vehicle ? $"owned, on {vehicle}" : candidate.Pool.InWords();
        yield return candidate.Part is null ? candidate.Name : $"{what} {candidate.Name} ({where})";
    }
}
