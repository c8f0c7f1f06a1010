using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Ratios;

/// <summary>How finely turns were read.</summary>
/// <param name="ReadTo">The smallest fraction of a propshaft turn that was read; a quarter is what a chalk mark and an eye can do.</param>
/// <param name="Align">How far off the wheel's mark may have been, in turns; 0.02 is about seven degrees.</param>
public sealed record CountPrecision(double ReadTo = 0.25, double Align = 0.02)
{
    /// <summary>Why nobody reads turns so; null where one can.</summary>
    /// <param name="ends">What was counted.</param>
    public Refusal? Refuse(CountedEnds ends)
        => !(ReadTo is >= 0 and <= 1) ? new("read-to", Spoken($"Turns are read to between 0 and 1 turn, not to {ReadTo}."), "0.25")
        : !(Align is >= 0 and <= 0.5) ? new("align", Spoken($"The {ends.Driven}'s mark is off by 0 to 0.5 turn, not by {Align}."), "0.02")
        : null;
}
