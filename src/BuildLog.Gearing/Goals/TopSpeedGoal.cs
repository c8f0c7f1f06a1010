using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Goals;

/// <summary>A road speed that the owner wants to reach on the level.</summary>
/// <param name="Speed">As typed; base unit m/s.</param>
public sealed record TopSpeedGoal(Typed Speed)
{
    /// <summary>v, m/s: above 0, at most 500 km/h.</summary>
    public Typed Speed { get; init => field = value.AboveZero(Spoken("A road speed, m/s,"), "150 km/h", CruiseGoal.FastestRoadSpeed); }
        = Speed.AboveZero(Spoken("A road speed, m/s,"), "150 km/h", CruiseGoal.FastestRoadSpeed);

    /// <summary>This speed or a higher one, m/s.</summary>
    public Window Wanted => Window.AtLeast(Speed.Value);

    /// <param name="speed">Such as <c>150 km/h</c>.</param>
    public static Parsed<TopSpeedGoal> Read(string speed) => CruiseGoal.ReadSpeed(speed).Then<TopSpeedGoal>(v => new TopSpeedGoal(v));

    /// <summary>What <see cref="Read"/> takes, a bare road speed with its unit; any other text as it is.</summary>
    public static string WithSpeedIn(string text, Unit usual) => QuantityText.WithUnit(text, Kind.Speed, usual);
}
