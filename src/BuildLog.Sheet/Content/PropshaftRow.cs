namespace BuildLog.Sheet.Content;

/// <summary>One piece of a propshaft.</summary>
public sealed record PropshaftRow
{
    public required string Piece { get; init; }

    /// <summary>Outer diameter and wall.</summary>
    public string? Tube { get; init; }

    /// <summary>Joint centre to joint centre.</summary>
    public string? Length { get; init; }

    /// <summary>Working angles of the joints at its ends.</summary>
    public string? JointAngles { get; init; }

    /// <summary>How its yokes stand to each other.</summary>
    public string? Yokes { get; init; }

    /// <summary>The speed at which it whips.</summary>
    public string? CriticalSpeed { get; init; }

    /// <summary>The fastest it will turn, and where.</summary>
    public string? FastestTurn { get; init; }
}
