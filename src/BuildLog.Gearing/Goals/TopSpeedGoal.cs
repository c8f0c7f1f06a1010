using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Goals;

/// <summary>The highest road speed that the owner will drive.</summary>
/// <param name="Speed">As typed; base unit m/s.</param>
public sealed record TopSpeedGoal(Typed Speed)
{
    /// <param name="text">Such as <c>150 km/h</c>.</param>
    public static Parsed<TopSpeedGoal> Read(string text) => CruiseGoal.ReadSpeed(text).Then<TopSpeedGoal>(speed => new TopSpeedGoal(speed));
}
