using BuildLog.Gearing.Drivelines;
using BuildLog.Sheet.Papers.Cards;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.YardCards;

/// <summary>The card for an overdrive unit; its counts are worded like those of a gear.</summary>
internal static class OverdriveCardWords
{
    public static readonly IReadOnlyList<string> Cautions =
    [
        "Strapped or cradled before it is turned; two to lift it. Turn by hand, fingers clear. Oil under pressure stays in some: crack no plug of a unit that ran lately.",
        "Still in a lifted vehicle: stands on firm ground, never under a car on a jack; wheels on the ground chocked; key out; not alone.",
    ];

    public static IReadOnlyList<string> Notes { get; } =
    [
        "Engaged: chalk both ends, turn the output, count the input. Fewer input turns than output turns is an overdrive.",
        "Not engaged both ends turn alike: ten for ten says nothing of its ratio.",
        "A unit that engages by oil pressure counts nothing on the ground: it needs its teeth, or its maker's data.",
        "Tags and casting numbers are hearsay: count.",
    ];

    public static IEnumerable<CardBlank> Blanks(Driveline driveline, UnitSystem units)
    {
        var length = CardBlanks.OfLength(units).Symbol;
        return
        [
            new("counted, output : input"),
            new("teeth: annulus, sun"),
            new("input flange or spline", "", CardBlanks.Matching(("gearbox", driveline.Transmission?.Output), ("ours", driveline.Overdrive?.Output))),
            new("output flange or spline", "", CardBlanks.Matching(("ours", driveline.Overdrive?.Output ?? driveline.Transmission?.Output))),
            new("length, face to face", length),
            new("mount: face to hole", length),
            new("engages by: switch / lever / cable"),
            new("speedometer: cable / sensor / none"),
        ];
    }
}
