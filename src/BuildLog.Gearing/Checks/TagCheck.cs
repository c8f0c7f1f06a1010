using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Gearing.Checks;

/// <summary>What the tag says of an axle is what was counted.</summary>
/// <remarks>
/// <code>they agree if |i_counted − i_tag| ≤ t₀.₉₇₅ · u(i_counted − i_tag)</code>
/// <para>
/// Verdict: fits where they agree. Where they do not, watch: the count is what is computed with, and a tag that stayed on when the gears were changed
/// spoils no marriage; but one of the two is wrong. Open where there is a tag and no count.
/// </para>
/// <para>Limit: the tag itself, which nobody has verified. Formula: see <see cref="TagAgainstCount"/>.</para>
/// </remarks>
public sealed class TagCheck : ICheck
{
    public string Id => "tag";

    public string Title => "Tag against count";

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        if (driveline.RearAxle is { } rear && Judge(rear, Position.RearAxle) is { } first) yield return first;
        if (driveline.FrontAxle is { } front && Judge(front, Position.FrontAxle) is { } second) yield return second;
    }

    private Finding? Judge(Axle axle, Position position) => axle switch
    {
        { Ratio.Source: Source.Tag } => Say(position, Verdict.Open, Because.MissingInput, $"The {position.InWords()} ratio {Words(axle.Ratio)} is only the tag's; nobody has counted it.") with
        {
            Advice = ["count the axle's turns: ten wheel turns, one wheel held"],
        },
        { Ratio: { } counted, Quoted: { } quoted } => Compare(position, new(quoted, counted)),
        _ => null,
    };

    private Finding Compare(Position position, TagAgainstCount pair)
    {
        var says = pair.Agrees ? pair.Says : $"{pair.Says} The gears may have been changed since, or the count slipped.";
        return Say(position, pair.Agrees ? Verdict.Fits : Verdict.Watch, pair.Agrees ? Because.Inside : Because.UnverifiedLimit, says) with
        {
            Value = pair.Counted.Value,
            Advice = pair.Agrees ? [] : Cures(pair),
        };
    }

    private static IReadOnlyList<string> Cures(TagAgainstCount pair)
    {
        var tag = Words(pair.Tag);
        return pair.Counted.Source == Source.TeethCounted
            ? [$"strike the {tag} off: the teeth are exact"]
            : [.. Slip(pair), $"count the teeth: they decide between {tag} and {Rounded.Value(pair.Counted.Value, Units.One)}"];
    }

    // A count that is twice or half the tag is the forgotten wheel.
    private static IEnumerable<string> Slip(TagAgainstCount pair)
    {
        foreach (var (factor, asks) in ((double, string)[])[(2, "Did one wheel stand still, though the count says that both turned?"), (0.5, "Did both wheels turn, though the count says that one was held?")])
        {
            if (new TagAgainstCount(pair.Tag, pair.Counted with { Value = pair.Counted.Value * factor }).Agrees) yield return $"{asks} Then count and tag agree.";
        }
    }

    private static string Words(Known known) => known.Says.Length > 0 ? known.Says : Rounded.Value(known.Value, Units.One);

    private Finding Say(Position position, Verdict verdict, Because because, string says)
        => this.Plain([position], verdict, because, says, "the axle's tag, as far as it can be trusted");
}
