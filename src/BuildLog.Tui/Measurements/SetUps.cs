namespace BuildLog.Tui.Measurements;

/// <summary>How each measurement is set up: a drawing in plain characters that every terminal has, and the steps.</summary>
public static class SetUps
{
    public static readonly IReadOnlyList<string> GearCount =
    [
        "   input --->[ gearbox ]---> output",
        "     |                         |",
        "   mark, turned by hand      mark, stop here",
        "",
        "1 Gear in, clutch disc free or the box on the bench: the input must turn by hand.",
        "2 Mark the input shaft (or the crank pulley) and the output flange; take up the slack, always the same way.",
        "3 Turn the input. Its mark passes: Space. The output's mark is back: Enter.",
        "4 Stop on a whole turn of the output, ten or more, and read the input's last part of a turn.",
    ];

    public static readonly IReadOnlyList<string> RollOut =
    [
        "   O------>O------>O------>O        wheel, mark down each time",
        "   |_______|_______|_______|",
        "   start   1       2       3        chalk lines; tape from the start line",
        "",
        "1 Level floor, road load, road pressure. Chalk the tyre at its lowest point and the floor under it.",
        "2 Push straight on. Each time the mark is down: a key.",
        "3 Stop with the mark down, chalk the floor, and measure from the start line.",
    ];

    public static readonly IReadOnlyList<string> LoadedRadius =
    [
        "      .---.",
        "     /     \\",
        "    |   +---|---- middle of the hub",
        "     \\  |  /",
        "   ___`-+-'_______ floor",
        "        |  this height",
        "",
        "1 Level floor, as driven: driver's weight and half the fuel in, road pressure.",
        "2 Measure from the floor straight up to the middle of the hub. Left and right, twice each: a line for every reading.",
    ];

    public static readonly IReadOnlyList<string> RoadTest =
    [
        "   [satellite speed]  and  [rev counter]   read in the same moment",
        "",
        "   ----o=====o------->  level, straight, steady, top or direct gear",
        "",
        "1 Warm tyres, road pressure, level road, no slip: converter locked or clutch home.",
        "2 Hold the speed for ten seconds. The second person, or a fixed camera, reads both.",
        "3 Do it again the other way.",
    ];

    public static readonly IReadOnlyList<string> SpeedometerRun =
    [
        "   |<---------- measured distance ---------->|",
        "   post                                      post",
        "   odometer first                            odometer last",
        "",
        "1 A measured distance: kilometre posts, a surveyed mile, or a satellite track; ten kilometres tell more than one.",
        "2 Pass the first post with a wheel of the odometer just turning over; note it.",
        "3 At the last post note it again. The difference is what it showed.",
    ];

    public static readonly IReadOnlyList<string> Weighbridge =
    [
        "      ______",
        "   __/      \\____",
        "   |_ o ______ o _|",
        "  ====#=========        one axle alone, the other, then all of it",
        "",
        "1 As heavy as it will be driven: fuel, spare wheel, tools; driver in, or his weight told.",
        "2 Brakes off and gear out while an axle is read, chocks beside the other wheels. Plate and road level with each other.",
        "3 Front, rear and all of it: the third weighing checks the other two.",
    ];

    public static readonly IReadOnlyList<string> PropshaftAngles =
    [
        "   gearbox            propshaft             pinion",
        "   =======o-------------------------------o=======",
        "     out    \\ joint                joint /   pinion",
        "",
        "   front end higher than the rear is +; seen from above, front end further right is +",
        "",
        "1 At ride height on its wheels or on stands under the axle, never hanging.",
        "2 Angle gauge on the gearbox's output flange, along the tube, on the pinion flange.",
        "3 Turn the shaft half a turn and read again; write the mean.",
    ];

    public static readonly IReadOnlyList<string> BoltCircle =
    [
        "        o                 adjacent: to the next stud",
        "     o     o              skip-one: one stud lies between",
        "      o   o               across: over the middle, even numbers only",
        "",
        "1 Measure from the edge of one hole to the same edge of the other: that is centre to centre.",
        "2 Five studs: skip-one, its error grows least. Measure several pairs, a line for each.",
    ];

    public static readonly IReadOnlyList<string> Teeth =
    [
        "      _/\\/\\/\\/\\_",
        "     (   ring    )<==  pinion, its teeth counted too",
        "      ~\\/\\/\\/\\/~",
        "",
        "1 Cover off, oil caught. Chalk one ring tooth and count round to it; wipe and count once more.",
        "2 Count the pinion's teeth with a lamp, or look for stamped numbers on the ring's edge.",
        "3 Two counts that agree make the ratio exact.",
    ];
}
