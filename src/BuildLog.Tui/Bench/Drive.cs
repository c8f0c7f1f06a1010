using BuildLog.Data.RoadTests;
using BuildLog.Gearing.Drivelines;

namespace BuildLog.Tui.Bench;

/// <summary>A road test, of which vehicle, and the driveline it was driven with; null where its day leaves open which that was.</summary>
public sealed record Drive(RoadTest Test, string Vehicle, Driveline? Driven);
