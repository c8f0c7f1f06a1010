using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Tui.Measurements;

/// <summary>A turn count under way: whole turns of both ends in the order they came, and what they make so far. No terminal in it.</summary>
public sealed class TallyModel(string part, Wheels wheels)
{
    /// <summary>Wheel turns that are enough as a rule.</summary>
    public const int UsualWheelTurns = 10;

    private static readonly CountPrecision ReadAtTheEnd = new();

    private readonly Stack<TallyEnd> counted = new();

    /// <summary>The axle that is counted.</summary>
    public string Part => part;

    /// <summary>Which wheels turn.</summary>
    public Wheels Wheels => wheels;

    public int WheelTurns => counted.Count(end => end == TallyEnd.Wheel);

    public int PropshaftTurns => counted.Count(end => end == TallyEnd.Propshaft);

    /// <summary>Counts one whole turn.</summary>
    /// <returns>Whether it is worth a bell: every tenth turn of either end.</returns>
    public bool Count(TallyEnd end)
    {
        counted.Push(end);
        return (end == TallyEnd.Wheel ? WheelTurns : PropshaftTurns) % 10 == 0;
    }

    /// <summary>Takes the last turn back; false when there is none.</summary>
    public bool Undo() => counted.TryPop(out _);

    /// <summary>The count as it is written down, with the propshaft's last part of a turn.</summary>
    public string Reading(double fraction) => FormattableString.Invariant($"{WheelTurns}:{Rounded.Exact(PropshaftTurns + fraction)}");

    /// <summary>Why the count cannot be ended yet; null when it can.</summary>
    public string? NotYet
        => WheelTurns == 0 || PropshaftTurns == 0 ? "Count at least one turn of the wheel and of the propshaft first; ten of the wheel are better."
            : counted.Peek() != TallyEnd.Wheel ? "Stop on a whole turn of the wheel: turn on until its mark is back, and count it."
            : null;

    /// <summary>What the whole turns say, as of the last whole wheel turn.</summary>
    public IReadOnlyList<string> Live
    {
        get
        {
            if (WheelTurns == 0) return ["Turn until the wheel's mark is back where it began; count the propshaft's turns on the way."];
            if (CountSoFar is not { } parsed) return ["The propshaft has not come round once yet."];
            if (!parsed.Understood(out var count)) return [parsed.Refusal!.Sentence];

            var candidates = RatioCandidates.For(count.Ratio).Ranked;
            var ratio = $"Ratio {Rounded.WithInterval(count.Ratio, Units.One)} (95 %), the last part of a propshaft turn not yet read.";
            if (candidates.Count == 0) return [ratio, "No ratio that is sold lies near it: is the other wheel doing what you said?"];
            return
            [
                ratio,
                $"May be {string.Join(", ", candidates.Take(4).Select(candidate => candidate.Name))}.",
                .. ToSettle(candidates),
            ];
        }
    }

    // Between two wheel turns the propshaft is ahead of the wheel: only the turns before the last whole wheel turn count.
    // The part of a turn that nobody has read yet lies anywhere between none and one: a half, give or take a half.
    private Parsed<TurnCount>? CountSoFar
    {
        get
        {
            var propshaft = counted.SkipWhile(end => end != TallyEnd.Wheel).Count(end => end == TallyEnd.Propshaft);
            if (propshaft == 0) return null;
            return TurnReading.Read(FormattableString.Invariant($"{WheelTurns}:{propshaft}.5"), wheels)
                .Then(reading => Parsed.From(() => TurnCount.Of([reading], new(ReadTo: 1))));
        }
    }

    private IEnumerable<string> ToSettle(IReadOnlyList<RatioCandidate> candidates)
    {
        if (candidates is not [var best, var second, ..]) yield break;
        var more = TurnCount.WheelTurnsToTell(best.Ratio, second.Ratio, wheels, ReadAtTheEnd) - WheelTurns;
        yield return more switch
        {
            <= 0 => $"Enough to tell {best.Name} from {second.Name}, once the last part is read to a quarter turn.",
            1 => $"One more wheel turn would tell {best.Name} from {second.Name}, read to a quarter turn.",
            _ => FormattableString.Invariant($"{more} more wheel turns would tell {best.Name} from {second.Name}, read to a quarter turn."),
        };
    }
}
