namespace BuildLog.Sheet.Content;

/// <summary>One drive with an ear on the driveline.</summary>
public sealed record RoadTestRow
{
    public required string Date { get; init; }

    public string? Odometer { get; init; }

    /// <summary>What the instruments showed: "2850 rev/min at 90 km/h in 4".</summary>
    public string? Read { get; init; }

    /// <summary>What was heard and felt.</summary>
    public string? Noticed { get; init; }

    public string? Defects { get; init; }

    /// <summary>What was done about it.</summary>
    public string? Fix { get; init; }
}

/// <summary>A bolt tightened again after the first drive, and who signs for it.</summary>
public sealed record TightenedRow(string Date, string What, string? Torque, string? Initials);
