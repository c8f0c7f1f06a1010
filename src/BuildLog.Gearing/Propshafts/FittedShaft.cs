using BuildLog.Gearing.Drivelines;

namespace BuildLog.Gearing.Propshafts;

/// <summary>A propshaft between the parts it joins.</summary>
/// <param name="Position">Where it is fitted.</param>
/// <param name="Shaft">The shaft.</param>
/// <param name="AxlePosition">Where it leads.</param>
/// <param name="Axle">The axle there; null where none is fitted.</param>
public sealed record FittedShaft(Position Position, Propshaft Shaft, Position AxlePosition, Axle? Axle)
{
    /// <summary>The propshafts of a vehicle, the one to the rear axle first.</summary>
    public static IEnumerable<FittedShaft> Of(Driveline driveline)
    {
        if (driveline.Propshaft is { } rear) yield return new(Position.Propshaft, rear, Position.RearAxle, driveline.RearAxle);
        if (driveline.FrontPropshaft is { } front) yield return new(Position.FrontPropshaft, front, Position.FrontAxle, driveline.FrontAxle);
    }

    /// <summary>Where a four-wheel drive has a shaft that nobody has entered.</summary>
    public static IEnumerable<Position> Unseen(Driveline driveline)
    {
        if (driveline.TransferCase is null) yield break;
        if (driveline is { RearAxle: not null, Propshaft: null }) yield return Position.Propshaft;
        if (driveline is { FrontAxle: not null, FrontPropshaft: null }) yield return Position.FrontPropshaft;
    }

    /// <summary>The shaft and the axle it leads to.</summary>
    public IReadOnlyList<Position> Joint => [Position, AxlePosition];

    /// <summary>The piece of this place, as a sentence names it: <c>the propshaft</c>, <c>piece 2 of the propshaft</c>.</summary>
    public string Named(int piece) => Shaft.Pieces.Count == 1 ? Spoken($"the {Position.InWords()}") : Spoken($"piece {piece + 1} of the {Position.InWords()}");
}
