using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.YardCards;
using BuildLog.Sheet.Papers.Cards;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.YardCards;

/// <summary>The card for a gearbox.</summary>
internal static class GearboxCardWords
{
    public static IReadOnlyList<string> Cautions =>
    [
        Spoken("Strapped or cradled before it is turned; two to lift it. Turn by hand, fingers clear of open selectors and gears."),
        Spoken("Still in a lifted vehicle: stands on firm ground, never under a car on a jack; wheels on the ground chocked; key out; not alone."),
    ];

    public static IReadOnlyList<CardWay> Ways(GearboxCard card) => [.. card.Gears.Select(Way)];

    public static IReadOnlyList<string> Notes =>
    [
        Spoken("Select the gear, chalk both ends, turn the output, count the input. Top gear decides; then first gear, on which start and crawl hang, and the others the same way."),
        Spoken("An automatic counts nothing on the ground: it needs its teeth or its maker's data."),
        Spoken("Tags and casting numbers are hearsay: count."),
    ];

    public static IEnumerable<CardBlank> Blanks(GearboxCard card, Driveline driveline, UnitSystem units)
    {
        var (ours, engine) = (driveline.Transmission, driveline.Engine?.Rear);
        var length = CardBlanks.OfLength(units).Symbol;
        return
        [
            new(new Later("top gear, output : input")),
            new(new Later("first gear, output : input"), "", card.Gears.Any(gear => !gear.IsOfTopGear) ? "" : CardBlanks.Matching((Spoken("ours"), driveline.Transmission?.Gears is [{ Ratio.Value: var first }, _, ..] ? Rounded.InFigures(first, Units.One) : null))),
            new(new Later("other gears")),
            new(new Later("bell housing, bolt pattern"), "", CardBlanks.Matching((Spoken("engine"), engine?.BellHousing), (Spoken("ours"), ours?.Front.BellHousing))),
            new(new Later("input spline"), "", CardBlanks.Matching((Spoken("disc"), ours?.Front.DiscSpline), (Spoken("ours"), ours?.Front.InputSpline))),
            new(new Later("input spigot"), length, CardBlanks.Matching((Spoken("pilot"), CardBlanks.Length(engine?.PilotBore, units)), (Spoken("ours"), CardBlanks.Length(ours?.Front.Spigot, units)))),
            new(new Later("output flange or spline"), "", CardBlanks.Matching((Spoken("ours"), ours?.Output))),
            new(new Later("length, bell face to output"), length),
            new(new Later("bell face to mount"), length),
            new(new Later("speedometer: cable / sensor / none")),
        ];
    }

    private static CardWay Way(WindowOfPart gear) => Way(gear, char.ToUpperInvariant(gear.Quantity[0]) + gear.Quantity[1..]);

    /// <summary>Which counts of its input mean yes and no, under a heading.</summary>
    public static CardWay Way(WindowOfPart gear, string how) => new(how, Spoken("input turns"),
    [
        .. ((int?[])[GearboxCard.OutputTurns, GearboxCard.MoreOutputTurns, MostTurns(gear)]).OfType<int>().Distinct().Select(turns => Range(gear, turns)),
    ]);

    /// <summary>The fewest turns of which some count means a sure yes; null where none does.</summary>
    public static int? TurnsToAYes(WindowOfPart gear) => GearboxCard.Counts.Select(turns => (int?)turns).FirstOrDefault(turns => Range(gear, turns!.Value).Yes is not null);

    // Where twenty turns settle nothing, more do.
    private static int? MostTurns(WindowOfPart gear) => TurnsToAYes(gear) is > GearboxCard.MoreOutputTurns and var turns ? turns : null;

    private static CardRange Range(WindowOfPart gear, int turns)
    {
        var edges = GearboxCard.Edges(gear, turns);
        return CardRanges.OfTurns(Spoken($"{turns} output turns"), edges.Yes, edges.Possible);
    }
}
