using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Tui.Measurements;

/// <summary>An axle's turns: the ratio so far, which axle that may be, and how many turns more would settle it.</summary>
public sealed class AxleTally(string part, Wheels wheels) : RatioTally(part, CountedEnds.Axle)
{
    private static readonly CountPrecision ReadAtTheEnd = new();

    public override string Title => Spoken($"Count turns: {Part}");

    public override string HelpPage => "TurnCount";

    public override string Driven => wheels == Wheels.Each ? Spoken("left wheel") : base.Driven;

    public override string? OtherDriven => wheels == Wheels.Each ? Spoken("right wheel") : null;

    /// <summary>Which wheels turn.</summary>
    public Wheels Wheels => wheels;

    protected override Parsed<TurnCount> CountOf(string reading)
        => TurnReading.Read(reading, wheels).Then(read => Parsed.From(() => TurnCount.Of([read], NotReadYet)));

    protected override IEnumerable<string> Says(TurnCount count)
    {
        var candidates = RatioCandidates.For(count.Ratio).Ranked;
        return candidates.Count == 0
            ? [Spoken("No ratio that is sold lies near it: is the other wheel doing what you said?")]
            : [Spoken($"May be {string.Join(", ", candidates.Take(4).Select(candidate => candidate.Name))}."), .. ToSettle(candidates)];
    }

    // Of one wheel; where both are counted they share what the propshaft does.
    private int CountedTurns => OtherDriven is null ? DrivenTurns : (DrivenTurns + OtherDrivenTurns) / 2;

    private string WheelTurns => OtherDriven is null ? Spoken("wheel turns") : Spoken("turns of each wheel");

    /// <summary>Once two ratios that are sold can be told apart; where only one can be meant, after the usual turns.</summary>
    public override bool IsEnough => DrivenTurns > 0 && SettledDrivingTurns > 0 && CountSoFar.Understood(out var count)
        && (RatioCandidates.For(count.Ratio).Ranked is [var best, var second, ..] ? More(best, second) <= 0 : base.IsEnough);

    private int More(RatioCandidate best, RatioCandidate second) => TurnCount.WheelTurnsToTell(best.Ratio, second.Ratio, wheels, ReadAtTheEnd) - CountedTurns;

    private IEnumerable<string> ToSettle(IReadOnlyList<RatioCandidate> candidates)
    {
        if (candidates is not [var best, var second, ..]) yield break;
        var more = More(best, second);
        yield return more switch
        {
            <= 0 => Spoken($"Enough to tell {best.Name} from {second.Name}, once the last part is read to a quarter turn."),
            1 => Spoken($"One more wheel turn would tell {best.Name} from {second.Name}, read to a quarter turn."),
            _ => Spoken($"{more} more {WheelTurns} would tell {best.Name} from {second.Name}, read to a quarter turn."),
        };
    }
}
