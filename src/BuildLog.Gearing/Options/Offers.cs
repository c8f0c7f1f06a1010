using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;

namespace BuildLog.Gearing.Options;

/// <summary>What can be said of a part on the spot, before the money is spent.</summary>
/// <param name="Verdict">Fits, watch or clash; what cannot be said yet is a watch.</param>
/// <param name="Reason">The sentence of the finding that decides.</param>
/// <param name="Findings">Every finding that is the part's doing, the worst first.</param>
/// <param name="Standing">Clashes that stand without it.</param>
public sealed record OfferJudged(Verdict Verdict, string Reason, IReadOnlyList<Finding> Findings, IReadOnlyList<StandingClash> Standing)
{
    /// <summary>What it does for the owner's goals: the one it meets worst; null where none could be said.</summary>
    public Finding? Goal => Said.Where(IsGoal).MinBy(finding => finding.Verdict);

    /// <summary>The worst of what is worse with it than now, the goals apart; null for nothing.</summary>
    public Finding? Worse => Said.Where(finding => !IsGoal(finding) && finding.Verdict != Verdict.Fits).MinBy(finding => finding.Verdict);

    /// <summary>The other axle, where it has to be geared alike; null where it stays.</summary>
    public Position? GearedAlike { get; init; }

    /// <summary>The driveline with it.</summary>
    public required Driveline Driveline { get; init; }

    /// <summary>What every check says of the driveline with it, counted: as any other way to the same driveline is.</summary>
    public required VerdictCounts Whole { get; init; }

    private IEnumerable<Finding> Said => Findings.Where(finding => finding.Verdict != Verdict.Open);

    internal static bool IsGoal(Finding finding) => finding.Source == Finding.OwnersGoal;
}

/// <summary>A clash that is there with the part and without it, and that another part would have to cure.</summary>
/// <param name="Finding">What it is with the part.</param>
/// <param name="IsFurtherOut">The part takes it further from what is wanted.</param>
public sealed record StandingClash(Finding Finding, bool IsFurtherOut);

/// <summary>Judges an offered part in the driveline it would go into, by what it changes there.</summary>
/// <remarks>
/// A finding is the part's doing where it is worse than before, or where it is about a wish that this part can meet: a cure is a number of it, or it names no
/// number and is about the part, and says something else than before. Any other clash stood already. A watch on anything but the owner's goals is its doing
/// only where it is new: one that was there quarrels with the goals, not with the part.
/// </remarks>
public static class Offers
{
    private static readonly string WordAlone = new OwnersWordCheck().Id;

    /// <summary>An axle, in place of the driving one; the other one of a four-wheel drive is geared alike.</summary>
    public static OfferJudged Judge(Driveline driveline, OwnersGoals goals, Candidate<Axle> offer)
        => Judge(driveline, BothAxles.With(driveline, offer.Part), goals, driveline.DrivingPosition) with
        {
            GearedAlike = BothAxles.Alike(driveline, offer.Part) is null ? null : driveline.OtherPosition,
        };

    /// <summary>An axle in place of the one that speeds are not computed through: it matches the other one, or it does not.</summary>
    public static OfferJudged JudgeOther(Driveline driveline, OwnersGoals goals, Candidate<Axle> offer)
        => Judge(driveline, BothAxles.At(driveline, driveline.OtherPosition, offer.Part), goals, driveline.OtherPosition);

    /// <summary>Both axles of a four-wheel drive, offered apart; null where they do not match, or nothing joins them.</summary>
    public static OfferJudged? JudgePair(Driveline driveline, OwnersGoals goals, Candidate<Axle> driving, Candidate<Axle> other)
    {
        var both = BothAxles.At(BothAxles.At(driveline, driveline.DrivingPosition, driving.Part), driveline.OtherPosition, other.Part);
        return BothAxles.Match(both) ? Judge(driveline, both, goals, driveline.DrivingPosition, driveline.OtherPosition) : null;
    }

    /// <summary>A gearbox in place of the fitted one, with the ends and gears that are told of it; every other part stays.</summary>
    public static OfferJudged Judge(Driveline driveline, OwnersGoals goals, Candidate<Transmission> offer)
        => Judge(driveline, driveline with { Transmission = offer.Part }, goals, Position.Transmission);

    /// <summary>An overdrive unit, in place of a fitted one or added. It changes what axle and tyres come to, so findings about the axle count too.</summary>
    public static OfferJudged Judge(Driveline driveline, OwnersGoals goals, Candidate<Overdrive> offer)
        => Judge(driveline, driveline with { Overdrive = offer.Part }, goals, Position.Overdrive, driveline.DrivingPosition);

    /// <summary>A set of wheels and tyres for all wheels, in place of what is fitted, front tyres of their own included.</summary>
    public static OfferJudged Judge(Driveline driveline, OwnersGoals goals, Candidate<TyreSet> offer)
        => Judge(driveline, driveline with { Tyres = offer.Part }, goals, Position.Tyres);

    private static OfferJudged Judge(Driveline before, Driveline after, OwnersGoals goals, params IReadOnlyList<Position> positions)
    {
        var stood = Keyed(before, goals).ToDictionary(each => each.Key, each => each.Finding);
        var whole = Keyed(after, goals).ToList();
        var counts = VerdictCounts.Of(whole.Select(each => each.Finding));
        List<Finding> doing = [];
        List<StandingClash> standing = [];

        // That an offer is known by a word alone needs no finding: it is counted or measured before it is bought.
        foreach (var (key, finding) in whole.Where(each => each.Finding.Check != WordAlone).OrderBy(each => each.Finding.Verdict))
        {
            var was = stood.GetValueOrDefault(key);
            if (IsItsDoing(finding, was, positions)) doing.Add(finding);
            else if (finding.Verdict == Verdict.Clash) standing.Add(new(finding, Outside(finding) > Outside(was!)));
        }

        return doing is [var worst, ..]
            ? new(worst.Verdict == Verdict.Open ? Verdict.Watch : worst.Verdict, worst.Says, doing, standing) { Driveline = after, Whole = counts }
            : new(Verdict.Watch, Spoken("No wish and no limit says anything of it yet."), [], standing) { Driveline = after, Whole = counts };
    }

    private static bool IsItsDoing(Finding finding, Finding? was, IReadOnlyList<Position> positions)
        => was is null || IsWorse(finding.Verdict, was.Verdict)
            || ((finding.Verdict != Verdict.Watch || OfferJudged.IsGoal(finding))
                && (finding.Windows.Count > 0
                    ? finding.Windows.Any(window => positions.Contains(window.Position))
                    : finding.Between.Any(positions.Contains) && finding.Says != was.Says));

    // A watch is worse than what could not be said.
    private static bool IsWorse(Verdict verdict, Verdict was) => verdict < was || (verdict == Verdict.Watch && was == Verdict.Open);

    // One check may find several things at one joint, such as one for each goal; it says them in the same order before and after.
    private static IEnumerable<((string Check, string Joint, int Place) Key, Finding Finding)> Keyed(Driveline driveline, OwnersGoals goals)
        => AllChecks.List.SelectMany(check => check.Look(driveline, goals)).GroupBy(finding => (finding.Check, Joint: string.Join(' ', finding.Between)))
            .SelectMany(group => group.Select((finding, place) => ((group.Key.Check, group.Key.Joint, place), finding)));

    // How far the value lies from what is wanted; none where no number says so.
    private static double Outside(Finding finding)
        => finding is { Value.Value: var value, Wanted: { } wanted } ? Math.Max(0, Math.Max(wanted.Low - value, value - wanted.High)) : 0;
}
