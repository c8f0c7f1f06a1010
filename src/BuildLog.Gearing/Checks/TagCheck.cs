using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Gearing.Checks;

/// <summary>What a tag or a table says of an axle, a gear or an overdrive is what was counted.</summary>
/// <remarks>
/// <code>they agree if |i_counted − i_tag| ≤ t₀.₉₇₅ · u(i_counted − i_tag)</code>
/// <para>
/// Verdict: fits where they agree. Where they do not, watch: the count is what is computed with, and a tag that stayed on when the gears were changed
/// spoils no marriage; but one of the two is wrong. Open where there is an axle's tag and no count.
/// </para>
/// <para>A gearbox has one finding: the gears that part from what is said of them, or that all agree.</para>
/// <para>Limit: the tag itself, which nobody has verified. Formula: see <see cref="TagAgainstCount"/>.</para>
/// </remarks>
internal sealed class TagCheck : ICheck
{
    public string Id => "tag";

    public string Title => Spoken("Tag against count");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        if (driveline.Transmission is { } box && Gearbox(box) is { } gears) yield return gears;
        if (driveline.Overdrive is { Ratio: { } ratio, Quoted: { } quoted }) yield return Compare(Position.Overdrive, new(quoted, ratio));
        if (driveline.RearAxle is { } rear && Judge(rear, Position.RearAxle) is { } first) yield return first;
        if (driveline.FrontAxle is { } front && Judge(front, Position.FrontAxle) is { } second) yield return second;
    }

    private Finding? Judge(Axle axle, Position position) => axle switch
    {
        { Ratio.Source: Source.Tag } => Say(position, Verdict.Open, Because.MissingInput, $"The {position.InWords()} ratio {Words(axle.Ratio)} is only the tag's; nobody has counted it.") with
        {
            Advice = [Spoken("count the axle's turns: ten wheel turns, one wheel held")],
        },
        { Ratio: { } counted, Quoted: { } quoted } => Compare(position, new(quoted, counted)),
        _ => null,
    };

    private Finding? Gearbox(Transmission box)
    {
        var pairs = box.Gears.Where(gear => gear.Quoted is not null).Select(gear => (gear.Name, Pair: new TagAgainstCount(gear.Quoted!, gear.Ratio))).ToList();
        var apart = pairs.Where(gear => !gear.Pair.Agrees).ToList();
        return pairs.Count == 0 ? null
            : apart.Count == 0 ? Say(Position.Transmission, Verdict.Fits, Because.Inside, Spoken("Each gear that was counted is what is said of it."))
            : Say(Position.Transmission, Verdict.Watch, Because.UnverifiedLimit, string.Join(" ", apart.Select(gear => Spoken($"Gear {gear.Name}: {gear.Pair.Says}")))) with
            {
                Value = apart[0].Pair.Counted.Value,
                Advice = [.. apart.Select(gear => gear.Pair.Counted.Source == Source.TeethCounted
                    ? Spoken($"strike the {Words(gear.Pair.Tag)} of gear {gear.Name} off: the teeth are exact")
                    : Spoken($"count gear {gear.Name} again over ten output turns, or its teeth"))],
            };
    }

    private Finding Compare(Position position, TagAgainstCount pair)
    {
        var says = pair.Agrees ? pair.Says : Spoken($"{pair.Says} The gears may have been changed since, or the count slipped.");
        return Say(position, pair.Agrees ? Verdict.Fits : Verdict.Watch, pair.Agrees ? Because.Inside : Because.UnverifiedLimit, says) with
        {
            Value = pair.Counted.Value,
            Advice = pair.Agrees ? [] : [.. position == Position.Overdrive ? [] : TwoSpeeds(pair), .. Cures(pair)],
        };
    }

    private static IReadOnlyList<string> Cures(TagAgainstCount pair)
    {
        var tag = Words(pair.Tag);
        return pair.Counted.Source == Source.TeethCounted
            ? [Spoken($"strike the {tag} off: the teeth are exact")]
            : [.. Slip(pair), Spoken($"count the teeth: they decide between {tag} and {Rounded.Value(pair.Counted.Value, Units.One)}")];
    }

    private static IEnumerable<string> Slip(TagAgainstCount pair)
        => RatioTraps.ForgottenWheel(factor => new TagAgainstCount(pair.Tag, pair.Counted with { Value = pair.Counted.Value * factor }).Agrees);

    // The tag names one speed of a two-speed axle, the count may be of the other.
    private static IEnumerable<string> TwoSpeeds(TagAgainstCount pair)
    {
        var (tag, count) = (pair.Tag.Value, pair.Counted.Value);
        var step = (count.Value > tag.Value ? TwoSpeedAxle.Counted(tag, count) : TwoSpeedAxle.Counted(count, tag)).Step;
        if (TwoSpeedAxle.UsualStep.Contains(step.Value))
            yield return Spoken($"Is it a two-speed axle, one told in low and one in high? The step would be {Rounded.Value(step, Units.One)}.");
    }

    private static string Words(Known known) => known.Says.Length > 0 ? known.Says : Rounded.Value(known.Value, Units.One);

    private Finding Say(Position position, Verdict verdict, Because because, Sentence says)
        => this.Plain([position], verdict, because, says, Spoken("what is said of it, as far as that can be trusted"));
}
