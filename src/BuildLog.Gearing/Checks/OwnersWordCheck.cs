using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>No number rests on the owner's word alone, or on an assumption.</summary>
/// <remarks>
/// Evidence in the order of trust: teeth counted, measured, maker's data, tag, owner's word, assumed. Verdict: watch for each part with a number of the last two,
/// naming it and the cheapest way to know better; one fits where there is none, nothing where no part has a number. A number that nobody knows is the matter of the check that needs it.
/// <para>Limit: our own order of trust, common practice.</para>
/// </remarks>
internal sealed class OwnersWordCheck : ICheck
{
    public string Id => "word";

    public string Title => Spoken("Evidence behind the numbers");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        var numbers = ToldNumber.Of(driveline).Where(number => number.Known is not null).ToList();
        var told = numbers.Where(number => number.Known!.Source is Source.OwnersWord or Source.Assumed).GroupBy(number => number.Position).ToList();
        return told.Count == 0
            ? numbers.All(number => number.Position is null) ? []
            : [Say([], Verdict.Fits, Because.Inside, Spoken("Every number rests on a count, a measurement, a tag or the maker's data."))]
            : told.Select(Judge);
    }

    private Finding Judge(IGrouping<Position?, ToldNumber> part)
    {
        var names = part.GroupBy(number => number.Known!.Source, (source, alike) => $"{string.Join(", ", alike.Select(number => number.Name))} ({source.InWords()})");
        var where = part.Key?.InWords() ?? Spoken("vehicle");
        return Say(part.Key is { } position ? [position] : [], Verdict.Watch, Because.UnverifiedLimit, $"The {where}: nothing but somebody's word for {string.Join(", ", names)}.") with
        {
            Advice = [.. part.Select(number => number.Cure).Distinct()],
        };
    }

    private Finding Say(IReadOnlyList<Position> between, Verdict verdict, Because because, Sentence says)
        => this.Plain(between, verdict, because, says, Spoken("order of trust in evidence, common practice"));
}
