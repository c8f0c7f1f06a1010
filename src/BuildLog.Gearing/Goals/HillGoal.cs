using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Goals;

/// <summary>A hill that the owner wants to hold a road speed on without changing down.</summary>
/// <param name="Gradient">Rise over run as typed.</param>
/// <param name="Speed">Road speed as typed; base unit m/s.</param>
/// <param name="Gear">The gear by name; null for the top one.</param>
public sealed record HillGoal(Typed Gradient, Typed Speed, string? Gear)
{
    /// <summary>Rise over run: above 0, at most 1.</summary>
    public Typed Gradient { get; init => field = value.AboveZero(Spoken("A hill to want, rise over run,"), "6 %", 1); } = Gradient.AboveZero(Spoken("A hill to want, rise over run,"), "6 %", 1);

    /// <summary>v, m/s: above 0, at most 500 km/h.</summary>
    public Typed Speed { get; init => field = value.AboveZero(Spoken("A road speed, m/s,"), "100 km/h", CruiseGoal.FastestRoadSpeed); }
        = Speed.AboveZero(Spoken("A road speed, m/s,"), "100 km/h", CruiseGoal.FastestRoadSpeed);

    /// <summary>This gradient or a steeper one, rise over run.</summary>
    public Window Wanted => Window.AtLeast(Gradient.Value);

    /// <param name="gradient">Such as <c>6 %</c>; a bare number is per cent.</param>
    /// <param name="speed">Such as <c>100 km/h</c>.</param>
    /// <param name="gear">Empty for the top gear.</param>
    public static Parsed<HillGoal> Read(string gradient, string speed, string gear = "")
        => Goals.Gradient.Read(gradient).Then(hill =>
            CruiseGoal.ReadSpeed(speed).Then<HillGoal>(v => new HillGoal(hill, v, gear.Trim().Length == 0 ? null : gear.Trim())));

    /// <summary>Reads all of it in one line: <c>6 % at 100 km/h in 4</c>.</summary>
    /// <param name="text">What was typed; the gear may be left out.</param>
    /// <param name="instead">The goal that it takes the place of: a gear that is left out stays as it is there.</param>
    public static Parsed<HillGoal> ReadLine(string text, HillGoal? instead = null)
    {
        var (line, gear) = GoalLine.InGear(text);
        return GoalLine.At(line) is not { } at
            ? new Refusal("hill", Spoken($"{Shown.Quoted(text)} is no hill to hold: a gradient, the word at, and a road speed."), "6 % at 100 km/h")
            : Read(at.Before, at.Behind, gear).In(text).Then<HillGoal>(goal => goal with { Gear = goal.Gear ?? instead?.Gear });
    }

    /// <summary>The line of <see cref="ReadLine"/>, a bare road speed in it with its unit; any other text as it is.</summary>
    public static string WithSpeedIn(string text, Unit usual) => GoalLine.Reworded(text, gradient => gradient, speed => QuantityText.WithUnit(speed, Kind.Speed, usual));
}
