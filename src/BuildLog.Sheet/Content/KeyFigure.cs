namespace BuildLog.Sheet.Content;

/// <summary>A number worth printing large: "Engine speed at 110 km/h", "2480 ± 40 rev/min".</summary>
public sealed record KeyFigure(string Label, string? Value);
