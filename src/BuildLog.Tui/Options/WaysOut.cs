using BuildLog.Data;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Plans;

namespace BuildLog.Tui.Options;

/// <summary>What a search among the shop's, the offered and the listed parts came to for one vehicle.</summary>
/// <param name="Answer">The options, the best first.</param>
/// <param name="Currency">Of the costs; null where no price is known.</param>
/// <param name="Windows">What each part may be while the others stay; empty ones say which two wishes exclude each other.</param>
/// <param name="Unclear">Offers whose claim says too little to be searched.</param>
internal sealed record WaysOut(SearchAnswer Answer, string? Currency, IReadOnlyList<WindowOfPart> Windows, IReadOnlyList<string> Unclear)
{
    /// <summary>What is fitted, for comparison.</summary>
    public required VehicleOnBench Bench { get; init; }

    /// <summary>The options as they are shown and numbered from one on: what leaves no clash, then what only helps; in both the fewest parts first, then the best.</summary>
    public IReadOnlyList<Option> InOrder { get; } = [.. Answer.Groups.SelectMany(group => group)];

    /// <summary>Offers that were searched and stand in none of the options: something among them is at least as good in every respect, or they clash.</summary>
    public IReadOnlyList<PassedOffer> PassedOver { get; private init; } = [];

    /// <summary>What was rejected for the vehicle before.</summary>
    public RejectedPlans Rejected { get; init; } = RejectedPlans.None;

    /// <summary>That its parts, or others of its number, were rejected before, with whatever sets the speedometer right; null where they were not.</summary>
    public RejectedBefore? Before(Option option)
    {
        var changes = OptionChanges.Of(option);
        return Rejected.Says(option.Driveline, changes) is { AreTheseParts: true } these
            ? these
            : Rejected.Says(option.Driveline, [.. changes.Where(change => change.Position != Position.Speedometer)]);
    }

    /// <summary>The clashes of today that every option still has.</summary>
    public IReadOnlyList<Finding> Uncured =>
    [
        .. Bench.Findings.Where(finding => finding.Verdict == Verdict.Clash
            && Answer.Options.All(option => option.Findings.Any(other => other.Verdict == Verdict.Clash && other.Check == finding.Check && other.Between.SequenceEqual(finding.Between)))),
    ];

    /// <param name="shop">The record.</param>
    /// <param name="bench">The vehicle.</param>
    /// <param name="wish">What to search.</param>
    /// <param name="day">Offers that have run out by then are left out.</param>
    /// <param name="progress">The share done, now and then.</param>
    /// <param name="cancel">Ends the search.</param>
    /// <exception cref="Gearing.Quantities.RefusedException">There is nothing to search.</exception>
    public static WaysOut Of(Shop shop, VehicleOnBench bench, SearchWish wish, DateOnly day, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        var tried = new PartsToTry(shop, bench, wish, day);
        return Of(bench, tried.All(), tried.Unclear, RejectedPlans.Of(shop, bench), progress, cancel);
    }

    /// <summary>The same of parts that have been read already: no record is asked, so it may run beside the screen.</summary>
    public static WaysOut Of(VehicleOnBench bench, CandidateParts parts, IReadOnlyList<string> unclear, RejectedPlans rejected, IProgress<double>? progress, CancellationToken cancel)
    {
        var answer = OptionSearch.Run(bench.Driveline, bench.Goals, parts, progress, cancel: cancel);
        return new(answer, parts.Currency, DrivelineWindows.Of(bench.Driveline, bench.Goals, bench.Findings), unclear)
        {
            Bench = bench,
            Rejected = rejected,
            PassedOver =
            [
                .. Offered(parts.Gearboxes).Except(Offered(answer.Options.Select(option => option.Gearbox))), .. Offered(parts.Overdrives).Except(Offered(answer.Options.Select(option => option.Overdrive))),
                .. Offered(parts.Axles).Except(Offered(answer.Options.Select(option => option.Axle))), .. Offered(parts.Tyres).Except(Offered(answer.Options.Select(option => option.Tyres))),
            ],
        };
    }

    private static IEnumerable<PassedOffer> Offered<T>(IEnumerable<Candidate<T>> candidates)
        where T : class
        => candidates.Where(candidate => candidate.Pool == Pool.Offered).Select(candidate => new PassedOffer(candidate.Name, candidate.Told));
}

/// <summary>An offer that stands in none of the ways out.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Told">What has to be known of it first; null for nothing.</param>
internal sealed record PassedOffer(string Name, string? Told)
{
    public string InWords => Told is null ? Name : $"{Name} ({Told})";
}
