using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Tui.Measurements;

/// <summary>Two ends counted against each other, which makes a ratio.</summary>
public abstract class RatioTally(string part, CountedEnds ends) : TallyModel(part)
{
    /// <summary>The part of a turn that nobody has read yet lies anywhere between none and one: a half, give or take a half.</summary>
    protected static readonly CountPrecision NotReadYet = new(ReadTo: 1);

    public override string Driven => ends.Driven;

    public override string Driving => ends.Driving;

    public override IReadOnlyList<string> Live
    {
        get
        {
            if (DrivenTurns == 0) return [Spoken($"Turn until the {Driven}'s mark is back where it began; count the {Driving}'s turns on the way.")];
            if (SettledDrivingTurns == 0) return [Spoken($"The {Driving} has not come round once yet.")];
            var parsed = CountSoFar;
            if (!parsed.Understood(out var count)) return [parsed.Refusal!.Sentence];

            return [Spoken($"Ratio {Rounded.WithInterval(count.Ratio, Units.One)} (95 %), the last part of {Article(Driving)} {Driving} turn not yet read."), .. Says(count)];
        }
    }

    /// <summary>What is counted comes to so far, the part of a turn that nobody has read yet taken for a half.</summary>
    protected Parsed<TurnCount> CountSoFar => CountOf(FormattableString.Invariant($"{Slow(SettledOtherDrivenTurns)}:{SettledDrivingTurns}.5"));

    /// <summary>The count as it is written down, with the quick end's last part of a turn.</summary>
    /// <param name="fraction">Turns, less than one.</param>
    /// <param name="otherFraction">The same of the second wheel, where each is counted.</param>
    public string Reading(double fraction, double otherFraction = 0) => FormattableString.Invariant($"{Slow(OtherDrivenTurns + otherFraction)}:{Rounded.Typed(DrivingTurns + fraction)}");

    private string Slow(double other) => OtherDriven is null ? FormattableString.Invariant($"{DrivenTurns}") : FormattableString.Invariant($"{DrivenTurns},{Rounded.Typed(other)}");

    private static string Article(string word) => word[0] is 'i' ? Spoken("an") : Spoken("a");

    /// <summary>What a count as written comes to, its last part of a turn not read.</summary>
    protected abstract Parsed<TurnCount> CountOf(string reading);

    /// <summary>What more can be said of it.</summary>
    protected abstract IEnumerable<string> Says(TurnCount count);
}
