using BuildLog.Gearing.Drivelines;
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

    /// <summary><c>2420 ± 40 rev/min; 0 clash, 3 open, 1 watch; price not known; sure by 97 %, what is open apart</c>.</summary>
    public static string Figures(Option option, string? currency)
    {
        var n = option.CruiseEngineSpeed is { } cruise ? $"{Rounded.WithInterval(cruise, Units.RevolutionPerMinute)}; " : "";
        return string.Create(CultureInfo.InvariantCulture, $"{n}{option.Score.Clash} clash, {option.Score.Open} open, {option.Score.Watch} watch; {Cost(option, currency)}{(Sure(option) is { Length: > 0 } sure ? $"; {sure}" : "")}");
    }

    public static string Cost(Option option, string? currency) => option.CostMinor switch
    {
        null => "price not known",
        0 => "costs nothing",
        { } minor => PriceWords.Of(minor, currency),
    };

    /// <summary>In what share of the uncertainty it still fits, and that what is open is not in it; empty beside a clash, where any share would mislead.</summary>
    public static string Sure(Option option)
        => option is { Score.Clash: 0, Robustness: { } share }
            ? string.Create(CultureInfo.InvariantCulture, $"sure by {Math.Floor(share * 100)} %{(option.Score.Open > 0 ? ", what is open apart" : "")}")
            : "";

    /// <summary>The changed parts without where they come from, for the head of a column.</summary>
    public static string Short(Option option)
        => string.Join(" + ", ((string?[])[Name(option.Gearbox), Name(option.Overdrive), Name(option.Axle), Name(option.Tyres)]).OfType<string>());

    /// <summary>How much was looked at.</summary>
    public static string Tried(SearchAnswer answer)
        => string.Create(CultureInfo.InvariantCulture, $"{answer.Tried:N0} combinations tried, {answer.JudgedFully} of them judged by every check.");

    public static string Heading(int changes) => changes == 1 ? "One part changed:" : string.Create(CultureInfo.InvariantCulture, $"{changes} parts changed:");

    private static string? Name<T>(Candidate<T> candidate)
        where T : class
        => candidate.IsInPlace ? null : candidate.Name;

    private static IEnumerable<string> Part<T>(string what, Candidate<T> candidate)
        where T : class
    {
        if (candidate.IsInPlace) yield break;

        var where = candidate.FittedTo is { } vehicle ? $"owned, on {vehicle}" : candidate.Pool.InWords();
        if (candidate is { Pool: Pool.Offered, Price: { } price }) where = $"{where} at {PriceWords.Of(price.Minor, price.Currency)}";
        yield return candidate.Part is null ? candidate.Name : $"{NamedPart.InWords(what, candidate.Name)} ({where})";
    }
}
