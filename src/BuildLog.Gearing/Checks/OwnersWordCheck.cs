using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Checks;

/// <summary>No number rests on the owner's word alone, or on an assumption.</summary>
/// <remarks>
/// Evidence in the order of trust: teeth counted, measured, maker's data, tag, owner's word, assumed. Verdict: watch for each part with a number of the last two,
/// naming it and the cheapest way to know better; one fits where there is none. A number that nobody knows is the matter of the check that needs it.
/// <para>Limit: our own order of trust, common practice.</para>
/// </remarks>
public sealed class OwnersWordCheck : ICheck
{
    public string Id => "word";

    public string Title => "Owner's word";

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        var numbers = Numbers(driveline).Where(number => number.Known is not null).ToList();
        if (numbers.Count == 0) return [];

        var told = numbers.Where(number => number.Known!.Source is Source.OwnersWord or Source.Assumed).GroupBy(number => number.Position).ToList();
        return told.Count == 0
            ? [Say([], Verdict.Fits, Because.Inside, "Every number rests on a count, a measurement, a tag or the maker's data.")]
            : told.Select(Judge);
    }

    private sealed record Number(Position Position, string Name, Known? Known, string Cure);

    private Finding Judge(IGrouping<Position, Number> part)
    {
        var names = part.GroupBy(number => number.Known!.Source, (source, alike) => $"{string.Join(", ", alike.Select(number => number.Name))} ({source.InWords()})");
        return Say([part.Key], Verdict.Watch, Because.UnverifiedLimit, $"Nothing but somebody's word for the {part.Key.InWords()}: {string.Join(", ", names)}.") with
        {
            Advice = [.. part.Select(number => number.Cure).Distinct()],
        };
    }

    private static IEnumerable<Number> Numbers(Driveline driveline)
    {
        yield return new(Position.Engine, "idle", driveline.Engine?.Idle, "read idle and redline off the maker's data");
        yield return new(Position.Engine, "redline", driveline.Engine?.Redline, "read idle and redline off the maker's data");
        foreach (var gear in driveline.Transmission?.Gears ?? [])
            yield return new(Position.Transmission, $"gear {gear.Name}", gear.Ratio, "count the gears: ten output turns in each");

        yield return new(Position.Overdrive, "ratio", driveline.Overdrive?.Ratio, "count the overdrive: ten output turns");
        yield return new(Position.TransferCase, "high ratio", driveline.TransferCase?.High, "count the transfer case: ten output turns in each range");
        yield return new(Position.TransferCase, "low ratio", driveline.TransferCase?.Low, "count the transfer case: ten output turns in each range");
        yield return new(Position.RearAxle, "ratio", driveline.RearAxle?.Ratio, "count the axle's turns: ten wheel turns, one wheel held");
        yield return new(Position.FrontAxle, "ratio", driveline.FrontAxle?.Ratio, "count the front axle's turns: ten wheel turns, one wheel held");
        yield return new(Position.Tyres, "circumference", driveline.Tyres?.RollingCircumference, "roll the tyres out with the vehicle standing on them");
    }

    private Finding Say(IReadOnlyList<Position> between, Verdict verdict, Because because, string says)
        => this.Plain(between, verdict, because, says, "order of trust in evidence, common practice");
}
