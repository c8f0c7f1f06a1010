using BuildLog.Gearing.Drivelines;
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
    /// <exception cref="RefusedException">Nothing or less.</exception>
    public Known? JointRating { get; init => field = value.AboveZero(Spoken("A joint rating"), "900 N·m"); }

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
    /// <exception cref="RefusedException">A measure that is not above zero, or all three are known and make no tube.</exception>
    public ShaftPiece(Known? outer = null, Known? wall = null, Known? length = null, Yokes? yokes = null)
    {
        if (outer is not null && wall is not null && length is not null) Tube = new(outer.Value, wall.Value, length.Value);
        Outer = outer.AboveZero(Spoken("A tube diameter"), "76 mm");
        Wall = wall.AboveZero(Spoken("A tube wall"), "2.1 mm");
        Length = length.AboveZero(Spoken("A length between joints"), "1.30 m");
        Yokes = yokes;
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
/// <exception cref="RefusedException">A length below zero.</exception>
public sealed record SlipJoint(Known? Stroke = null, Known? Out = null)
{
    /// <summary>From fully in to fully out, metres; zero or more.</summary>
    public Known? Stroke { get; init => field = value.NotBelowZero(Spoken("A slip joint's stroke"), "90 mm"); } = Stroke.NotBelowZero(Spoken("A slip joint's stroke"), "90 mm");

    /// <summary>How far it stands out at ride height, from fully in, metres; zero or more.</summary>
    public Known? Out { get; init => field = value.NotBelowZero(Spoken("What a slip joint stands out"), "35 mm"); } = Out.NotBelowZero(Spoken("What a slip joint stands out"), "35 mm");
}
