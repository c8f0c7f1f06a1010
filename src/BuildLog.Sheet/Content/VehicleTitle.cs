namespace BuildLog.Sheet.Content;

/// <summary>The title block: whose sheet this is.</summary>
public sealed record VehicleTitle
{
    public string? ShopName { get; init; }

    public string? Name { get; init; }

    /// <summary>The number that tells it from any other. It stands at the foot of every page: who signs one signs for this vehicle.</summary>
    public string? Mark { get; init; }

    /// <summary>Chassis number, engine number, year, plate: whatever identifies the vehicle, in the order to print.</summary>
    public IReadOnlyList<LabelledLine> Identity { get; init; } = [];

    public string? Owner { get; init; }

    public string? State { get; init; }

    public string? Odometer { get; init; }
}

/// <summary>A label and what stands beside it.</summary>
public sealed record LabelledLine(string Label, string? Value);
