using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.RunningGear;

/// <summary>How far an axle moves from ride height; metres, null where it was not measured.</summary>
/// <param name="Droop">Down, wheels hanging.</param>
/// <param name="Bump">Up, to the stop.</param>
public sealed record WheelTravel(Known? Droop = null, Known? Bump = null);
