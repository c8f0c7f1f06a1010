namespace BuildLog.Gearing.Ratios;

/// <summary>How finely turns were read.</summary>
/// <param name="ReadTo">The smallest fraction of a propshaft turn that was read; a quarter is what a chalk mark and an eye can do.</param>
/// <param name="Align">How far off the wheel's mark may have been, in turns; 0.02 is about seven degrees.</param>
public sealed record CountPrecision(double ReadTo = 0.25, double Align = 0.02);
