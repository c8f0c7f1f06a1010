using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>Two measurements of one number agree.</summary>
/// <remarks>
/// <code>|x₁ − x₂| ≤ t₀.₉₇₅ · u(x₁ − x₂)</code>
/// <para>
/// Watch where they do not: every speed of the driveline stands on the one that counts, and one of the two is wrong, be it a slip of the count or a part
/// that is not the one it is taken for. Says nothing where all agree. Source: JCGM 100:2008, G.3; that the latest counts, or a better known one that agrees with it, is common practice.
/// Roll-outs that exclude each other leave room for all of them, by the rule of <see cref="LineThroughOrigin"/>.
/// </para>
/// </remarks>
internal sealed class MeasuredTwiceCheck : ICheck
{
    public string Id => "measured-twice";

    public string Title => Spoken("Measured twice");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
        => Again(driveline).Where(again => !again.Agrees).GroupBy(again => (again.Position, again.Number)).Select(group => Apart([.. group]));

    private static IEnumerable<MeasuredAgain> Again(Driveline driveline)
        => SpeedometerCheck.FoundTwice(driveline) is { } speedometer ? driveline.MeasuredAgain.Append(speedometer) : driveline.MeasuredAgain;

    private Finding Apart(IReadOnlyList<MeasuredAgain> apart)
    {
        var (used, unit) = (apart[0].Used, apart[0].Unit);
        var others = string.Join(", ", apart.Select(again => $"{Shown(again.Other, unit)} ({again.Other.Says})"));
        var says = apart[0].RoomForAll is { } room
            ? Said.As($"The {apart[0].Number} of the {apart[0].Position.InWords()} was found to be {Shown(used, unit)} ({used.Says}), but also {others}. They cannot all be right; it is computed with as {Shown(room, unit)}, which leaves room for them.")
            : Said.As($"The {apart[0].Number} of the {apart[0].Position.InWords()} is computed with as {Shown(used, unit)} ({used.Says}), but was also found to be {others}. They cannot all be right.");
        return this.Plain(
            [apart[0].Position], Verdict.Watch, Because.UnverifiedLimit, says,
            Spoken("what was measured before"),
            Spoken("measure it once more, and strike what is wrong from the page Measured")) with
        {
            Value = (apart[0].RoomForAll ?? used).Value,
            Unit = unit,
        };
    }

    private static string Shown(Known known, Unit unit) => Rounded.WithInterval(known.Value, unit);
}
