using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.Drivelines;

/// <summary>An engine as the driveline sees it; engine speeds in revolutions per second, null where nobody knows.</summary>
/// <exception cref="Quantities.RefusedException">An engine speed that is not above zero, or an altitude where no road lies.</exception>
public sealed record Engine(string Name, Known? Idle = null, Known? Redline = null)
{
    /// <summary>Idle speed, rev/s.</summary>
    public Known? Idle { get; init => field = value.AboveZero(Spoken("An idle speed"), "800 rev/min"); } = Idle.AboveZero(Spoken("An idle speed"), "800 rev/min");

    /// <summary>The fastest it may turn, rev/s.</summary>
    public Known? Redline { get; init => field = value.AboveZero(Spoken("A redline"), "5000 rev/min"); } = Redline.AboveZero(Spoken("A redline"), "5000 rev/min");

    /// <summary>Full-load torque; null where nobody knows.</summary>
    public TorqueCurve? Torque { get; init; }

    /// <summary>Power still rises where the torque curve ends, and the engine may turn faster: then nobody knows its power peak. One that is drawn to told peaks knows it.</summary>
    public bool MayPeakBeyondItsCurve => Torque is { EndsPastItsPowerPeak: false, Source: not Source.Assumed } torque && !(Redline?.Value.Value <= torque.To * (1 + 1e-9));

    /// <summary>The torque curve has no point that the engine may turn at: one of curve and redline is wrong.</summary>
    public bool BeginsAboveRedline => Torque is { } torque && Redline is { } redline && redline.Value.Value <= torque.From;

    /// <summary>The peak of torque, N·m, that a data sheet tells beside the points of <see cref="Torque"/>, which count, or alone; null where it is not told or the curve is drawn to it.</summary>
    public ToldPeak? ToldTorque { get; init; }

    /// <summary>The same of power, W.</summary>
    public ToldPeak? ToldPower { get; init; }

    /// <summary>The most torque it gives, N·m, which is all that the strength of parts asks for: the curve's, else the one that is told; null where nobody knows.</summary>
    public Measured? PeakTorque => Torque?.PeakTorque ?? ToldTorque?.Torque;

    /// <summary>The lowest engine speed it pulls from cleanly in a high gear, rev/s.</summary>
    public Known? LowestPull { get; init => field = value.AboveZero(Spoken("A lowest clean pull"), "1200 rev/min"); }

    /// <summary>How it gets its air.</summary>
    public Induction Induction { get; init; }

    /// <summary>Up to where a charger keeps the pressure, metres above sea level; null where nobody knows.</summary>
    public Known? CriticalAltitude { get; init => field = Atmosphere.Checked(value); }

    /// <summary>What it turns towards the gearbox.</summary>
    public EngineRear Rear { get; init; } = new();
}

/// <summary>One forward gear: its name on the knob and its ratio.</summary>
/// <exception cref="Quantities.RefusedException">A ratio that is not above zero.</exception>
public sealed record Gear(string Name, Known Ratio)
{
    /// <summary>Input turns per output turn; above one is a reduction.</summary>
    public Known Ratio { get; init => field = value.AboveZero(Spoken("A gear ratio"), "0.82"); } = Ratio.AboveZero(Spoken("A gear ratio"), "0.82");

    /// <summary>What a data sheet, a tag or somebody says of the ratio, where something stronger counts.</summary>
    public Known? Quoted { get; init => field = value.AboveZero(Spoken("A gear ratio"), "0.82"); }
}

/// <summary>A gearbox; forward gears from the lowest to the top.</summary>
/// <exception cref="Quantities.RefusedException">A ratio or a torque that is not above zero.</exception>
public sealed record Transmission(string Name, IReadOnlyList<Gear> Gears)
{
    /// <summary>Gears that it has and nobody told or counted; null where all are known.</summary>
    public UntoldGears? Untold { get; init; }

    /// <summary>The lowest gear; null where nobody knows it.</summary>
    public Gear? First => Untold is { First: true } ? null : Gears.FirstOrDefault();

    /// <summary>The top gear; null where nobody knows it.</summary>
    public Gear? Top => Untold is { Top: true } ? null : Gears.LastOrDefault();

    /// <summary>Null for a clutch.</summary>
    public Converter? Converter { get; init; }

    /// <summary>The engine torque its maker allows at the input, N·m.</summary>
    public Known? TorqueRating { get; init => field = value.AboveZero(Spoken("A torque rating"), "300 N·m"); }

    /// <summary>What is said of reverse, as a plain number; null where nobody said it.</summary>
    public Known? Reverse { get; init => field = value.AboveZero(Spoken("A reverse ratio"), "2.20"); }

    /// <summary>What it turns towards the engine.</summary>
    public GearboxFront Front { get; init; } = new();

    /// <summary>Flange or spline behind it, in the shop's words.</summary>
    public string? Output { get; init; }

    /// <summary>What it has for a speedometer; null where nobody looked.</summary>
    public SpeedometerFeed? SpeedometerFeed { get; init; }

    /// <summary>A brake on its output.</summary>
    public Presence? ParkingBrake { get; init; }

    /// <summary>The linkage from the lever to the box; null where nobody looked.</summary>
    public Presence? ShiftLinkage { get; init; }
}

/// <summary>A separate overdrive unit behind the gearbox, engaged in top gear.</summary>
/// <exception cref="Quantities.RefusedException">A ratio that is not above zero.</exception>
public sealed record Overdrive(string Name, Known? Ratio)
{
    /// <summary>Input turns per output turn when engaged, below 1; null where nobody knows.</summary>
    public Known? Ratio { get; init => field = value.AboveZero(Spoken("An overdrive ratio"), "0.78"); } = Ratio.AboveZero(Spoken("An overdrive ratio"), "0.78");

    /// <summary>What a data sheet, a tag or somebody says of the ratio, where something stronger counts.</summary>
    public Known? Quoted { get; init => field = value.AboveZero(Spoken("An overdrive ratio"), "0.78"); }

    /// <summary>Flange or spline behind it, in the shop's words.</summary>
    public string? Output { get; init; }
}

/// <summary>A transfer case; high is for the road.</summary>
/// <exception cref="Quantities.RefusedException">A ratio or a torque that is not above zero.</exception>
public sealed record TransferCase(string Name, Known? High, Known? Low)
{
    /// <summary>Ratio for the road, turns in per turn out.</summary>
    public Known? High { get; init => field = value.AboveZero(Spoken("A transfer case ratio"), "1.00"); } = High.AboveZero(Spoken("A transfer case ratio"), "1.00");

    /// <summary>Ratio off the road, turns in per turn out.</summary>
    public Known? Low { get; init => field = value.AboveZero(Spoken("A transfer case ratio"), "2.72"); } = Low.AboveZero(Spoken("A transfer case ratio"), "2.72");

    /// <summary>How it joins the front axle to the rear one; null where nobody knows.</summary>
    public FrontDrive? FrontDrive { get; init; }

    /// <summary>The torque its maker allows at the input, N·m.</summary>
    public Known? TorqueRating { get; init => field = value.AboveZero(Spoken("A torque rating"), "1200 N·m"); }

    /// <summary>Flange or spline towards the rear axle, in the shop's words.</summary>
    public string? Output { get; init; }

    /// <summary>Flange or spline towards the front axle, in the shop's words.</summary>
    public string? FrontOutput { get; init; }

    /// <summary>Cable or pulses that it gives a speedometer; null where nobody looked.</summary>
    public SpeedometerFeed? SpeedometerFeed { get; init; }

    /// <summary>Whether a brake on its output shaft holds the vehicle; null where nobody looked.</summary>
    public Presence? ParkingBrake { get; init; }
}

/// <summary>An axle; its ratio is propshaft turns per wheel turn, with a hub reduction inside.</summary>
/// <exception cref="Quantities.RefusedException">A ratio, a length or a torque that is not above zero.</exception>
public sealed record Axle(string Name, Known? Ratio)
{
    /// <summary>Propshaft turns per wheel turn, a hub reduction inside; null where nobody knows.</summary>
    public Known? Ratio { get; init => field = value.AboveZero(Spoken("An axle ratio"), "4.10"); } = Ratio.AboveZero(Spoken("An axle ratio"), "4.10");

    /// <summary>What wheels are bolted to; null where it was never asked for.</summary>
    public Bolting? Hub { get; init; }

    /// <summary>Mounting face to mounting face, metres.</summary>
    public Known? HubFaces { get; init => field = value.AboveZero(Spoken("A track"), "1480 mm"); }

    /// <summary>How far it can move; null where it was never asked for.</summary>
    public WheelTravel? Travel { get; init; }

    /// <summary>The torque its maker allows at the wheels, both shafts together, N·m.</summary>
    public Known? TorqueRating { get; init => field = value.AboveZero(Spoken("A torque rating"), "3000 N·m"); }

    /// <summary>What a tag, a table or somebody says of the ratio, where something stronger counts; a hub reduction inside.</summary>
    public Known? Quoted { get; init => field = value.AboveZero(Spoken("An axle ratio"), "4.10"); }

    /// <summary>The hubs' part of the ratio; null for none.</summary>
    public Known? HubReduction { get; init => field = value.AboveZero(Spoken("A hub reduction"), "2.00"); }

    /// <summary>Low over high of an axle with two ratios, whose <see cref="Ratio"/> is the one for the road; null for one ratio.</summary>
    public Known? LowStep { get; init => field = value.AboveZero(Spoken("A two-speed axle's step"), "1.39"); }

    /// <summary>What the propshaft bolts to, in the shop's words.</summary>
    public string? PinionFlange { get; init; }

    /// <summary>Middle of the left spring perch to middle of the right one, metres.</summary>
    public Known? Perches { get; init => field = value.AboveZero(Spoken("A distance of spring perches"), "1020 mm"); }

    /// <summary>The pinion against the perches, radians, positive where its front is higher.</summary>
    public Known? PinionToPerch { get; init; }

    /// <summary>Whether it has one of its own; null where nobody looked.</summary>
    public Presence? ParkingBrake { get; init; }
}

/// <summary>A set of wheels and tyres.</summary>
/// <param name="Name">What the shop calls it.</param>
/// <param name="RollingCircumference">Metres a turn under load.</param>
/// <param name="Size">The marking, where it was read.</param>
/// <exception cref="Quantities.RefusedException">A length that is not above zero.</exception>
public sealed record TyreSet(string Name, Known? RollingCircumference, TyreSize? Size)
{
    /// <summary>Metres a turn under load.</summary>
    public Known? RollingCircumference { get; init => field = value.AboveZero(Spoken("A rolling circumference"), "2.04 m"); } = RollingCircumference.AboveZero(Spoken("A rolling circumference"), "2.04 m");

    /// <summary>Metres a turn without load, where a loose wheel was rolled; null where none was.</summary>
    public Known? FreeCircumference { get; init => field = value.AboveZero(Spoken("A free circumference"), "2.10 m"); }

    /// <summary>Axle to ground, metres; null where it was not measured.</summary>
    public Known? LoadedRadius { get; init => field = value.AboveZero(Spoken("A loaded radius"), "312 mm"); }

    /// <summary>The wheels the tyres are on; null where they were never asked for.</summary>
    public Wheel? Wheel { get; init; }

    /// <summary>Wheels and tyres of the front axle where they differ from the rear ones.</summary>
    public TyreSet? FrontPair { get; init; }

    /// <summary>Passenger tyres on a truck or a multi-purpose vehicle carry less.</summary>
    public bool PassengerOnTruck { get; init; }

    /// <summary>Two tyres on each side of the rear axle.</summary>
    public bool TwinRear { get; init; }

    /// <summary>The pair on an axle.</summary>
    public TyreSet On(Position axle) => axle == Position.FrontAxle && FrontPair is not null ? FrontPair : this;
}
