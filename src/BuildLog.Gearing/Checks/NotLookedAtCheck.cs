using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>Somebody has looked at every number and joint of the marriage.</summary>
/// <remarks>
/// Many checks stay silent until somebody has begun with their matter, so that a vehicle is not buried in questions. This one names in one breath all that
/// nobody has looked at, part by part, with the cheapest way to know each; where all was, it says nothing.
/// </remarks>
internal sealed class NotLookedAtCheck : ICheck
{
    public string Id => "not-looked-at";

    public string Title => Spoken("Not looked at");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        // The same thing may be asked for in two ways; the vehicle as a whole comes last.
        var unlooked = Unlooked(driveline).DistinctBy(look => look with { Way = "" }).OrderBy(look => look.Part ?? (Position)int.MaxValue).ToList();
        if (unlooked.Count == 0) yield break;

        yield return this.Plain(
            [], Verdict.Open, Because.MissingInput, $"Nobody has looked at these yet: {string.Join("; ", unlooked.GroupBy(look => look.Whose, look => look.Thing).Select(part => $"{part.Key}: {string.Join(", ", part)}"))}.",
            Spoken("what the other checks need"), [.. unlooked.GroupBy(look => look with { Thing = "" }).Select(Way)]);
    }

    /// <summary>All that nobody has looked at, in the order of the checks.</summary>
    internal static IEnumerable<Unlooked> Unlooked(Driveline driveline) => AllChecks.List.OfType<ILookedAt>().SelectMany(check => check.NotLookedAt(driveline));

    private static Sentence Way(IGrouping<Unlooked, Unlooked> looks)
        => $"{looks.Key.Whose}, {string.Join(", ", looks.Select(look => look.Thing))}: {looks.Key.Way}";
}
