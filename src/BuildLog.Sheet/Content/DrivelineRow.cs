namespace BuildLog.Sheet.Content;

/// <summary>One part in the chain from engine to tyres.</summary>
/// <param name="Position">Where it sits: "Rear axle".</param>
/// <param name="Part">What it is.</param>
/// <param name="KeyValue">Its key number with unit and uncertainty: "3.545 ± 0.004".</param>
/// <param name="Source">How the number is known: "teeth counted".</param>
public sealed record DrivelineRow(string Position, string? Part, string? KeyValue, string? Source);
