using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.RunningGear;

/// <summary>How a nut or bolt centres itself on the wheel.</summary>
public enum Seat
{
    Cone,
    Ball,
    Flat,
}

/// <summary>What a wheel is bolted by: its own holes, or the studs of an axle's hub. Metres; null where nobody knows.</summary>
/// <param name="Studs">How many.</param>
/// <param name="PitchCircle">Diameter of the circle of their centres.</param>
/// <param name="Bore">Centre bore of the wheel, or the spigot of the hub.</param>
/// <param name="Thread">As written on the nut, such as <c>M12×1.5</c> or <c>1/2-20</c>.</param>
/// <param name="Seat">How the nuts seat.</param>
public sealed record Bolting(int? Studs = null, Known? PitchCircle = null, Known? Bore = null, string? Thread = null, Seat? Seat = null);

/// <summary>A wheel without its tyre. Metres; null where nobody knows.</summary>
/// <param name="RimWidth">Between the bead seats.</param>
/// <param name="Offset">Mounting face to the middle of the rim; positive where the face is outboard of it.</param>
/// <param name="Bolting">How it is bolted.</param>
public sealed record Wheel(Known? RimWidth = null, Known? Offset = null, Bolting? Bolting = null);
