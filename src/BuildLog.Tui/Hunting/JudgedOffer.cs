using BuildLog.Data.Costs;
using BuildLog.Data.Hunting;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
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
    public string InWords => string.Join(' ', ((string[])[$"{Verdict.InWords()}: {Reason}", IsTooDear ? Spoken("It costs more than it may.") : "", IsInOtherMoney ? Spoken("Its price is in another currency than what it may cost: compare them.") : "", Standing, With]).Where(words => words.Length > 0));

    /// <summary>What of a plan it was judged with; empty where it is hunted for none.</summary>
    public string With { get; private init; } = "";

    /// <summary>Nothing but the seller's word says that it does: it is counted before it is paid.</summary>
    private bool IsWordAlone { get; init; }

    /// <summary>What every check says of the driveline with it, counted; null where the claim makes no part.</summary>
    public VerdictCounts? Whole { get; private init; }

    /// <summary>It does only with the other axle geared alike, which nobody offers with it.</summary>
    private bool IsHalf { get; init; }

    /// <summary>Its price is in another currency than what it may cost, so nobody compares the two.</summary>
    public bool IsInOtherMoney { get; private init; }

    /// <summary>The rule that failed where the same, or its number, was rejected before; null where it was not.</summary>
    public RejectedBefore? Rejected { get; private init; }

    /// <param name="hunt">The part that is hunted, and what it would go on.</param>
    /// <param name="rejected">What was rejected for it before.</param>
    /// <param name="claimed">What is claimed of the part.</param>
    /// <param name="price">What it costs; null where nobody said.</param>
    /// <param name="what">What the offer is called.</param>
    /// <param name="notes">What else is told of it.</param>
    /// <param name="others">What else is on offer, for the other axle of a four-wheel drive; null for nothing.</param>
    public static JudgedOffer Of(
        HuntBench hunt, RejectedPlans rejected, string claimed, Money? price, string what = "", string notes = "", IReadOnlyList<Offer>? others = null)
    {
        var own = OfferJudgement.Of(hunt.Wanted, claimed, price, $"{what}\n{notes}");
        var judged = OfTheClaim(hunt, rejected, own, claimed, price, what, others ?? []);
        var isDoubtful = judged is { IsTooDear: true } or { Rejected: not null } or { IsHalf: true } or { IsInOtherMoney: true } or { IsWordAlone: true } || own.MustHaves.Any(must => must.Verdict == Verdict.Watch);
        return judged with
        {
            With = hunt.Says,
            Verdict = own.MustHaves.Any(must => must.Verdict == Verdict.Clash) ? Verdict.Clash : judged.Verdict == Verdict.Fits && isDoubtful ? Verdict.Watch : judged.Verdict,
            Reason = string.Join(' ', ((string[])[.. MustHaveWords.Others(own), judged.Reason, .. MustHaveWords.Untold(own)]).Select((said, k) => k == 0 ? said : Begun(said))),
        };
    }

    private static JudgedOffer OfTheClaim(HuntBench hunt, RejectedPlans rejected, OfferJudgement own, string claimed, Money? price, string what, IReadOnlyList<Offer> others)
    {
        var (wanted, bench) = (hunt.Wanted, hunt.Bench);
        var offer = new PlannedOffer(what.Length > 0 ? what : Spoken("offer"), Claim.Read(claimed));
        var claim = offer.Claim;
        var alone = InPlace(bench, wanted, offer);
        var pair = alone is { GearedAlike: not null } || (alone is { Verdict: Verdict.Clash } && IsOfTheMatch(bench, wanted)) ? OfferedPair.Of(bench, wanted, offer, others) : null;
        var inPlace = pair?.Together ?? alone;
        var window = own.Windows.Where(each => each.Claimed is not null).MinBy(each => each.Verdict);
        if (window is null && inPlace is null) return new(Verdict.Watch, claimed.Trim().Length == 0 ? Spoken("no number is claimed; count or measure it.") : Spoken($"nothing can be made of '{claimed}'; count or measure it."), own.IsTooDear);

        // First what it does for the goals, then what is worse with it. What is open is no verdict on the offer, but it is counted.
        var (goal, worse) = (inPlace?.Goal, inPlace?.Worse);
        var verdicts = ((Verdict?[])[window?.Verdict, goal?.Verdict, worse?.Verdict, IsOfTheMatch(bench, wanted) ? inPlace?.Verdict : null]).OfType<Verdict>().ToList();
        var position = HuntedPlace.Of(bench.Driveline, wanted);
        var before = inPlace is null || position is null ? null : rejected.Says(inPlace.Driveline, [.. hunt.Others, new(position.Value, offer.Text)]);
        string[] reasons =
        [
            before is null ? "" : $"{before.Says}.",
            claim is { IsWordAlone: false, Said.Length: > 0 } && Contradicts(claim, wanted.Kind) ? Spoken($"The count contradicts the seller: he says {AsWritten.Numbers(claim.Said)}, counted is {AsWritten.Numbers(claim.Counted)}.") : "",
            window is { Verdict: Verdict.Clash } && goal is not { Verdict: Verdict.Clash } ? OutsideWindow(window) : "",
            pair is null ? "" : Spoken($"only together with {pair.Other.What}, which is on offer for {pair.Other.Wanted.Title}: as a pair they match."),
            goal is null ? "" : $"{ForTheGoal(goal.Verdict)}: {goal.Says}",
            window is { Verdict: not Verdict.Clash } && (goal is null || window.Verdict < goal.Verdict) ? InWindow(window) : "",
            inPlace?.GearedAlike is { } other ? Spoken($"The {other.InWords()} has to be geared alike; this one alone would clash.") : "",
            worse is null ? "" : Spoken($"Worse with it: {worse.Says}"),
            goal is null && worse is null && inPlace is not null ? inPlace.Reason : "",
            claim.IsWordAlone ? Spoken($"{AsWritten.Numbers(claim.Said)} is only the seller's word: count or measure it before you pay.") : "",
            .. inPlace?.Driveline.Transmission is { } box && wanted.Kind == WantedKind.Transmission ? NotCounted(claim, box) : [],
            inPlace is null ? "" : Spoken($"The whole driveline with it, as Options and Plans count it: {Counts(inPlace.Whole)}."),
        ];
        return new(verdicts.Count == 0 ? Verdict.Watch : verdicts.Min(), string.Join(' ', reasons.Where(reason => reason.Length > 0).Select((reason, k) => k == 0 ? reason : Begun(reason))), own.IsTooDear)
        {
            Standing = inPlace is null ? "" : StandsAlready(inPlace.Standing),
            Rejected = before,
            Whole = inPlace?.Whole,
            IsWordAlone = claim.IsWordAlone,
            IsHalf = pair is not null || inPlace?.GearedAlike is not null,
            IsInOtherMoney = price is { } asked && wanted.Most is { } cap && asked.Currency != cap.Currency,
        };
    }

    // What follows a full stop begins a sentence.
    private static string Begun(string reason) => $"{char.ToUpper(reason[0], Language.Spoken.Culture)}{reason[1..]}";

    private static string ForTheGoal(Verdict verdict) => verdict switch
    {
        Verdict.Fits => Spoken("it meets the goal"),
        Verdict.Clash => Spoken("it misses the goal"),
        _ => Spoken("whether it meets the goal is not sure"),
    };

    private static string StandsAlready(IReadOnlyList<StandingClash> clashes)
        => clashes.Count == 0 ? "" : Spoken($"Stands already, not the offer's doing: {string.Join(", ", clashes.Select(clash => $"{clash.Finding.Title}{(clash.IsFurtherOut ? Spoken(" (further out with it)") : "")}"))}.");

    // Start and crawl hang on the gear that is counted last, if at all; what hangs on gears that nobody told is left open.
    private static IEnumerable<string> NotCounted(Claim claim, Transmission box)
    {
        if (box.Untold is { } untold) yield return Spoken($"{untold.Says}, so what hangs on that is left open{(untold.First ? Spoken(", start and crawl among it") : "")}: {untold.Cure}.");
        if (!claim.IsWordAlone && box.First is { Ratio.Source: Source.OwnersWord } first) yield return Spoken($"Gear {first.Name} is only the seller's word, {first.Ratio.Says}: count it too, start and crawl hang on it.");
    }

    private static string InWindow(WindowJudgement window)
    {
        var lies = window.Verdict == Verdict.Fits ? Spoken("lies inside") : Spoken("reaches over an edge of");
        return Spoken($"the claimed {Rounded.WithInterval(window.Claimed!, UnitOf(window))} {lies} the window kept with this hunt, {window.Window.Quantity.InWords()} {window.Window.Read().InWords(UnitOf(window))}.");
    }

    // Plainly and first: whatever it does for the goals, it is not what is hunted.
    private static string OutsideWindow(WindowJudgement window)
        => Spoken($"outside the window kept with this hunt, {window.Window.Quantity.InWords()} {window.Window.Read().InWords(UnitOf(window))}: it is {Rounded.WithInterval(window.Claimed!, UnitOf(window))}.");

    private static Unit UnitOf(WindowJudgement window) => WantedWindows.UnitOf(window.Window.Quantity);

    private static string Counts(VerdictCounts counts) => Spoken($"{counts.Clash} clash, {counts.Open} open, {counts.Watch} watch");

    // The axle that speeds are not computed through meets no goal: it matches the other one, or it does not.
    private static bool IsOfTheMatch(VehicleOnBench bench, WantedPart wanted)
        => wanted.Kind == WantedKind.Axle && HuntedPlace.Of(bench.Driveline, wanted) != bench.Driveline.DrivingPosition;

    private static bool Contradicts(Claim claim, WantedKind kind) => kind switch
    {
        WantedKind.Axle => Differ(ToldPart.Axle(claim.Said, "", null), ToldPart.Axle(claim.Counted, "", null), axle => axle.Ratio),
        WantedKind.Overdrive => Differ(ToldPart.Overdrive(claim.Said, ""), ToldPart.Overdrive(claim.Counted, ""), unit => unit.Ratio),
        WantedKind.Transmission => ToldPart.Gearbox(claim, "", null).Understood(out var box) && box.Gears.Any(gear => gear.Quoted is { } word && !word.Value.AgreesWith(gear.Ratio.Value)),
        WantedKind.Tyres or WantedKind.Wheels => Differ(ToldPart.Tyres(claim.Said, "", null), ToldPart.Tyres(claim.Counted, "", null), set => set.RollingCircumference),
        _ => false,
    };

    private static bool Differ<T>(Parsed<T> said, Parsed<T> counted, Func<T, Known?> number)
        where T : class
        => said.Understood(out var one) && counted.Understood(out var other) && number(one) is { } word && number(other) is { } count && !word.Value.AgreesWith(count.Value);

    private static OfferJudged? InPlace(VehicleOnBench bench, WantedPart wanted, PlannedOffer offer)
    {
        var (driveline, goals) = (bench.Driveline, bench.Goals);
        Candidate<T> Offered<T>(T part)
            where T : class
            => new(offer.What, part, Pool.Offered);
        return wanted.Kind switch
        {
            WantedKind.Axle when IsOfTheMatch(bench, wanted) => ToldPart.Axle(offer.Claim, offer.What, driveline.OtherAxle).Understood(out var other) ? Offers.JudgeOther(driveline, goals, Offered(other)) : null,
            WantedKind.Axle when ToldPart.Axle(offer.Claim, offer.What, driveline.DrivingAxle).Understood(out var axle) => Offers.Judge(driveline, goals, Offered(axle)),
            WantedKind.Transmission when ToldPart.Gearbox(offer.Claim, offer.What, driveline.Transmission).Understood(out var box) => Offers.Judge(driveline, goals, Offered(box)),
            WantedKind.Overdrive when ToldPart.Overdrive(offer.Claim, offer.What).Understood(out var unit) => Offers.Judge(driveline, goals, Offered(unit)),
            WantedKind.Tyres or WantedKind.Wheels when ToldPart.Tyres(offer.Claim, offer.What, driveline.Tyres).Understood(out var tyres) => Offers.Judge(driveline, goals, Offered<TyreSet>(tyres)),
            _ => null,
        };
    }
}
