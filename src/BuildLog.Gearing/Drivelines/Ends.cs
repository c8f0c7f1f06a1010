using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Drivelines;

/// <summary>What an engine turns towards its gearbox; null where nobody looked. Patterns are in the shop's own words.</summary>
/// <exception cref="Quantities.RefusedException">A bore that is not above zero.</exception>
public sealed record EngineRear
{
    /// <summary>The bolt pattern at the back of the block, in the shop's words.</summary>
    public string? BellHousing { get; init; }

    /// <summary>What is bolted to the crankshaft.</summary>
    public Plate? Plate { get; init; }

    /// <summary>Of the pilot bearing or bush in the crankshaft, metres.</summary>
    public Known? PilotBore { get; init => field = value.AboveZero(Spoken("A pilot bore"), "15.05 mm"); }

    /// <summary>Where the block leaves room for the starter.</summary>
    public StarterSide? Starter { get; init; }

    /// <summary>The way the crankshaft turns.</summary>
    public Sense? Turns { get; init; }
}

/// <summary>What a gearbox turns towards the engine; null where nobody looked.</summary>
/// <exception cref="Quantities.RefusedException">A spigot or a torque that is not above zero.</exception>
public sealed record GearboxFront
{
    /// <summary>With the adapter plate on, where there is one.</summary>
    public string? BellHousing { get; init; }

    /// <summary>Of the input shaft's or the converter's spigot, metres.</summary>
    public Known? Spigot { get; init => field = value.AboveZero(Spoken("A spigot"), "15.00 mm"); }

    /// <summary>The gearbox's input shaft: number of splines and size, in the shop's words.</summary>
    public string? InputSpline { get; init; }

    /// <summary>The spline of the clutch disc, or of the converter's turbine.</summary>
    public string? DiscSpline { get; init; }

    /// <summary>What its clutch or flexplate passes on, N·m.</summary>
    public Known? ClutchRating { get; init => field = value.AboveZero(Spoken("A clutch rating"), "320 N·m"); }

    /// <summary>Where the bell housing is open for the starter.</summary>
    public StarterSide? Starter { get; init; }

    /// <summary>The way its input was made to turn.</summary>
    public Sense? Turns { get; init; }
}

/// <summary>What sits on the crankshaft: a clutch needs the one, a converter the other.</summary>
public enum Plate
{
    /// <summary>A flywheel, for a clutch.</summary>
    Flywheel,
    /// <summary>A flexplate, for a converter.</summary>
    Flexplate,
}

/// <summary>Seen from the driver's seat.</summary>
public enum StarterSide
{
    /// <summary>On the driver's left hand, whichever side he sits on.</summary>
    Left,
    /// <summary>On his right hand.</summary>
    Right,
}

/// <summary>Seen from in front of the vehicle.</summary>
public enum Sense
{
    /// <summary>With the clock, as most engines turn.</summary>
    Clockwise,
    /// <summary>Against the clock.</summary>
    Anticlockwise,
}

/// <summary>What a gearbox or transfer case has for a speedometer.</summary>
public enum SpeedometerFeed
{
    /// <summary>Nothing to drive a speedometer with.</summary>
    None,
    /// <summary>A cable drive.</summary>
    Cable,
    /// <summary>A sender of electrical pulses.</summary>
    Pulses,
}

/// <summary>Whether a part that has to be somewhere is here.</summary>
public enum Presence
{
    /// <summary>It is here.</summary>
    Fitted,
    /// <summary>Somebody looked, and it is missing.</summary>
    Absent,
}

/// <summary>Where the chassis hangs an axle; null where nobody has measured.</summary>
/// <param name="Springs">Middle of the left spring to middle of the right one, metres.</param>
/// <param name="Pad">How the spring lies on the perch, radians, positive where its front is higher.</param>
/// <exception cref="Quantities.RefusedException">A distance that is not above zero.</exception>
public sealed record Hanging(Known? Springs = null, Known? Pad = null)
{
    /// <summary>Middle of the left spring to middle of the right one, metres; above zero.</summary>
    public Known? Springs { get; init => field = value.AboveZero(Spoken("A distance of springs"), "1020 mm"); } = Springs.AboveZero(Spoken("A distance of springs"), "1020 mm");
}
