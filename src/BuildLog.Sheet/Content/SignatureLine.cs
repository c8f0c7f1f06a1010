namespace BuildLog.Sheet.Content;

/// <summary>A line to sign on. What is null stays blank, to be filled in by hand.</summary>
public sealed record SignatureLine(string Role, string? Name = null, string? Date = null);
