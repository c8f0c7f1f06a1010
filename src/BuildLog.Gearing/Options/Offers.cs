using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;

namespace BuildLog.Gearing.Options;

/// <summary>What can be said of a part on the spot, before the money is spent.</summary>
/// <param name="Verdict">Fits, watch or clash; what cannot be said yet is a watch.</param>
/// <param name="Reason">The sentence of the finding that decides.</param>
/// <param name="Findings">Every finding that the part takes part in, the worst first.</param>
public sealed record OfferJudged(Verdict Verdict, string Reason, IReadOnlyList<Finding> Findings);

/// <summary>Judges an offered part in the driveline it would go into, by every check it takes part in.</summary>
public static class Offers
{
    private static readonly string WordAlone = new OwnersWordCheck().Id;

    /// <summary>An axle, in place of the driving one.</summary>
    public static OfferJudged Judge(Driveline driveline, OwnersGoals goals, Candidate<Axle> offer)
        => Judge(driveline.With(driveline.Transmission, driveline.Overdrive, offer.Part, driveline.Tyres), goals, driveline.DrivingPosition);

    /// <summary>A gearbox.</summary>
    public static OfferJudged Judge(Driveline driveline, OwnersGoals goals, Candidate<Transmission> offer)
        => Judge(driveline with { Transmission = offer.Part }, goals, Position.Transmission);

    /// <summary>Every gear behind it changes what axle and tyres come to, so their findings count too.</summary>
    public static OfferJudged Judge(Driveline driveline, OwnersGoals goals, Candidate<Overdrive> offer)
        => Judge(driveline with { Overdrive = offer.Part }, goals, Position.Overdrive, driveline.DrivingPosition);

    /// <summary>A set of wheels and tyres.</summary>
    public static OfferJudged Judge(Driveline driveline, OwnersGoals goals, Candidate<TyreSet> offer)
        => Judge(driveline with { Tyres = offer.Part }, goals, Position.Tyres);

    private static OfferJudged Judge(Driveline whole, OwnersGoals goals, params IReadOnlyList<Position> positions)
    {
        // That an offer is known by a word alone needs no finding: it is counted or measured before it is bought.
        var concerned = AllChecks.Look(whole, goals)
            .Where(finding => finding.Check != WordAlone && (finding.Check == "cruise" || finding.Between.Any(positions.Contains)))
            .ToList();
        return concerned is [var worst, ..]
            ? new(worst.Verdict == Verdict.Open ? Verdict.Watch : worst.Verdict, worst.Says, concerned)
            : new(Verdict.Watch, "No wish and no limit says anything of it yet.", []);
    }
}
