namespace BuildLog.Sheet.Content;

/// <summary>Engine speed against road speed, one line a gear, in the units that the axes name.</summary>
public sealed record Sawtooth : Chart
{
    public required IReadOnlyList<GearLine> Gears { get; init; }

    /// <summary>The unit of road speed: "km/h".</summary>
    public required string SpeedUnit { get; init; }

    /// <summary>The unit of engine speed: "rev/min".</summary>
    public required string EngineUnit { get; init; }

    /// <summary>The axes reach at least this far; they stretch when a line goes further.</summary>
    public required double SpeedMax { get; init; }

    public required double EngineMax { get; init; }

    public GoalMark? Goal { get; init; }
}

/// <summary>One gear from its lowest to its highest point.</summary>
public sealed record GearLine(string Name, double FromSpeed, double FromEngine, double ToSpeed, double ToEngine);

/// <summary>The cruise goal on the chart: a road speed, and the engine speeds that would do there.</summary>
/// <param name="Gear">Name of the gear it is wanted in; null where there is no such gear.</param>
public sealed record GoalMark(double Speed, double EngineLow, double EngineHigh, string Label, string? Gear = null);
