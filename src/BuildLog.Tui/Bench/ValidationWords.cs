using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Bench;

/// <summary>What a Monte Carlo says of a finding's interval.</summary>
internal static class ValidationWords
{
    public static string Of(Validation validation, Unit unit)
    {
        if (validation.Drawn is not { } drawn)
            return Spoken("Some drawn inputs leave the formula's domain, so the interval cannot be trusted: measure the inputs more closely.");

        // One figure more than the tolerance, so that two intervals that differ are also seen to differ.
        var places = Rounded.Places(unit.FromBase(validation.Tolerance));
        var both = Spoken($"{InWords(validation.FirstOrder)} at first order, {InWords(drawn.Interval95)} drawn");
        var settled = drawn.Settled ? "" : Spoken(" The draws had not settled after a million.");
        var inside = validation.FirstOrder.Contains(drawn.Interval95.Low) && validation.FirstOrder.Contains(drawn.Interval95.High);
        return validation.Agrees ? Spoken($"The interval agrees with a Monte Carlo.{settled}")
            : inside ? Spoken($"First order is on the safe side here: the 95 % interval is {both}.{settled}")
            : Spoken($"First order does not hold here: the 95 % interval is {both}.{settled}");

        string InWords(Interval interval) => Rounded.Between(unit.FromBase(interval.Low), unit.FromBase(interval.High), places, unit);
    }
}
