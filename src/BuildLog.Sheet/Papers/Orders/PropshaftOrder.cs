using BuildLog.Sheet.Content;

namespace BuildLog.Sheet.Papers.Orders;

/// <summary>What a propshaft maker has to know to make or shorten a shaft.</summary>
public sealed record PropshaftOrder : PaperContent
{
    /// <summary>"Propshaft to the rear axle".</summary>
    public string? Shaft { get; init; }

    /// <summary>From the front.</summary>
    public IReadOnlyList<ShaftPieceOrder> Pieces { get; init; } = [];

    /// <summary>Slip joint, joint rating, fastest turn, torque: whatever belongs to the whole shaft.</summary>
    public IReadOnlyList<LabelledLine> Facts { get; init; } = [];

    /// <summary>What the shop's own checks hold against the shaft as it is measured here, a sentence each.</summary>
    public IReadOnlyList<string> Against { get; init; } = [];
}

/// <summary>One piece to be made.</summary>
public sealed record ShaftPieceOrder(string Name, string? Length, string? TubeDiameter, string? Wall, string? Yokes, string? FrontAngle, string? RearAngle);
