namespace BuildLog.Gearing.Engines;

/// <summary>The most that a data sheet tells of torque, N·m, or power, W.</summary>
/// <param name="Most">How much.</param>
/// <param name="At">Its engine speed, rev/s; null where it is not told.</param>
public sealed record ToldPeak(double Most, double? At);
