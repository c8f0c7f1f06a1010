using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.YardCards;
using BuildLog.Sheet.Papers.Cards;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.YardCards;

/// <summary>The card for an overdrive unit; its counts are worded like those of a gear.</summary>
internal static class OverdriveCardWords
{
    public static IReadOnlyList<string> Cautions =>
    [
        Spoken("Strapped or cradled before it is turned; two to lift it. Turn by hand, fingers clear. Oil under pressure stays in some: crack no plug of a unit that ran lately."),
        Spoken("Still in a lifted vehicle: stands on firm ground, never under a car on a jack; wheels on the ground chocked; key out; not alone."),
    ];

    public static IReadOnlyList<CardWay> Ways(GearboxCard card) => [.. card.Gears.Select(unit => GearboxCardWords.Way(unit, Spoken("Engaged")))];

    public static IReadOnlyList<string> Notes =>
    [
        Spoken("Engaged: chalk both ends, turn the output, count the input. Fewer input turns than output turns is an overdrive."),
        Spoken("Not engaged both ends turn alike: ten for ten says nothing of its ratio."),
        Spoken("A unit that engages by oil pressure counts nothing on the ground: it needs its teeth, or its maker's data."),
        Spoken("Tags and casting numbers are hearsay: count."),
    ];

    public static IEnumerable<CardBlank> Blanks(Driveline driveline, UnitSystem units)
    {
        var length = CardBlanks.OfLength(units).Symbol;
        return
        [
            new(new Later("engaged, output : input")),
            new(new Later("not engaged, output : input"), "", "10 : 10"),
            new(new Later("teeth: annulus, sun")),
            new(new Later("input flange or spline"), "", CardBlanks.Matching((Spoken("gearbox"), driveline.Transmission?.Output), (Spoken("ours"), driveline.Overdrive?.Output))),
            new(new Later("output flange or spline"), "", CardBlanks.Matching((Spoken("ours"), driveline.Overdrive?.Output ?? driveline.Transmission?.Output))),
            new(new Later("length, face to face"), length),
            new(new Later("mount: face to hole"), length),
            new(new Later("engages by: switch / lever / cable")),
            new(new Later("speedometer: cable / sensor / none")),
        ];
    }
}
