using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Propshafts;

/// <summary>A propshaft as it lies in the vehicle; null where nobody has measured.</summary>
public sealed record Propshaft
{
    private readonly IReadOnlyList<Inclination>? line;

    /// <exception cref="RefusedException">No piece, or more than three.</exception>
    public Propshaft(string name, params IReadOnlyList<ShaftPiece> pieces)
    {
        if (pieces.Count is 0 or > 3) throw new RefusedException("pieces", Spoken($"A propshaft has one to three pieces, not {pieces.Count}."), "1");
        (Name, Pieces) = (name, pieces);
    }

    /// <summary>What the shop calls it.</summary>
    public string Name { get; }

    /// <summary>From the front; more than one where a centre bearing carries the shaft.</summary>
    public IReadOnlyList<ShaftPiece> Pieces { get; }

    /// <summary>How the gearbox's output, each piece and the pinion lie, from the front.</summary>
    /// <exception cref="RefusedException">A member too few or too many.</exception>
    public IReadOnlyList<Inclination>? Line
    {
        get => line;
        init => line = value is null || value.Count == Pieces.Count + 2
            ? value
            : throw new RefusedException("line", Spoken($"A shaft of {Pieces.Count} has {Pieces.Count + 2} angles to measure, output and pinion included, not {value.Count}."), "3 deg, 6 deg, 3 deg");
    }

    /// <summary>What the weakest joint may carry for long, N·m.</summary>
    public Known? JointRating { get; init; }

    /// <summary>The joint that lets it change its length.</summary>
    public SlipJoint? Slip { get; init; }

    /// <summary>Flange or slip yoke's spline, in the shop's words.</summary>
    public string? FrontEnd { get; init; }

    /// <summary>Flange towards the axle, in the shop's words.</summary>
    public string? RearEnd { get; init; }

    /// <summary>The working angles of the joints; null while the line or a part of it is not measured.</summary>
    public IReadOnlyList<JointAngle>? Joints => Line is null ? null : JointAngle.Of(Line);
}

/// <summary>One piece of a propshaft; lengths in metres, null where nobody has measured.</summary>
public sealed record ShaftPiece
{
    /// <param name="outer">Outer diameter of the tube.</param>
    /// <param name="wall">Wall thickness.</param>
    /// <param name="length">Joint centre to joint centre, or to the centre bearing.</param>
    /// <param name="yokes">How its two yokes stand to each other.</param>
    /// <exception cref="RefusedException">All three measures are known and make no tube.</exception>
    public ShaftPiece(Known? outer = null, Known? wall = null, Known? length = null, Yokes? yokes = null)
    {
        (Outer, Wall, Length, Yokes) = (outer, wall, length, yokes);
        if (outer is not null && wall is not null && length is not null) Tube = new(outer.Value, wall.Value, length.Value);
    }

    /// <summary>Outer diameter, metres.</summary>
    public Known? Outer { get; }

    /// <summary>Wall thickness, metres.</summary>
    public Known? Wall { get; }

    /// <summary>Joint centre to joint centre, or to the centre bearing, metres.</summary>
    public Known? Length { get; }

    /// <summary>How its two yokes stand to each other.</summary>
    public Yokes? Yokes { get; }

    /// <summary>The tube; null while a measure is missing.</summary>
    public Tube? Tube { get; }
}

/// <summary>The spline that lets a shaft change its length; metres.</summary>
/// <param name="Stroke">From fully in to fully out.</param>
/// <param name="Out">How far it stands out at ride height, from fully in.</param>
public sealed record SlipJoint(Known? Stroke = null, Known? Out = null);
