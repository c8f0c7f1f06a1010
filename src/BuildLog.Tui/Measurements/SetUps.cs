namespace BuildLog.Tui.Measurements;

/// <summary>How each measurement is set up: a drawing in plain characters that every terminal has, and the steps.</summary>
public static class SetUps
{
    public static IReadOnlyList<string> GearCount =>
    [
        Spoken("   input --->[ gearbox ]---> output"),
        "     |                         |",
        Spoken("   mark, turned by hand      mark, stop here"),
        "",
        Spoken("1 Gear in, clutch disc free or the box on the bench: the input must turn by hand."),
        Spoken("2 Mark the input shaft (or the crank pulley) and the output flange; take up the slack, always the same way."),
        Spoken("3 Turn the input. Its mark passes: Space. The output's mark is back: Enter."),
        Spoken("4 Stop on a whole turn of the output, ten or more, and read the input's last part of a turn."),
    ];

    public static IReadOnlyList<string> RollOut =>
    [
        Spoken("   O------>O------>O------>O        wheel, mark down each time"),
        "   |_______|_______|_______|",
        Spoken("   start   1       2       3        chalk lines; tape from the start line"),
        "",
        Spoken("1 Level floor, road load, road pressure. Chalk the tyre at its lowest point and the floor under it."),
        Spoken("2 Push straight on. Each time the mark is down: a key."),
        Spoken("3 Stop with the mark down, chalk the floor, and measure from the start line."),
    ];

    public static IReadOnlyList<string> LoadedRadius =>
    [
        "      .---.",
        "     /     \\",
        Spoken("    |   +---|---- middle of the hub"),
        "     \\  |  /",
        Spoken("   ___`-+-'_______ floor"),
        Spoken("        |  this height"),
        "",
        Spoken("1 Level floor, as driven: driver's weight and half the fuel in, road pressure."),
        Spoken("2 Measure from the floor straight up to the middle of the hub. Left and right, twice each: a line for every reading."),
    ];

    public static IReadOnlyList<string> RoadTest =>
    [
        Spoken("   [satellite speed]  and  [rev counter]   read in the same moment"),
        "",
        Spoken("   ----o=====o------->  level, straight, steady, top or direct gear"),
        "",
        Spoken("1 Warm tyres, road pressure, level road, no slip: converter locked or clutch home."),
        Spoken("2 Hold the speed for ten seconds. The second person, or a fixed camera, reads both."),
        Spoken("3 Do it again the other way."),
    ];

    public static IReadOnlyList<string> SpeedometerRun =>
    [
        Spoken("   |<---------- measured distance ---------->|"),
        Spoken("   post                                      post"),
        Spoken("   odometer first                            odometer last"),
        "",
        Spoken("1 A measured distance: kilometre posts, a surveyed mile, or a satellite track; ten kilometres tell more than one."),
        Spoken("2 Pass the first post with a wheel of the odometer just turning over; note it."),
        Spoken("3 At the last post note it again. The difference is what it showed."),
    ];

    public static IReadOnlyList<string> Weighbridge =>
    [
        "      ______",
        "   __/      \\____",
        "   |_ o ______ o _|",
        Spoken("  ====#=========        one axle alone, the other, then all of it"),
        "",
        Spoken("1 As heavy as it will be driven: fuel, spare wheel, tools; driver in, or his weight told."),
        Spoken("2 Brakes off and gear out while an axle is read, chocks beside the other wheels. Plate and road level with each other."),
        Spoken("3 Front, rear and all of it: the third weighing checks the other two."),
    ];

    public static IReadOnlyList<string> PropshaftAngles =>
    [
        Spoken("   gearbox            propshaft             pinion"),
        "   =======o-------------------------------o=======",
        Spoken("     out    \\ joint                joint /   pinion"),
        "",
        Spoken("   front end higher than the rear is +; seen from above, front end further right is +"),
        "",
        Spoken("1 At ride height on its wheels or on stands under the axle, never hanging."),
        Spoken("2 Angle gauge on the gearbox's output flange, along the tube, on the pinion flange."),
        Spoken("3 Turn the shaft half a turn and read again; write the mean."),
    ];

    public static IReadOnlyList<string> BoltCircle =>
    [
        Spoken("        o                 adjacent: to the next stud"),
        Spoken("     o     o              skip-one: one stud lies between"),
        Spoken("      o   o               across: over the middle, even numbers only"),
        "",
        Spoken("1 Measure from the edge of one hole to the same edge of the other: that is centre to centre."),
        Spoken("2 Five studs: skip-one, its error grows least. Measure several pairs, a line for each."),
    ];

    public static IReadOnlyList<string> Teeth =>
    [
        "      _/\\/\\/\\/\\_",
        Spoken("     (   ring    )<==  pinion, its teeth counted too"),
        "      ~\\/\\/\\/\\/~",
        "",
        Spoken("1 Cover off, oil caught. Chalk one ring tooth and count round to it; wipe and count once more."),
        Spoken("2 Count the pinion's teeth with a lamp, or look for stamped numbers on the ring's edge."),
        Spoken("3 Two counts that agree make the ratio exact."),
    ];
}
