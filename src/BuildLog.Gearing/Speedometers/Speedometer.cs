using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Speedometers;

/// <summary>A speedometer and what turns it; null where nobody knows.</summary>
/// <param name="Name">What the shop calls it.</param>
/// <param name="Wanted">Cable turns or pulses a metre at which it reads right: the number on the dial, over a kilometre or a mile.</param>
/// <param name="Drive">What feeds it.</param>
/// <exception cref="RefusedException">A number of turns or pulses that is not above zero.</exception>
public sealed record Speedometer(string Name, Known? Wanted = null, SpeedometerDrive? Drive = null)
{
    /// <summary>Cable turns or pulses a metre at which it reads right; above zero.</summary>
    public Known? Wanted { get; init => field = value.AboveZero(Spoken("What a speedometer wants, turns or pulses a metre,"), "0.6"); } = Wanted.AboveZero(Spoken("What a speedometer wants, turns or pulses a metre,"), "0.6");

    /// <summary>What turns or feeds it, where somebody looked behind the dial.</summary>
    public SpeedometerFeed? Takes { get; init; }
}

/// <summary>Where the drive sits.</summary>
public enum Pickup
{
    /// <summary>At the gearbox or transfer case, turning with the propshaft.</summary>
    Propshaft,

    /// <summary>At the gearbox, before the transfer case.</summary>
    GearboxOutput,

    /// <summary>At a wheel.</summary>
    Wheel,
}

/// <summary>What makes cable turns or pulses from turns of the shaft it sits on.</summary>
public sealed record SpeedometerDrive
{
    private SpeedometerDrive(Pickup pickup, Measured perTurn) => (Pickup, PerTurn) = (pickup, perTurn);

    /// <summary>The shaft whose turns it takes.</summary>
    public Pickup Pickup { get; }

    /// <summary>Cable turns or pulses per turn of the shaft.</summary>
    public Measured PerTurn { get; }

    /// <summary>Teeth of the worm or gear on the shaft; null where there are none.</summary>
    public int? DriveTeeth { get; private init; }

    /// <summary>Teeth of the gear on the cable; null where there are none.</summary>
    public int? DrivenTeeth { get; private init; }

    /// <summary>Cable turns out per turn in of a correction box, or the factor of a pulse corrector; one where there is none.</summary>
    public Measured Correction { get; private init; } = 1;

    /// <summary>A cable drive: <c>drive / driven · correction</c>.</summary>
    /// <exception cref="RefusedException">A gear that is not one.</exception>
    public static SpeedometerDrive Gears(int drive, int driven, Pickup pickup = Pickup.Propshaft, double correction = 1)
    {
        if (drive is < 1 or > 60) throw new RefusedException("drive-teeth", Spoken($"A speedometer drive gear has 1 to 60 teeth, not {drive}."), "8");
        if (driven is < 3 or > 99) throw new RefusedException("driven-teeth", Spoken($"A speedometer driven gear has 3 to 99 teeth, not {driven}."), "21");

        return new(pickup, Checked(correction) * drive / driven) { DriveTeeth = drive, DrivenTeeth = driven, Correction = correction };
    }

    /// <summary>A sender: <c>pulses per turn · correction</c>.</summary>
    /// <exception cref="RefusedException">No pulse, or more than a thousand.</exception>
    public static SpeedometerDrive Pulses(Measured perTurn, Pickup pickup = Pickup.Propshaft, double correction = 1)
        => perTurn.Value is > 0 and <= 1000
            ? new(pickup, perTurn * Checked(correction)) { Correction = correction }
            : throw new RefusedException("pulses", Spoken($"A sender gives up to 1000 pulses a turn, not {perTurn.Value:0.###}."), "16");

    private static double Checked(double correction)
        => correction is >= 0.01 and <= 100
            ? correction
            : throw new RefusedException("correction", Spoken($"A correction is a factor of 0.01 to 100, not {correction:0.####}."), "0.917");
}
