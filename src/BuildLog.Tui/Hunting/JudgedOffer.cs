using BuildLog.Data.Costs;
using BuildLog.Data.Hunting;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Hunting;

/// <summary>Whether an offered part would do, before the money is spent: its claim against the windows that are hunted, and what it changes in the driveline it would go into.</summary>
/// <param name="Verdict">The worse of the two; a claim that says nothing is a watch, and so is what fits and costs too much.</param>
/// <param name="Reason">The sentence that decides.</param>
/// <param name="IsTooDear">It costs more than it may.</param>
internal sealed record JudgedOffer(Verdict Verdict, string Reason, bool IsTooDear)
{
    /// <summary>Clashes that stand without it, as a sentence; empty where there are none.</summary>
    public string Standing { get; private init; } = "";

    /// <summary><c>watch: no number is claimed; count it. It costs more than it may.</c></summary>
    public string InWords => string.Join(' ', ((string[])[$"{Verdict.InWords()}: {Reason}", IsTooDear ? Spoken("It costs more than it may.") : "", Standing]).Where(words => words.Length > 0));

    public static JudgedOffer Of(VehicleOnBench bench, WantedPart wanted, string claimed, Money? price)
        => OfTheClaim(bench, wanted, claimed, price) is var judged && judged is { IsTooDear: true, Verdict: Verdict.Fits } ? judged with { Verdict = Verdict.Watch } : judged;

    private static JudgedOffer OfTheClaim(VehicleOnBench bench, WantedPart wanted, string claimed, Money? price)
    {
        var judged = OfferJudgement.Of(wanted, claimed, price);
        var inPlace = InPlace(bench, wanted.Kind, claimed);
        var window = judged.Windows.Where(each => each.Claimed is not null).MinBy(each => each.Verdict);
        if (window is null && inPlace is null) return new(Verdict.Watch, claimed.Trim().Length == 0 ? Spoken("no number is claimed; count or measure it.") : Spoken($"nothing can be made of '{claimed}'; count or measure it."), judged.IsTooDear);

        // What is open is no verdict on the offer, but it is said.
        var worst = inPlace?.Findings.Where(finding => finding.Verdict != Verdict.Open).MinBy(finding => finding.Verdict);
        var open = inPlace?.Findings.Count(finding => finding.Verdict == Verdict.Open) ?? 0;
        var stillOpen = open == 0 ? "" : Spoken($" Still open about it: {open}.");
        var standing = inPlace is null ? "" : StandsAlready(inPlace.Standing);
        if (window is not null && (worst is null || window.Verdict <= worst.Verdict)) return new(window.Verdict, InWindow(window) + stillOpen, judged.IsTooDear) { Standing = standing };

        return (worst is null ? new JudgedOffer(Verdict.Watch, inPlace!.Reason, judged.IsTooDear) : new(worst.Verdict, worst.Says + stillOpen, judged.IsTooDear)) with { Standing = standing };
    }

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
        return Spoken($"the claimed {Rounded.WithInterval(window.Claimed!, unit)} {lies} the {window.Window.Quantity.InWords()} wanted, {window.Window.Read().InWords(unit)}.");
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
