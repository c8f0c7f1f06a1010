using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Options;

/// <summary>Why combinations were thrown out, and how many.</summary>
public sealed record Exclusion(long Combinations, string Reason)
{
    /// <summary><c>3,120 thrown out: Tyre diameter over the limit</c>.</summary>
    public string InWords => Spoken($"{Combinations:N0} thrown out: {Reason}");
}

/// <summary>Takes out of the lists what cannot be in any answer, before anything is combined.</summary>
internal static class Sorting
{
    /// <exception cref="RefusedException">Nothing is left of one of the lists; the sentence says why.</exception>
    public static (CandidateParts Parts, IReadOnlyList<Exclusion> Exclusions) Of(Driveline driveline, OwnersGoals goals, CandidateParts parts)
    {
        var exclusions = new List<Exclusion>();
        var left = parts;
        left = left with { Gearboxes = Keep(Spoken("gearbox"), left.Gearboxes, left, box => box.Part!.Gears.Count == 0 ? Spoken("gear ratios not known") : null, exclusions) };
        left = left with { Overdrives = Keep(Spoken("overdrive"), left.Overdrives, left, unit => unit.Part is { Ratio: null } ? Spoken("overdrive ratio not known") : null, exclusions) };
        left = left with { Axles = Keep(Spoken("axle"), left.Axles, left, axle => axle.Part!.Ratio is null ? Spoken("axle ratio not known") : null, exclusions) };
        left = left with { Tyres = Keep(Spoken("set of tyres"), left.Tyres, left, tyres => Reason(driveline, goals, tyres), exclusions) };
        return (left, exclusions);
    }

    // What is in place may clash: it is what the others are compared with.
    private static string? Reason(Driveline driveline, OwnersGoals goals, Candidate<TyreSet> tyres)
        => tyres.Part!.On(driveline.DrivingPosition).RollingCircumference is null ? Spoken("tyre circumference not known")
            : tyres.IsInPlace ? null
            : SeparableChecks.OfTyres.SelectMany(check => check.Look(driveline with { Tyres = tyres.Part }, goals))
                .FirstOrDefault(finding => finding.Verdict == Verdict.Clash) is { } clash ? Spoken($"{clash.Title} over the limit")
            : null;

    private static IReadOnlyList<Candidate<T>> Keep<T>(
        string what, IReadOnlyList<Candidate<T>> candidates, CandidateParts all, Func<Candidate<T>, string?> reason, List<Exclusion> exclusions)
        where T : class
    {
        if (candidates.Count == 0) throw new RefusedException("empty-pool", Spoken($"There is no {what} to choose from."), "owned,listed");

        var judged = candidates.Select(candidate => (Candidate: candidate, Why: candidate.Barred ?? reason(candidate))).ToList();
        var thrown = judged.Where(entry => entry.Why is not null).GroupBy(entry => entry.Why!).ToList();
        if (thrown.Sum(group => group.Count()) == candidates.Count)
            throw new RefusedException("nothing-left", Spoken($"No {what} is left to choose from: {string.Join(", ", thrown.Select(group => group.Key))}."), "");

        exclusions.AddRange(thrown.Select(group => new Exclusion(group.Count() * (all.Count / candidates.Count), group.Key)));
        return [.. judged.Where(entry => entry.Why is null).Select(entry => entry.Candidate)];
    }
}
