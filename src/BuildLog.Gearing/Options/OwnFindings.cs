using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;

namespace BuildLog.Gearing.Options;

/// <summary>Gathers, from the looks at each part alone, what the checks that do not separate will say of vehicle or part in every combination.</summary>
/// <remarks>
/// A finding is a part's own where it names that part and no other that is searched, and is said too where nothing is known of those others. It is the vehicle's where it names none
/// of them, and is said beside every part alone; that two parts together might change it is not seen. So the sum is the least that a combination comes to.
/// </remarks>
internal sealed class OwnFindings
{
    private static readonly Dictionary<string, ICheck> Asked =
        AllChecks.List.Where(check => check is not NotLookedAtCheck && SeparableChecks.All.All(other => other.Id != check.Id)).ToDictionary(check => check.Id);

    private static readonly Axle AnyAxle = new("", null);

    private static readonly TyreSet AnyTyres = new("", null, null);

    private readonly Driveline driveline;
    private readonly OwnersGoals goals;
    private readonly CandidateParts parts;
    private readonly Combination inPlace;
    private readonly Position[] searched;
    private readonly bool isUnlooked;
    private readonly Brought brought;
    private readonly Lock hearing = new();
    private HashSet<(string Check, Verdict Verdict, string Says)>? vehicle;

    /// <param name="driveline">What stays.</param>
    /// <param name="goals">The wishes.</param>
    /// <param name="parts">What is combined.</param>
    public OwnFindings(Driveline driveline, OwnersGoals goals, CandidateParts parts)
    {
        (this.driveline, this.goals, this.parts, inPlace) = (driveline, goals, parts, Combination.InPlace(parts));

        // The other axle of a four-wheel drive goes with the driving one.
        searched = [Position.Transmission, Position.Overdrive, driveline.DrivingPosition, driveline.OtherPosition, Position.Tyres, Position.FrontTyres];
        isUnlooked = IsUnlooked(driveline.With(null, null, null, null));
        brought = Brought.Nothing(parts);
    }

    /// <summary>What they come to.</summary>
    public Brought Sum
    {
        get
        {
            var left = vehicle ?? [];
            int Count(Verdict verdict) => left.Count(said => said.Verdict == verdict);
            return brought with { Vehicle = new(new(Count(Verdict.Clash), Count(Verdict.Open), Count(Verdict.Watch), 0), isUnlooked) };
        }
    }

    /// <summary>Takes in a look at one part beside what is in place, or at that itself; from any thread.</summary>
    public void Hear(Combination at, IReadOnlyList<Finding> findings)
    {
        var said = findings.Where(finding => finding.Verdict != Verdict.Fits && Asked.ContainsKey(finding.Check)).ToList();
        lock (hearing)
        {
            var here = said.Where(finding => !finding.Between.Any(searched.Contains)).Select(finding => (finding.Check, finding.Verdict, finding.Says)).ToHashSet();
            if (vehicle is null) vehicle = here;
            else vehicle.IntersectWith(here);
        }

        var (box, unit, axle, tyres) = (parts.Gearboxes[at.Gearbox].Part, parts.Overdrives[at.Overdrive].Part, parts.Axles[at.Axle].Part, parts.Tyres[at.Tyres].Part);
        if (at == inPlace with { Gearbox = at.Gearbox })
            brought.Gearboxes[at.Gearbox] = Of(said, driveline.With(box, null, AnyAxle, AnyTyres), driveline.With(box, null, null, null), Position.Transmission);
        if (at == inPlace with { Overdrive = at.Overdrive })
            brought.Overdrives[at.Overdrive] = Of(said, driveline.With(null, unit, AnyAxle, AnyTyres), driveline.With(null, unit, null, null), Position.Overdrive);
        if (at == inPlace with { Axle = at.Axle })
            brought.Axles[at.Axle] = Of(said, driveline.With(null, null, axle, AnyTyres), driveline.With(null, null, axle, null), driveline.DrivingPosition);
        if (at == inPlace with { Tyres = at.Tyres })
            brought.Tyres[at.Tyres] = Of(said, driveline.With(null, null, AnyAxle, tyres), driveline.With(null, null, null, tyres), Position.Tyres, Position.FrontTyres);
    }

    private PartBrings Of(List<Finding> said, Driveline besideAny, Driveline bare, params Position[] own)
        => new(
            VerdictCounts.Of(said.Where(finding => finding.Between.Any(own.Contains) && !finding.Between.Except(own).Any(searched.Contains) && IsSaid(finding, besideAny))),
            !isUnlooked && IsUnlooked(bare));

    private bool IsSaid(Finding finding, Driveline driveline)
        => Asked[finding.Check].Look(driveline, goals).Any(other => other.Verdict == finding.Verdict && other.Says == finding.Says);

    private static bool IsUnlooked(Driveline driveline) => NotLookedAtCheck.Unlooked(driveline).Any();
}
