using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Speedometers;

namespace BuildLog.Gearing.Checks;

/// <summary>There is a speedometer drive, and it is of the kind that the speedometer takes: a cable, or pulses.</summary>
/// <remarks>
/// The last unit that somebody looked at counts, a transfer case before the gearbox. A speedometer driven at a wheel needs none. Judged as every
/// <see cref="MatingCheck"/>.
/// </remarks>
internal sealed class SpeedometerDriveCheck : MatingCheck
{
    private static string None => Spoken("none");

    public override string Id => "speedometer-drive";

    public override string Title => Spoken("Speedometer drive");

    private protected override IEnumerable<Mating> Matings(Driveline driveline)
    {
        if (driveline.Speedometer is not { } dial || dial.Drive?.Pickup == Pickup.Wheel || Unit(driveline) is not var (unit, feed)) yield break;

        yield return new(
            new(unit, Spoken("speedometer drive"), Word(feed), Spoken($"look at the {unit.InWords()}'s tail for a cable's nut or a sender's plug")),
            new(Position.Speedometer, Spoken("drive"), Word(dial.Takes ?? Implied(dial.Drive)), Spoken("look behind the dial for a cable's nut or a plug")) { IsImplied = dial.Takes is null, IsNeed = true },
            (has, needs) => has == None
                ? [Spoken($"a drive for {needs} at the {unit.InWords()}'s tail"), Spoken("a sender at the propshaft or a wheel")]
                : [Spoken($"a converter from {has} to {needs}"), Spoken($"a speedometer for {has}")]);
    }

    private static (Position Unit, SpeedometerFeed? Feed)? Unit(Driveline driveline)
        => driveline is { TransferCase: { } transfer } && (transfer.SpeedometerFeed is not null || driveline.Transmission?.SpeedometerFeed is null) ? (Position.TransferCase, transfer.SpeedometerFeed)
            : driveline.Transmission is { } box ? (Position.Transmission, box.SpeedometerFeed)
            : null;

    // Gears turn a cable; a sender gives pulses.
    private static SpeedometerFeed? Implied(SpeedometerDrive? drive)
        => drive is null ? null : drive.DriveTeeth is null ? SpeedometerFeed.Pulses : SpeedometerFeed.Cable;

    private static string? Word(SpeedometerFeed? feed) => feed switch
    {
        SpeedometerFeed.None => None,
        SpeedometerFeed.Cable => Spoken("a cable"),
        SpeedometerFeed.Pulses => Spoken("pulses"),
        _ => null,
    };
}
