namespace BuildLog.Tui.Measurements;

/// <summary>The usual cautions before work that can hurt someone, as screen and sheet show them.</summary>
/// <remarks>Common practice of the trade, as makers' jacking, lifting and propshaft service instructions give it. Not complete; never an approval.</remarks>
public static class Cautions
{
    private static string WhoDecides => Spoken("These are the usual cautions, not all of them: local codes and licensed practice decide.");

    public static IReadOnlyList<string> TurnCount =>
    [
        Spoken("Chock both sides of the wheels that stay on the ground. A lifted axle's handbrake, or one on the propshaft, holds nothing now."),
        Spoken("Stands on firm, level ground carry the vehicle. Never be under a car on a jack."),
        Spoken("Engine off, key out, battery isolated. Turn wheels and propshaft by hand only, never by the engine."),
        Spoken("Gearbox in neutral, transfer case in its normal range: with a transfer case in neutral the vehicle rolls even in park."),
        Spoken("A limited-slip axle: do not lever one wheel against it; lift both wheels, or roll."),
        Spoken("Who is with you? Do not work under a vehicle alone: someone within call, a phone within reach."),
        WhoDecides,
    ];

    public static IReadOnlyList<string> RollOut =>
    [
        Spoken("Level, clear ground and walking pace by hand: engine off, somebody at the wheel who can brake, chocks within reach."),
        Spoken("Feet and hands clear of the tyres; nobody downhill of the vehicle."),
        Spoken("If the vehicle has to be lifted to mark a tyre: stands on firm, level ground, never under a car on a jack."),
        Spoken("A loose wheel weighs enough to hurt: roll it between two people, away from slopes and traffic."),
        Spoken("Who is with you? One pushes, one steers and brakes, before anybody reads a tape."),
        WhoDecides,
    ];

    public static IReadOnlyList<string> GearCount =>
    [
        Spoken("Engine off, key out, battery isolated. Turn the shafts by hand only."),
        Spoken("On the vehicle: stands on firm, level ground carry it, wheels that stay down are chocked; in gear with the propshaft off nothing else holds it."),
        Spoken("On the bench: a gearbox weighs enough to hurt. Strap or cradle it before you turn anything."),
        Spoken("Fingers, sleeves and rags clear of open selectors and gears."),
        WhoDecides,
    ];

    public static IReadOnlyList<string> OnTheRoad =>
    [
        Spoken("Brakes first, at walking pace; then in steps. Wheel nuts and propshaft bolts checked before, and again, cold, after the first run."),
        Spoken("A second person or a fixed camera reads the instruments. The driver looks at the road."),
        Spoken("A quiet, straight, level road where that speed is allowed; nobody behind you when you hold it steady."),
        Spoken("A vehicle without papers or cover belongs on private ground."),
        WhoDecides,
    ];

    public static IReadOnlyList<string> AtTheWheel =>
    [
        Spoken("Level, firm ground; handbrake, gear and chocks hold the vehicle before you reach in."),
        Spoken("If it has to be lifted: stands on firm, level ground, never under a car on a jack."),
        Spoken("Engine off, key out; a fan may start by itself on a hot engine."),
        WhoDecides,
    ];

    public static IReadOnlyList<string> UnderTheFloor =>
    [
        Spoken("Stands on firm, level ground carry the vehicle at ride height, under the axles. Never be under a car on a jack."),
        Spoken("Engine off, key out, battery isolated. Turn the shaft by hand only; keep sleeves off its joints."),
        Spoken("Gearbox in neutral holds nothing: chock both sides of the wheels that stay on the ground."),
        Spoken("A hot exhaust and hot gear oil burn: wait."),
        Spoken("Who is with you? Do not work under a vehicle alone: someone within call, a phone within reach."),
        WhoDecides,
    ];

    /// <summary>What a sheet says to its reader.</summary>
    public static IReadOnlyList<string> Sheet =>
    [
        Spoken("A changed driveline changes braking, speedometer, loads and what papers allow. This sheet says what was measured and what follows from it; "
            + "it does not call the vehicle safe or legal. Brakes, steering, cooling and the strength of body and frame are not judged here. Local codes, inspection and licensed practice decide."),
        Spoken("Before measuring again: wheels chocked, stands on firm level ground, never under a car on a jack, turned by hand with the engine off and the battery "
            + "isolated, gearbox in neutral, not alone."),
        Spoken("Road test: brakes first at walking pace, then in steps; a second person or a fixed camera reads the instruments; wheel nuts and propshaft bolts "
            + "checked again, cold, after the first run."),
    ];
}
