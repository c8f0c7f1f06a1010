using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.RunningGear;

/// <summary>How a nut or bolt centres itself on the wheel.</summary>
public enum Seat
{
    /// <summary>A taper, usually of 60°.</summary>
    Cone,

    /// <summary>A part of a sphere.</summary>
    Ball,

    /// <summary>A washer or shank; the bore or the shank centres the wheel.</summary>
    Flat,
}

/// <summary>What a wheel is bolted by: its own holes, or the studs of an axle's hub. Metres; null where nobody knows.</summary>
/// <param name="Studs">How many.</param>
/// <param name="PitchCircle">Diameter of the circle of their centres.</param>
/// <param name="Bore">Centre bore of the wheel, or the spigot of the hub.</param>
/// <param name="Thread">As written on the nut, such as <c>M12×1.5</c> or <c>1/2-20</c>.</param>
/// <param name="Seat">How the nuts seat.</param>
/// <exception cref="Quantities.RefusedException">A number of studs that no wheel has, or a length that is not above zero.</exception>
public sealed record Bolting(int? Studs = null, Known? PitchCircle = null, Known? Bore = null, string? Thread = null, Seat? Seat = null)
{
    /// <summary>3 to 10; null where nobody knows.</summary>
    public int? Studs { get; init => field = BoltCircle.CheckedStuds(value); } = BoltCircle.CheckedStuds(Studs);

    /// <summary>Metres; above zero.</summary>
    public Known? PitchCircle { get; init => field = value.AboveZero(Spoken("A bolt circle"), "114.3 mm"); } = PitchCircle.AboveZero(Spoken("A bolt circle"), "114.3 mm");

    /// <summary>Metres; above zero.</summary>
    public Known? Bore { get; init => field = value.AboveZero(Spoken("A centre bore"), "66.1 mm"); } = Bore.AboveZero(Spoken("A centre bore"), "66.1 mm");
}

/// <summary>A wheel without its tyre. Metres; null where nobody knows.</summary>
/// <param name="RimWidth">Between the bead seats.</param>
/// <param name="Offset">Mounting face to the middle of the rim; positive where the face is outboard of it.</param>
/// <param name="Bolting">How it is bolted.</param>
/// <exception cref="Quantities.RefusedException">A width that is not above zero.</exception>
public sealed record Wheel(Known? RimWidth = null, Known? Offset = null, Bolting? Bolting = null)
{
    /// <summary>Metres; above zero.</summary>
    public Known? RimWidth { get; init => field = value.AboveZero(Spoken("A rim width"), "6 in"); } = RimWidth.AboveZero(Spoken("A rim width"), "6 in");
}
