namespace BuildLog.Tui.Measurements;

/// <summary>The usual cautions before work that can hurt someone, as screen and sheet show them.</summary>
/// <remarks>Common practice of the trade, as makers' jacking, lifting and propshaft service instructions give it. Not complete; never an approval.</remarks>
public static class Cautions
{
    private const string WhoDecides = "These are the usual cautions, not all of them: local codes and licensed practice decide.";

    public static readonly IReadOnlyList<string> TurnCount =
    [
        "Chock both sides of the wheels that stay on the ground. A lifted axle's handbrake, or one on the propshaft, holds nothing now.",
        "Stands on firm, level ground carry the vehicle. Never be under a car on a jack.",
        "Engine off, key out, battery isolated. Turn wheels and propshaft by hand only, never by the engine.",
        "Gearbox in neutral, transfer case in its normal range: with a transfer case in neutral the vehicle rolls even in park.",
        "A limited-slip axle: do not lever one wheel against it; lift both wheels, or roll.",
        "Who is with you? Do not work under a vehicle alone: someone within call, a phone within reach.",
        WhoDecides,
    ];

    public static readonly IReadOnlyList<string> RollOut =
    [
        "Level, clear ground and walking pace by hand: engine off, somebody at the wheel who can brake, chocks within reach.",
        "Feet and hands clear of the tyres; nobody downhill of the vehicle.",
        "If the vehicle has to be lifted to mark a tyre: stands on firm, level ground, never under a car on a jack.",
        "A loose wheel weighs enough to hurt: roll it between two people, away from slopes and traffic.",
        "Who is with you? One pushes, one steers and brakes, before anybody reads a tape.",
        WhoDecides,
    ];

    /// <summary>What a sheet says to its reader.</summary>
    public static readonly IReadOnlyList<string> Sheet =
    [
        "A changed driveline changes braking, speedometer, loads and what papers allow. This sheet says what was measured and what follows from it; "
            + "it does not call the vehicle safe or legal. Local codes, inspection and licensed practice decide.",
        "Before measuring again: wheels chocked, stands on firm level ground, never under a car on a jack, turned by hand with the engine off and the battery "
            + "isolated, gearbox in neutral, not alone.",
        "Road test: brakes first at walking pace, then in steps; a second person or a fixed camera reads the instruments; wheel nuts and propshaft bolts "
            + "checked again, cold, after the first run.",
    ];
}
