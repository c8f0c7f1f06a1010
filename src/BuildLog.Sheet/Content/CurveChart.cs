namespace BuildLog.Sheet.Content;

/// <summary>Lines over a quantity, in the units that the axes name.</summary>
public sealed record CurveChart : Chart
{
    /// <summary>What is shown: "Power at the wheels".</summary>
    public required string Title { get; init; }

    /// <summary>Quantity and unit: "road speed, km/h".</summary>
    public required string Across { get; init; }

    /// <summary>Quantity and unit: "power, kW".</summary>
    public required string Up { get; init; }

    public required IReadOnlyList<Curve> Curves { get; init; }
}

/// <summary>One line of a chart.</summary>
public sealed record Curve(string Name, CurveKind Kind, IReadOnlyList<CurvePoint> Points);

public readonly record struct CurvePoint(double X, double Y);

/// <summary>What a line stands for, and so how it is drawn.</summary>
public enum CurveKind
{
    /// <summary>What the vehicle does.</summary>
    Does,

    /// <summary>What the road asks of it.</summary>
    Needs,

    /// <summary>What it may not pass.</summary>
    Limit,
}
