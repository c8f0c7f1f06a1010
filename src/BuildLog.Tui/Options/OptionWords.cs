using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Options;

/// <summary>A way out in words.</summary>
internal static class OptionWords
{
    private const int MostCures = 2;

    /// <summary>The offers that are among none of the ways out; empty where all are.</summary>
    public static string PassedOver(WaysOut found)
        => found.PassedOver.Count == 0 ? "" : Spoken($"On offer, but in none of these, as something here is at least as good or they do not do: {string.Join("; ", found.PassedOver.Select(offer => offer.InWords))}.");

    /// <summary>The parts that would be changed, where each comes from.</summary>
    public static IReadOnlyList<string> Parts(Option option) =>
    [
        .. Part(Spoken("gearbox"), option.Gearbox), .. Part(Spoken("overdrive"), option.Overdrive), .. Part(Spoken("axle"), option.Axle), .. GearedAlike(option) is { } alike ? (string[])[alike] : [], .. Part(Spoken("tyres"), option.Tyres), .. Dial(option) is { } dial ? (string[])[dial] : [],
    ];

    /// <summary><c>21-tooth speedometer gear</c>: what sets it right beside the other parts; null where nothing is changed there.</summary>
    public static string? Dial(Option option) => option.Dial switch
    {
        null => null,
        { DrivenTeeth: { } teeth } => Spoken($"{teeth}-tooth speedometer gear"),
        { Drive.Correction.Value: var factor } => Spoken($"speedometer correction of {Rounded.Fixed(factor, 2)}"),
    };

    /// <summary><c>front axle geared alike</c>: the other axle of a four-wheel drive; null where it stays.</summary>
    public static string? GearedAlike(Option option) => option.Axle.Beside is null ? null : GearedAlike(option.Driveline.OtherPosition);

    public static string GearedAlike(Position other) => Spoken($"{other.InWords()} geared alike");

    /// <summary><c>2420 ± 40 rev/min; 0 clash, 3 open, 1 watch; price not known; sure by 97 %, what is open apart</c>.</summary>
    public static string Figures(Option option, string? currency)
    {
        var n = option.CruiseEngineSpeed is { } cruise ? $"{Rounded.WithInterval(cruise, Units.RevolutionPerMinute)}; " : "";
        return Spoken($"{n}{option.Score.Clash} clash, {option.Score.Open} open, {option.Score.Watch} watch; {Cost(option, currency)}{(Sure(option) is { Length: > 0 } sure ? $"; {sure}" : "")}");
    }

    /// <summary>What <see cref="Sure"/> means, for below a list of ways out.</summary>
    public static string SureMeans => Spoken("Sure by: the share of today's uncertainty in which it would still fit. What is open, and what only warns, is not in it.");

    /// <summary>What it costs, or that nobody knows; then what has to be looked at before it is bolted on, and the gear whose price nobody has named.</summary>
    public static string Cost(Option option, string? currency)
        => string.Join(", ", ((string[])[Price(option, currency), option.IsDoubtful ? Spoken("inspect first") : "", DialNotPriced(option)]).Where(words => words.Length > 0));

    /// <summary>The same as short as a column is: more than its parts cost where nobody has named the price of the rest.</summary>
    public static string CostInShort(Option option, string? currency) => option switch
    {
        { IsDoubtful: true } => Spoken("inspect first"),
        { Dial: not null, PartsCostMinor: null or 0 } => Spoken("price not known"),
        { Dial: not null } => $"> {Price(option, currency)}",
        _ => Price(option, currency),
    };

    private static string DialNotPriced(Option option) => option.Dial switch
    {
        null => "",
        { DrivenTeeth: not null } => Spoken("speedometer gear not priced"),
        _ => Spoken("speedometer correction not priced"),
    };

    private static string Price(Option option, string? currency) => option.PartsCostMinor switch
    {
        null => Asked(option) is { Count: > 0 } asked ? Spoken($"{string.Join(" + ", asked)}, not compared with {currency}") : Spoken("price not known"),
        0 => Takes(option) is { Count: > 0 } vehicles ? Spoken($"from {string.Join(Spoken(" and "), vehicles)}") : option is { IsDoubtful: false, Dial: null } ? Spoken("costs nothing") : "",
        { } minor => PriceWords.Of(minor, currency),
    };

    // Each price as it stands, where only their currencies keep them from being added; none where one is not known.
    private static IReadOnlyList<string> Asked(Option option)
    {
        var asked = ((string?[])[Asked(option.Gearbox), Asked(option.Overdrive), Asked(option.Axle), Asked(option.Tyres)]).OfType<string>().ToList();
        return asked.Contains("") ? [] : asked;
    }

    private static string? Asked<T>(Candidate<T> candidate)
        where T : class
        => candidate switch
        {
            { IsInPlace: true } => null,
            { Beside: null, Price: { } price } => PriceWords.Of(price.Minor, price.Currency),
            { Beside: null, Pool: Pool.Owned or Pool.Elsewhere } or { Part: null } => null,
            _ => "",
        };

    /// <summary>In what share of the uncertainty it still fits, and that what is open is not in it; empty beside a clash, where any share would mislead.</summary>
    public static string Sure(Option option)
        => option is { Score.Clash: 0, Robustness: { } share }
            ? Spoken($"sure by {Math.Floor((share * 100) + 1e-6)}\u00A0%{(option.Score.Open > 0 ? Spoken(", what is open apart") : "")}{(IsWordAlone(option) ? Spoken(", if the seller's word is true") : "")}")
            : "";

    /// <summary>The changed parts without where they come from, for the head of a column.</summary>
    public static string Short(Option option)
        => string.Join(" + ", ((string?[])[Name(option.Gearbox), Name(option.Overdrive), Name(option.Axle), GearedAlike(option), Name(option.Tyres), Dial(option)]).OfType<string>());

    /// <summary>How much was looked at.</summary>
    public static string Tried(SearchAnswer answer)
        => answer.ThrownOut == 0
            ? Spoken($"Combinations looked at: {answer.Tried:N0}; the {answer.JudgedFully:N0} most promising by every check.")
            : Spoken($"Combinations looked at: {answer.Tried:N0}; the {answer.JudgedFully:N0} most promising by every check. Another {answer.ThrownOut:N0} needed no look: one of their parts cannot be used.");

    /// <summary>That something better may be among what was not judged by every check; nothing where nothing is.</summary>
    public static IEnumerable<string> MightBeBetter(SearchAnswer answer)
        => answer.MightBeBetter == 0 ? [] : [Spoken($"{answer.MightBeBetter:N0} more are too many to judge by every check; some of them might clash less, or leave less open or to watch.")];

    /// <summary><c>As it is: 2928 ± 12 rev/min; 1 clash, 0 open, 1 watch.</c></summary>
    public static string AsItIs(VehicleOnBench bench)
    {
        var n = bench.Goals.Cruise is [var goal, ..] && CruiseCheck.EngineSpeed(bench.Driveline, goal) is { } cruise ? $"{Rounded.WithInterval(cruise, Units.RevolutionPerMinute)}; " : "";
        var counts = Gearing.Options.VerdictCounts.Of(bench.Findings);
        return Spoken($"As it is: {n}{counts.Clash} clash, {counts.Open} open, {counts.Watch} watch.");
    }

    /// <summary>Of each clash of today that none of the ways out cures, what would; and of any other what cures it without one of them.</summary>
    public static IEnumerable<string> Clashes(WaysOut found, UnitSystem units)
    {
        var uncured = found.Uncured;
        foreach (var clash in found.Bench.Findings.Where(finding => finding.Verdict == Verdict.Clash))
        {
            var about = Spoken($"the clash of {char.ToLowerInvariant(clash.Title[0])}{clash.Title[1..]}");
            if (uncured.Contains(clash)) yield return Spoken($"{(found.Answer.Options.Count == 0 ? Spoken("No part that was searched") : Spoken("None of these"))} cures {about}. {Would(clash.CuresIn(units.Shown), clash.SaysIn(units.Shown))}");
            else if (clash.Advice.Count > 0 && !IsSetRight(found, clash)) yield return Spoken($"Besides, this cures {about}: {string.Join(Spoken("; or "), clash.Advice.Take(MostCures).Select(cure => cure.In(units.Shown)))}.");
        }
    }

    // Its cure stands in the list then, as a way out of its own or with the others.
    private static bool IsSetRight(WaysOut found, Finding clash) => clash.Between.Contains(Position.Speedometer) && found.Answer.Options.Any(option => option.Dial is not null);

    private static string Would(IReadOnlyList<string> cures, string says) => cures.Count == 0 ? says : Spoken($"What would: {string.Join(Spoken("; or "), cures.Take(MostCures))}.");

    /// <summary>Above the ways out that leave no clash, and those that leave one.</summary>
    public static string Section(bool stillClashes) => stillClashes ? Spoken("Helps, but still clashes:") : Spoken("Leaves no clash:");

    public static string Heading(int changes) => changes == 1 ? Spoken("One part changed:") : Spoken($"{changes} parts changed:");

    /// <summary>The vehicles that parts would have to come off.</summary>
    public static IReadOnlyList<string> Takes(Option option)
        => [.. ((string?[])[option.Gearbox.FittedTo, option.Overdrive.FittedTo, option.Axle.FittedTo, option.Tyres.FittedTo]).OfType<string>().Distinct()];

    /// <summary>What has to be looked at before it is bolted on, and why.</summary>
    public static IEnumerable<string> InspectFirst(Option option)
        => [.. Inspect(option.Gearbox), .. Inspect(option.Overdrive), .. Inspect(option.Axle), .. Inspect(option.Tyres)];

    private static IEnumerable<string> Inspect<T>(Candidate<T> candidate)
        where T : class
        => candidate.IsDoubtful ? [$"{candidate.Name}: {candidate.Told}"] : [];

    /// <summary>Nobody but the seller says what one of its parts is.</summary>
    public static bool IsWordAlone(Option option) => option is { Gearbox.IsWordAlone: true } or { Overdrive.IsWordAlone: true } or { Axle.IsWordAlone: true } or { Tyres.IsWordAlone: true };

    private static string? Name<T>(Candidate<T> candidate)
        where T : class
        => candidate.IsInPlace ? null : candidate.Name;

    private static IEnumerable<string> Part<T>(string what, Candidate<T> candidate)
        where T : class
    {
        if (candidate.IsInPlace) yield break;

        var where = candidate.FittedTo is { } vehicle ? Spoken($"owned, on {vehicle}") : candidate.Pool.InWords();
        if (candidate is { Pool: Pool.Offered, Price: { } price }) where = Spoken($"{where} at {PriceWords.Of(price.Minor, price.Currency)}");
        if (candidate.Told is { } told) where = candidate.IsDoubtful ? Spoken($"{where}; inspect first: {told}") : $"{where}; {told}";
        yield return candidate.Part is null ? candidate.Name : $"{NamedPart.InWords(what, candidate.Name)} ({where})";
    }
}
