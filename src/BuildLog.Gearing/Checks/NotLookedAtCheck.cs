using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;

namespace BuildLog.Gearing.Checks;

/// <summary>Somebody has looked at every joint of the marriage.</summary>
/// <remarks>
/// The checks of joints stay silent until one side of them was looked at, so that a vehicle is not buried in questions. This one names in one breath all that
/// nobody has looked at, part by part; where all was, it says nothing. The cure of each is to look, and to write it down with the part.
/// </remarks>
internal sealed class NotLookedAtCheck : ICheck
{
    public string Id => "not-looked-at";

    public string Title => Spoken("Joints not looked at");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        var parts = AllChecks.List.OfType<ILookedAt>().SelectMany(check => check.NotLookedAt(driveline)).Distinct()
            .GroupBy(look => look.Part, look => look.Thing).OrderBy(part => part.Key).ToList();
        if (parts.Count == 0) yield break;

        yield return this.Plain(
            [], Verdict.Open, Because.MissingInput, $"Nobody has looked at these yet: {string.Join("; ", parts.Select(Words))}.", Spoken("the joints of the marriage"),
            Spoken("look at them, and write each down with its part"));
    }

    private static string Words(IGrouping<Position, string> part) => $"{part.Key.InWords()}: {string.Join(", ", part)}";
}
