namespace BuildLog.Sheet.Content;

/// <summary>One axle's tyres and wheels against what it carries.</summary>
public sealed record RunningGearRow
{
    /// <summary>"Front" or "Rear".</summary>
    public required string Axle { get; init; }

    /// <summary>The tyre's marking.</summary>
    public string? Tyre { get; init; }

    /// <summary>Rim, offset, bolt circle.</summary>
    public string? Wheel { get; init; }

    /// <summary>What the axle carries, laden.</summary>
    public string? AxleMass { get; init; }

    /// <summary>What its tyres may carry.</summary>
    public string? TyresCarry { get; init; }

    public string? SpeedLimit { get; init; }
}
