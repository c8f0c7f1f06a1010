using BuildLog.Data.Costs;
using BuildLog.Data.Hunting;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Plans;

namespace BuildLog.Tui.Hunting;

/// <summary>Whether an offered part would do, before the money is spent: what it does for the goals in the driveline it would go into, what it makes worse there, and its claim against the owner's own limit.</summary>
/// <param name="Verdict">The worst of them; a claim that says nothing is a watch, and so is what fits and costs too much or only with another part.</param>
/// <param name="Reason">The goal first, then what is worse, then what is only claimed.</param>
/// <param name="IsTooDear">It costs more than it may.</param>
internal sealed record JudgedOffer(Verdict Verdict, string Reason, bool IsTooDear)
{
    /// <summary>Clashes that stand without it, as a sentence; empty where there are none.</summary>
    public string Standing { get; private init; } = "";

    /// <summary><c>watch: no number is claimed; count it. It costs more than it may.</c></summary>
    public string InWords => string.Join(' ', ((string[])[$"{Verdict.InWords()}: {Reason}", IsTooDear ? Spoken("It costs more than it may.") : "", IsInOtherMoney ? Spoken("Its price is in another currency than what it may cost: compare them.") : "", Standing]).Where(words => words.Length > 0));

    /// <summary>It does only with the other axle geared alike, which nobody offers with it.</summary>
    private bool IsHalf { get; init; }

    /// <summary>Its price is in another currency than what it may cost, so nobody compares the two.</summary>
    public bool IsInOtherMoney { get; private init; }

    /// <summary>The rule that failed where the same was rejected before; null where it was not.</summary>
    public string? Rejected { get; private init; }

    /// <param name="bench">The vehicle it would go on.</param>
    /// <param name="rejected">What was rejected for it before.</param>
    /// <param name="wanted">The part that is hunted.</param>
    /// <param name="claimed">What is claimed of the part.</param>
    /// <param name="price">What it costs; null where nobody said.</param>
    public static JudgedOffer Of(VehicleOnBench bench, RejectedPlans rejected, WantedPart wanted, string claimed, Money? price)
        => OfTheClaim(bench, rejected, wanted, claimed, price) is var judged && judged is { Verdict: Verdict.Fits } and ({ IsTooDear: true } or { Rejected: not null } or { IsHalf: true } or { IsInOtherMoney: true }) ? judged with { Verdict = Verdict.Watch } : judged;

    private static JudgedOffer OfTheClaim(VehicleOnBench bench, RejectedPlans rejected, WantedPart wanted, string claimed, Money? price)
    {
        var own = OfferJudgement.Of(wanted, claimed, price);
        var inPlace = InPlace(bench, wanted.Kind, claimed);
        var window = own.Windows.Where(each => each.Claimed is not null).MinBy(each => each.Verdict);
        if (window is null && inPlace is null) return new(Verdict.Watch, claimed.Trim().Length == 0 ? Spoken("no number is claimed; count or measure it.") : Spoken($"nothing can be made of '{claimed}'; count or measure it."), own.IsTooDear);

        // First what it does for the goals, then what is worse with it. What is open is no verdict on the offer, but it is said.
        var (goal, worse) = (inPlace?.Goal, inPlace?.Worse);
        var verdicts = ((Verdict?[])[window?.Verdict, goal?.Verdict, worse?.Verdict]).OfType<Verdict>().ToList();
        var open = inPlace?.Findings.Count(finding => finding.Verdict == Verdict.Open) ?? 0;
        var before = inPlace is null ? null : rejected.Says(inPlace.Driveline);
        string[] reasons =
        [
            before is null ? "" : $"{before}.",
            goal is null ? "" : $"{ForTheGoal(goal.Verdict)}: {goal.Says}",
            window is not null && (goal is null || window.Verdict < goal.Verdict) ? InWindow(window) : "",
            inPlace?.GearedAlike is { } other ? Spoken($"The {other.InWords()} has to be geared alike; this one alone would clash.") : "",
            worse is null ? "" : Spoken($"Worse with it: {worse.Says}"),
            verdicts.Count == 0 ? inPlace!.Reason : "",
            claimed.Contains('±', StringComparison.Ordinal) ? "" : Spoken($"{claimed.Trim()} is only the seller's word: count or measure it."),
            open == 0 ? "" : Spoken($"Still open about it: {open}."),
        ];
        return new(verdicts.Count == 0 ? Verdict.Watch : verdicts.Min(), string.Join(' ', reasons.Where(reason => reason.Length > 0)), own.IsTooDear)
        {
            Standing = inPlace is null ? "" : StandsAlready(inPlace.Standing),
            Rejected = before,
            IsHalf = inPlace?.GearedAlike is not null,
            IsInOtherMoney = price is { } asked && wanted.Most is { } cap && asked.Currency != cap.Currency,
        };
    }

    private static string ForTheGoal(Verdict verdict) => verdict switch
    {
        Verdict.Fits => Spoken("it meets the goal"),
        Verdict.Clash => Spoken("it misses the goal"),
        _ => Spoken("whether it meets the goal is not sure"),
    };

    private static string StandsAlready(IReadOnlyList<StandingClash> clashes)
        => clashes.Count == 0 ? "" : Spoken($"Stands already, not the offer's doing: {string.Join(", ", clashes.Select(clash => $"{clash.Finding.Title}{(clash.IsFurtherOut ? Spoken(" (further out with it)") : "")}"))}.");

    private static string InWindow(WindowJudgement window)
    {
        var unit = window.Window.Quantity is WindowOf.AxleRatio or WindowOf.TopGearRatio or WindowOf.OverdriveRatio or WindowOf.LowRangeRatio ? Units.One : Units.Metre;
        var lies = window.Verdict switch
        {
            Verdict.Fits => Spoken("lies inside"),
            Verdict.Clash => Spoken("lies outside"),
            _ => Spoken("reaches over an edge of"),
        };
        return Spoken($"the claimed {Rounded.WithInterval(window.Claimed!, unit)} {lies} your own limit, {window.Window.Quantity.InWords()} {window.Window.Read().InWords(unit)}.");
    }

    private static OfferJudged? InPlace(VehicleOnBench bench, WantedKind kind, string claimed)
    {
        var (driveline, goals) = (bench.Driveline, bench.Goals);
        Candidate<T> Offered<T>(T part)
            where T : class
            => new(Spoken("offer"), part, Pool.Offered);
        return kind switch
        {
            WantedKind.Axle when ToldPart.Axle(claimed, Spoken("offer"), driveline.DrivingAxle).Understood(out var axle) => Offers.Judge(driveline, goals, Offered(axle)),
            WantedKind.Transmission when ToldPart.Gearbox(claimed, Spoken("offer"), driveline.Transmission).Understood(out var box) => Offers.Judge(driveline, goals, Offered(box)),
            WantedKind.Overdrive when ToldPart.Overdrive(claimed, Spoken("offer")).Understood(out var unit) => Offers.Judge(driveline, goals, Offered(unit)),
            WantedKind.Tyres or WantedKind.Wheels when ToldPart.Tyres(claimed, Spoken("offer"), driveline.Tyres).Understood(out var tyres) => Offers.Judge(driveline, goals, Offered<TyreSet>(tyres)),
            _ => null,
        };
    }
}
