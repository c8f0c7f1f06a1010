namespace BuildLog.Sheet.Content;

/// <summary>One measurement session: what the numbers rest on.</summary>
public sealed record EvidenceEntry
{
    public required string What { get; init; }

    public string? Date { get; init; }

    public string? Method { get; init; }

    public string? Who { get; init; }

    public string? Conditions { get; init; }

    /// <summary>The readings as they were typed.</summary>
    public IReadOnlyList<string> Readings { get; init; } = [];

    public string? Result { get; init; }

    /// <summary>The 95 % interval: "3.541 to 3.549".</summary>
    public string? Interval95 { get; init; }

    /// <summary>Half of it with its coverage factor: "0.004, k = 2.04".</summary>
    public string? ExpandedUncertainty { get; init; }
}
